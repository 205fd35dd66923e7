package hurdline.words;

/**
 * The units that people read. Tables keep tonnes and kilograms always.
 *
 * @see "NIST Handbook 44, appendix C: 1 lb = 0.45359237 kg, 1 short ton = 2000 lb, 1 ft = 0.3048 m, 1 acre = 66 ft by 660 ft, all exact; from
 *     memory"
 */
public enum UnitSystem {
  US,
  METRIC;

  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FT = 0.3048;
  private static final double HA_PER_ACRE = 66 * 660 * M_PER_FT * M_PER_FT / 10_000;
  private static final double T_PER_TON = 2000 * KG_PER_LB / 1000;

  /** The unit in which an amount of this unit is shown. */
  public String shown(String unit) {
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
      case "kg" -> value / KG_PER_LB;
      case "m2" -> value / (M_PER_FT * M_PER_FT);
      case "m3" -> value / (M_PER_FT * M_PER_FT * M_PER_FT);
      case "m" -> value / M_PER_FT;
      default -> unit.endsWith("/t") ? value * T_PER_TON : value;
    };
  }
}
