package hurdline.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A mean whose interval covers what chance does in the simulation and what is not known of its
 * inputs. Replication k was simulated twice on the same random draws: Xₖ with the inputs as they
 * are given, Yₖ with row (k − 1) mod K of K joint draws of them.
 *
 * <p>With hₗ and hᵤ the distances of the limits by chance from the mean of X, the limits are mean −
 * √(hₗ² + t²·v) and mean + √(hᵤ² + t²·v), t that of min(R, K) − 1 degrees of freedom, R the number
 * of replications. v is the variance by the inputs: that of D = Y − X where rows were simulated
 * once, which also holds what pairing leaves of chance and so is an upper bound; where each was
 * simulated m ≥ 2 times, from the mean squares B between and W within rows, max(0, (B − W)/m) +
 * √(2(B²/(K − 1) + W²/(K(m − 1))))/m, the second term being its standard error. Holds where the
 * answer is nearly straight over what is open of the inputs.
 *
 * @param count of replications with both values
 * @param mean of X
 * @param chance interval of the mean by chance alone
 * @param interval by chance and inputs
 * @param inputsHalfWidth t·√v
 * @param isBound whether v is an upper bound
 * @param shift mean of D
 * @param shiftError its standard error
 * @param p05 5 % quantile of Y
 * @param p50 median of Y
 * @param p95 95 % quantile of Y
 * @see "Cheng and Holland 1997; Barton, Nelson and Xie 2014; from memory. Between and within rows,
 *     shift and degrees of freedom: measured for this program"
 */
public record MeanOverInputs(
    int count,
    double mean,
    Interval chance,
    Interval interval,
    double inputsHalfWidth,
    boolean isBound,
    double shift,
    double shiftError,
    double p05,
    double p50,
    double p95) {
  private static final double QUARTER = 0.25;

  /**
   * @param given X, one a replication; NaN where it has no value; read only
   * @param drawn Y of the first of them, read only
   * @param rows K
   */
  public static MeanOverInputs of(double[] given, double[] drawn, int rows, double level) {
    double[] whole = Arrays.stream(given).filter(value -> !Double.isNaN(value)).toArray();
    double[] first = Arrays.copyOf(given, drawn.length);
    double[] pairs = PairedDifference.differences(first, drawn);
    int[] both = IntStream.range(0, pairs.length).filter(i -> !Double.isNaN(pairs[i])).toArray();
    double[] differences = Arrays.stream(both).mapToDouble(i -> pairs[i]).toArray();
    double[] ofInputs = Arrays.stream(both).mapToDouble(i -> drawn[i]).toArray();
    Moments moments = Moments.of(differences);
    Interval chance = Intervals.mean(whole, level);
    double mean = Moments.of(whole).mean();
    boolean isBound = pairs.length < 2 * rows || both.length < pairs.length;
    double variance = isBound ? moments.variance() : betweenRows(pairs, rows);
    int freedom = Math.min(both.length, rows) - 1;
    double reach =
        freedom < 1 ? Double.NaN : Intervals.student(freedom, level) * Math.sqrt(variance);
    double[] quantiles = Quantiles.of(ofInputs, 0.05, 0.5, 0.95);
    return new MeanOverInputs(
        both.length,
        mean,
        chance,
        Double.isNaN(reach) || !chance.isKnown()
            ? Interval.NONE
            : new Interval(
                mean - Math.hypot(mean - chance.low(), reach),
                mean + Math.hypot(chance.high() - mean, reach)),
        reach,
        isBound,
        moments.mean(),
        moments.sd() / Math.sqrt(both.length),
        quantiles[0],
        quantiles[1],
        quantiles[2]);
  }

  private static double betweenRows(double[] differences, int rows) {
    int times = differences.length / rows;
    double[] means = new double[rows];
    double squares = 0;
    for (int row = 0; row < rows; row++) {
      double[] of = new double[times];
      for (int at = 0; at < times; at++) {
        of[at] = differences[at * rows + row];
      }
      Moments inRow = Moments.of(of);
      means[row] = inRow.mean();
      squares += inRow.variance() * (times - 1);
    }
    double within = squares / (rows * (times - 1.0));
    double between = times * Moments.of(means).variance();
    double error =
        Math.sqrt(2 * (between * between / (rows - 1) + within * within / (rows * (times - 1.0))));
    return Math.max(0, (between - within) / times) + error / times;
  }

  /**
   * Whether the answer bends within what is open of the inputs, so that the interval leans: the
   * mean of D lies off 0 by more than twice its error and more than a quarter of √v.
   */
  public boolean bends() {
    double size = Math.abs(shift);
    return size > 2 * shiftError
        && size > QUARTER * inputsHalfWidth / Intervals.student(Math.max(1, count - 1), 0.95);
  }
}
