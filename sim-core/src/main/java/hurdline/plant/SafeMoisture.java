package hurdline.plant;

import hurdline.random.Distribution;

/**
 * Above which moisture it is risky to store a crop, of bales and of modules; the one limit that
 * {@code check} and every report go by. Bales count as above it if one in ten or more is.
 *
 * <p>Large bales: extension advice for fiber crops in Ontario and Alberta is below 15 %, which lies
 * between that for large hay bales in California (14 %) and in the South of the USA (16 to 18 %).
 * Modules: lint yellows sharply above 14 % (Cotton Incorporated, after Curley et al. 1987).
 */
public enum SafeMoisture {
  BALES(0.15),
  MODULES(0.14);

  private static final double DRIER_SHARE = 0.9;

  private final double share;

  SafeMoisture(double share) {
    this.share = share;
  }

  public static SafeMoisture of(Crop crop) {
    return crop.modules() ? MODULES : BALES;
  }

  /** Water over the whole mass. */
  public double share() {
    return share;
  }

  public boolean isExceeded(Distribution moisture) {
    return moisture.at(DRIER_SHARE) > share;
  }
}
