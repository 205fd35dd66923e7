package hurdline.chart.kit;

import java.util.Arrays;

/**
 * Bars so far above the others that nothing would be seen of these if the axis had room for all.
 */
public final class OutlierBars {
  private static final double FAR_ABOVE = 4; // times the median
  private static final double ROOM = 1.25; // over the highest bar that is shown whole

  private OutlierBars() {}

  /**
   * Where the axis is to end.
   *
   * @param values of the bars; NaN where there is none
   * @return +∞ if no bar is far above the others
   */
  public static double axisEnd(double[] values) {
    double[] rising = Arrays.stream(values).filter(value -> value > 0).sorted().toArray();
    if (rising.length == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double far = FAR_ABOVE * rising[(rising.length - 1) / 2];
    double highest = Arrays.stream(rising).filter(value -> value <= far).max().orElseThrow();
    return rising[rising.length - 1] > far ? ROOM * highest : Double.POSITIVE_INFINITY;
  }
}
