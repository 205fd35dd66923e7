package hurdline.fit;

import hurdline.fit.MillDays.Day;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Days of a mill on one screen that are unlike its others: a product that nobody wrote down, a
 * shift in which it was fed otherwise. Unlike is a draw more than five robust deviations off the
 * line through the others, whose slope is the median of those of all pairs (Theil and Sen), the
 * deviation 1.4826 times the median of what is left over.
 *
 * @see "Sen, Journal of the American Statistical Association 63 (1968) 1379-1389, from memory"
 */
final class MillOutliers {
  private static final double OFF = 5;
  private static final double OF_NORMAL = 1.4826;

  /** Readings and packages are no finer, as a share of the draw. */
  private static final double FINEST = 0.002;

  private static final double SAME = 1e-9;

  private MillOutliers() {}

  /**
   * @param throughOrigin whether the draw is a share of what is milled, as fully fed
   */
  static List<Day> without(List<Day> days, int screen, boolean throughOrigin) {
    List<Day> own = days.stream().filter(day -> day.isOf(screen)).toList();
    double[] rate =
        own.stream().mapToDouble(day -> day.t()[screen] / day.crewedH()[screen]).toArray();
    double[] kW = own.stream().mapToDouble(day -> day.kWh() / day.crewedH()[screen]).toArray();
    int n = own.size();
    double slope =
        throughOrigin
            ? median(IntStream.range(0, n).mapToDouble(i -> kW[i] / rate[i]).toArray())
            : slope(rate, kW);
    double[] above = IntStream.range(0, n).mapToDouble(i -> kW[i] - slope * rate[i]).toArray();
    double level = throughOrigin ? 0 : median(above);
    double[] off = Arrays.stream(above).map(one -> Math.abs(one - level)).toArray();
    double most = OFF * Math.max(FINEST * median(kW), OF_NORMAL * median(off));
    List<Day> unlike = IntStream.range(0, n).filter(i -> off[i] > most).mapToObj(own::get).toList();
    return days.stream().filter(day -> !unlike.contains(day)).toList();
  }

  private static double slope(double[] x, double[] y) {
    double[] slopes =
        IntStream.range(0, x.length)
            .boxed()
            .flatMap(
                i ->
                    IntStream.range(0, i)
                        .filter(j -> Math.abs(x[i] - x[j]) > SAME)
                        .mapToObj(j -> (y[i] - y[j]) / (x[i] - x[j])))
            .mapToDouble(Double::doubleValue)
            .toArray();
    return slopes.length == 0 ? 0 : median(slopes);
  }

  private static double median(double[] of) {
    double[] rising = of.clone();
    Arrays.sort(rising);
    int n = rising.length;
    return n == 0 ? 0 : (rising[(n - 1) / 2] + rising[n / 2]) / 2;
  }
}
