package hurdline.text;

import hurdline.unit.FileUnit;

/** The units that people read. Tables keep tonnes and kilograms always. */
public enum UnitSystem {
  US,
  METRIC;

  private static final double HA_PER_ACRE = FileUnit.ACRE.inSi() / FileUnit.HECTARE.inSi();
  private static final double T_PER_TON = FileUnit.TON.inSi() / FileUnit.TONNE.inSi();

  /** The unit in which an amount of this unit is shown. */
  public String shown(String unit) {
    if (unit.equals("1/h")) {
      return "/h";
    }
    if (this == METRIC) {
      return unit.equals("acre") ? "ha" : unit;
    }
    return switch (unit) {
      case "t" -> "ton";
      case "t/h" -> "ton/h";
      case "kg" -> "lb";
      case "m2" -> "ft2";
      case "m3" -> "ft3";
      case "m" -> "ft";
      case "acre" -> "acres";
      default -> unit.endsWith("/t") ? unit + "on" : unit;
    };
  }

  /** The word for the unit of mass of crops and products, as one says it. */
  public String ton() {
    return this == METRIC ? "tonne" : "ton";
  }

  /** The amount as shown, from one in the unit of the tables. */
  public double amount(double value, String unit) {
    if (this == METRIC) {
      return unit.equals("acre") ? value * HA_PER_ACRE : value;
    }
    return switch (unit) {
      case "t", "t/h" -> value / T_PER_TON;
      case "kg" -> FileUnit.POUND.fromSi(value);
      case "m2" -> FileUnit.SQUARE_FOOT.fromSi(value);
      case "m3" -> FileUnit.CUBIC_FOOT.fromSi(value);
      case "m" -> FileUnit.FOOT.fromSi(value);
      default -> unit.endsWith("/t") ? value * T_PER_TON : value;
    };
  }
}
