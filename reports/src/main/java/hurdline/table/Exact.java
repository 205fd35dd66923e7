package hurdline.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The shortest decimal text that reads back as the very same double.
 *
 * <p>Not {@code Double.toString}: what that prints changed between Java releases, and the same seed
 * must give the same bytes on all of them.
 */
public final class Exact {
  private static final int ENOUGH_DIGITS = 17;
  private static final double WHOLE_BELOW = 1e15;

  private Exact() {}

  /** The number as text, or the empty text where it is not defined. */
  public static String text(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    if (value == Math.rint(value) && Math.abs(value) < WHOLE_BELOW) {
      return Long.toString((long) value);
    }
    BigDecimal whole = new BigDecimal(value);
    for (int digits = 15; digits < ENOUGH_DIGITS; digits++) {
      BigDecimal rounded = whole.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == value) {
        return plain(rounded);
      }
    }
    return plain(whole.round(new MathContext(ENOUGH_DIGITS, RoundingMode.HALF_EVEN)));
  }

  private static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    int magnitude = stripped.precision() - stripped.scale();
    return magnitude > -6 && magnitude < 20 ? stripped.toPlainString() : stripped.toString();
  }
}
