package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import java.util.Arrays;

/**
 * What lifts, changes and swaps took beyond the hours of their line, by the month in which they
 * ended.
 */
public final class AfterShift {
  private final int lines;
  private final Periods months;
  private final double[] tookS; // [month * lines + line]

  AfterShift(CompiledLines layout, Periods months) {
    lines = layout.lines;
    this.months = months;
    tookS = new double[months.count() * lines];
  }

  void reset() {
    Arrays.fill(tookS, 0);
  }

  /**
   * A job of the line is done; what it took beyond its hours may be nothing, or rounding below it.
   */
  void add(int line, double seconds, double nowS) {
    if (seconds > 0) {
      tookS[months.at(nowS) * lines + line] += seconds;
    }
  }

  public double seconds(int line, int month) {
    return tookS[month * lines + line];
  }

  public double seconds(int line) {
    double sum = 0;
    for (int at = line; at < tookS.length; at += lines) {
      sum += tookS[at];
    }
    return sum;
  }
}
