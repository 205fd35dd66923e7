package hurdline.answer;

import java.util.List;

/**
 * A key of the plant file that a grid varies.
 *
 * @param path where it stands, {@code machines.mill.power}
 * @param said how its values were asked for, {@code 20hp..80hp..10hp}
 * @param scale what its values are
 * @param unit the unit of its values as the plant file spells it; empty for bare numbers, factors
 *     and dates
 * @param values in rising order
 */
public record GridKey(String path, String said, Scale scale, String unit, List<Value> values) {
  public GridKey {
    values = List.copyOf(values);
  }

  /** What the values of a key are. */
  public enum Scale {
    /** Amounts that take the place of what the file says. */
    AMOUNT,
    /** Factors on what the file says. */
    FACTOR,
    /** Dates. */
    DATE
  }

  /**
   * One value.
   *
   * @param text as the plant file would have it: {@code 20hp}, {@code x0.8}, {@code 2027-06-01}
   * @param number the same on an axis: the number before the unit, the factor, or for a date the
   *     days since 1970-01-01
   */
  public record Value(String text, double number) {}
}
