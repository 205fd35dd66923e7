package hurdline.study.backtest;

import java.time.LocalDate;
import java.util.List;

/**
 * One thing that records and simulation both have, period by period.
 *
 * @param kind what it is
 * @param of name of the crop, product or {@code machine.stop}; empty for the whole plant
 * @param unit of the values
 * @param firsts first date of each period
 * @param seen what the records say; NaN for a period that is left out
 */
record SeasonSeries(Kind kind, String of, String unit, List<LocalDate> firsts, double[] seen) {
  /** What is set beside each other, with the share by which it may be off and still do. */
  enum Kind {
    FED(0.03),
    MADE(0.03),
    YARD(0.10),
    STOPS(0.10),
    STOP_HOURS(0.10),
    ENERGY(0.03);

    private final double tolerance;

    Kind(double tolerance) {
      this.tolerance = tolerance;
    }

    double tolerance() {
      return tolerance;
    }
  }

  /** Periods that have a value. */
  int[] known() {
    return java.util.stream.IntStream.range(0, seen.length)
        .filter(at -> !Double.isNaN(seen[at]))
        .toArray();
  }
}
