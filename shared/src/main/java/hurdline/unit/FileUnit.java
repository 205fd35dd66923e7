package hurdline.unit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The units of the plant file, each with its exact factor to SI.
 *
 * <p>A month and a year are means of the Julian calendar, as the plant format fixes them.
 *
 * @see "NIST Special Publication 811 (2008), appendix B.8: lb, ton, in, ft, acre, hp (550
 *     ft·lbf/s)"
 */
public enum FileUnit {
  KILOGRAM(Base.MASS, "1", "kg"),
  TONNE(Base.MASS, "1000", "t"),
  POUND(Base.MASS, "0.45359237", "lb"),
  TON(Base.MASS, "907.18474", "ton"),
  SECOND(Base.TIME, "1", "s"),
  MINUTE(Base.TIME, "60", "min"),
  HOUR(Base.TIME, "3600", "h"),
  DAY(Base.TIME, "86400", "d"),
  WEEK(Base.TIME, "604800", "wk"),
  MONTH(Base.TIME, "2629800", "month"),
  YEAR(Base.TIME, "31557600", "yr"),
  WATT(Base.POWER, "1", "W"),
  KILOWATT(Base.POWER, "1000", "kW"),
  HORSEPOWER(Base.POWER, "745.69987158227022", "hp"),
  KILOWATT_HOUR(Base.ENERGY, "3600000", "kWh"),
  MEGAJOULE(Base.ENERGY, "1000000", "MJ"),
  PERCENT(Base.SHARE, "0.01", "%"),
  MILLIMETRE(Base.LENGTH, "0.001", "mm"),
  CENTIMETRE(Base.LENGTH, "0.01", "cm"),
  METRE(Base.LENGTH, "1", "m"),
  INCH(Base.LENGTH, "0.0254", "in"),
  FOOT(Base.LENGTH, "0.3048", "ft"),
  SQUARE_METRE(Base.AREA, "1", "m2"),
  SQUARE_FOOT(Base.AREA, "0.09290304", "ft2"),
  HECTARE(Base.AREA, "10000", "ha"),
  ACRE(Base.AREA, "4046.8564224", "acre"),
  LITRE(Base.VOLUME, "0.001", "L"),
  CUBIC_METRE(Base.VOLUME, "1", "m3"),
  CUBIC_FOOT(Base.VOLUME, "0.028316846592", "ft3"),
  CUBIC_YARD(Base.VOLUME, "0.764554857984", "yd3"),
  BALES(Base.BALES, "1", "bales", "bale"),
  MODULES(Base.BALES, "1", "modules", "module");

  private final Base base;
  private final BigDecimal factor;
  private final List<String> symbols;

  FileUnit(Base base, String factor, String... symbols) {
    this.base = base;
    this.factor = new BigDecimal(factor);
    this.symbols = List.of(symbols);
  }

  public Base base() {
    return base;
  }

  /** The symbol, the plural where there are two. */
  public String symbol() {
    return symbols.get(0);
  }

  /** All symbols by which a file may call it. */
  public List<String> symbols() {
    return symbols;
  }

  /** One of it in SI. */
  public double inSi() {
    return factor.doubleValue();
  }

  /** A value in SI as so many of it. */
  public double fromSi(double si) {
    return si / inSi();
  }

  BigDecimal factor() {
    return factor;
  }

  /** The unit of that symbol, written just so. */
  public static Optional<FileUnit> of(String symbol) {
    for (FileUnit unit : values()) {
      if (unit.symbols.contains(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
