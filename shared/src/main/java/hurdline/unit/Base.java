package hurdline.unit;

/** What a single unit measures; quotients of these make a {@link Dimension}. */
public enum Base {
  MASS,
  TIME,
  POWER,
  ENERGY,
  SHARE,
  LENGTH,
  AREA,
  VOLUME,
  BALES,
  MONEY
}
