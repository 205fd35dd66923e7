package hurdline.text;

import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import java.util.stream.DoubleStream;

/**
 * Internal rates in words: what is beyond measure says nothing more than that it is high, wherever
 * it stands.
 */
public final class RateWords {
  /**
   * As a share a year: what pays back ten times a year is worth its price at any rate of interest.
   */
  private static final double HIGHEST = 10;

  private RateWords() {}

  /** Whether a figure of a row, or only its mean, is a rate beyond measure. */
  static boolean isBeyond(PaybackRow row) {
    return isRate(row)
        && DoubleStream.of(row.mean(), row.p05(), row.p50(), row.p95())
            .anyMatch(rate -> rate > HIGHEST);
  }

  static boolean isBeyond(PaybackRow row, double value) {
    return isRate(row) && value > HIGHEST;
  }

  private static boolean isRate(PaybackRow row) {
    return row.quantity() == Quantity.INTERNAL_RATE_OF_RETURN;
  }

  /** {@code above 1,000 %}. */
  static String beyond(Wording wording) {
    return percent(Double.POSITIVE_INFINITY, wording) + " %";
  }

  /** A rate without its sign: {@code 12}, or {@code above 1,000}. */
  static String percent(double rate, Wording wording) {
    return rate > HIGHEST
        ? "above " + wording.fixed(HIGHEST, 0, "share")
        : wording.fixed(rate, 0, "share");
  }

  /** A percentile of a row; empty where it has none. */
  public static String percentile(PaybackRow row, double value, Wording wording) {
    return Double.isNaN(value)
        ? ""
        : isBeyond(row, value) ? beyond(wording) : wording.rough(value, row.unit());
  }
}
