package hurdline.study;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An input and how far it may lie off.
 *
 * @param key its path in the plant file
 * @param low a number with its unit, or {@code x0.8} for so many times what the file says
 * @param high as {@code low}, in the same unit
 */
public record Swing(String key, String low, String high) {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(x?)\\s*([-+]?[0-9]*\\.?[0-9]+)\\s*(.*)");
  private static final String TIMES = "x";

  public Swing {
    if (!areEnds(low, high)) {
      throw new IllegalArgumentException(
          low + " and " + high + "; expected two numbers in one unit");
    }
  }

  /** A share less and a share more than the file says. */
  public static Swing around(String key, double share) {
    return new Swing(key, TIMES + exact(1 - share), TIMES + exact(1 + share));
  }

  /** Whether two such values can be the ends of one input. */
  public static boolean areEnds(String low, String high) {
    return parts(low).isPresent() && parts(low).map(Part::unit).equals(parts(high).map(Part::unit));
  }

  double lowNumber() {
    return parts(low).orElseThrow().number();
  }

  double highNumber() {
    return parts(high).orElseThrow().number();
  }

  /** The unit of both numbers; {@code x} where they are factors. */
  String unit() {
    return parts(low).orElseThrow().unit();
  }

  /** A number and a unit. */
  record Part(double number, String unit) {}

  /** A value taken apart; empty where it is not a number and a unit. */
  static Optional<Part> parts(String value) {
    Matcher parts = NUMBER_AND_UNIT.matcher(value.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    String unit = parts.group(1).isEmpty() ? parts.group(3).strip() : TIMES;
    return Optional.of(new Part(Double.parseDouble(parts.group(2)), unit));
  }

  /** As a plant file may write it. */
  static String exact(double number) {
    return new java.math.BigDecimal(number)
        .round(new java.math.MathContext(12))
        .stripTrailingZeros()
        .toPlainString();
  }
}
