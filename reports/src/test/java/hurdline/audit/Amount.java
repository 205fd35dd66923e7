package hurdline.audit;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of a plant file in the units of this audit: tonne, hour, kilowatt, kilowatt-hour,
 * metre, square metre, part of one. A unit that is not in the list is a count or a currency and
 * counts as 1.
 *
 * @see "NIST Handbook 44, appendix C: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, both exact; from
 *     memory. The horsepower is 550 ft lbf/s with standard gravity, 9.80665 m/s2"
 */
final class Amount {
  private static final double LB = 0.45359237e-3;
  private static final double FT = 0.3048;

  private static final Map<String, Double> UNITS =
      Map.ofEntries(
          Map.entry("t", 1.0),
          Map.entry("kg", 1e-3),
          Map.entry("lb", LB),
          Map.entry("ton", 2000 * LB),
          Map.entry("h", 1.0),
          Map.entry("min", 1 / 60.0),
          Map.entry("s", 1 / 3600.0),
          Map.entry("d", 24.0),
          Map.entry("wk", 168.0),
          Map.entry("month", 24 * 30.4375),
          Map.entry("yr", 24 * 365.25),
          Map.entry("kW", 1.0),
          Map.entry("W", 1e-3),
          Map.entry("hp", 550 * FT * 1e3 * LB * 9.80665 / 1e3),
          Map.entry("kWh", 1.0),
          Map.entry("MJ", 1 / 3.6),
          Map.entry("%", 0.01),
          Map.entry("m", 1.0),
          Map.entry("mm", 1e-3),
          Map.entry("cm", 1e-2),
          Map.entry("ft", FT),
          Map.entry("in", FT / 12),
          Map.entry("m2", 1.0),
          Map.entry("ft2", FT * FT),
          Map.entry("ha", 1e4),
          Map.entry("acre", 43_560 * FT * FT));

  private static final Pattern WRITTEN = Pattern.compile("([-+.0-9eE]*[0-9])\\s*(.*)");

  private Amount() {}

  /** {@code 17 USD/kW/month} is 17 over the hours of a month. */
  static double of(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new IllegalArgumentException(text + " is no amount");
    }
    double amount = Double.parseDouble(written.group(1));
    String[] units = written.group(2).split("/");
    amount *= UNITS.getOrDefault(units[0], 1.0);
    for (int at = 1; at < units.length; at++) {
      amount /= UNITS.getOrDefault(units[at], 1.0);
    }
    return amount;
  }
}
