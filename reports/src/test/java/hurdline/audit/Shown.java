package hurdline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people read it, in US units.
 *
 * @param value as written
 * @param step of the last digit that counts: behind the point every digit does, before it trailing
 *     zeros may be rounding
 */
record Shown(double value, double step) {
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.,])[-+]?(\\d{1,3}(?:,\\d{3})+|\\d+)(\\.\\d+)?");

  private static final double LB = 0.45359237;
  private static final double FT = 0.3048;

  /** All numbers of a text, in their order. */
  static List<Shown> all(String text) {
    List<Shown> numbers = new ArrayList<>();
    for (Matcher found = NUMBER.matcher(text); found.find(); ) {
      numbers.add(of(found.group()));
    }
    return numbers;
  }

  private static Shown of(String text) {
    String plain = text.replace(",", "");
    int point = plain.indexOf('.');
    double step = 1;
    if (point >= 0) {
      step = Math.pow(10, point - plain.length() + 1.0);
    } else {
      for (int at = plain.length() - 1; at > 0 && plain.charAt(at) == '0'; at--) {
        step *= 10;
      }
    }
    double value = Double.parseDouble(plain);
    return new Shown(value, value == 0 && point < 0 ? 1 : step);
  }

  /** An amount in the unit of the tables as people read it. */
  static double inUs(double value, String unit) {
    return switch (unit) {
      case "t", "t/h" -> value / (2 * LB);
      case "kg" -> value / LB;
      case "m2" -> value / (FT * FT);
      case "share" -> 100 * value;
      default -> unit.endsWith("/t") ? value * 2 * LB : value;
    };
  }

  /**
   * Whether this may be what an amount is rounded to.
   *
   * @param expected in the unit shown
   * @param halfWidth of its interval; no number is rounded more coarsely, or than three digits
   *     allow where there is none
   */
  boolean isRounded(double expected, double halfWidth) {
    if (value == 0
        && step == 1) { // what a nought was rounded to stands in the other numbers of its cell
      return Math.abs(expected) <= Math.max(halfWidth / 2, 0.5) * (1 + 1e-6);
    }
    double coarse = Math.max(0.5, Math.max(halfWidth, 0.006 * Math.abs(expected)));
    double slack = step <= 1 ? step / 2 : Math.min(step / 2, coarse);
    return Math.abs(value - expected) <= slack * (1 + 1e-6);
  }
}
