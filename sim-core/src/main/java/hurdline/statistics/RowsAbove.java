package hurdline.statistics;

import java.util.Arrays;

/**
 * In how many rows of drawn inputs a mean lies above a threshold. With X and Y as in {@link
 * MeanOverInputs} and D = Y − X, the mean at a row is mean(X) + m, m the mean of D in that row;
 * pairing takes a season's own chance out of D as far as both plants answer to it alike.
 *
 * <p>Where each row was simulated several times, what chance is left in the m is taken out by
 * drawing them to their mean by √((B − W)/B), B and W the mean squares of D between and within
 * rows, so that they spread as the inputs alone make them; else it is in the count, which then lies
 * nearer to half of the rows than it should.
 *
 * @param rows that were simulated
 * @param above those whose mean lies above
 * @param times how often each was simulated at least
 */
public record RowsAbove(int rows, int above, int times) {
  /**
   * @param given X, one a replication; NaN where it has no value; read only
   * @param drawn Y of the first of them, read only
   * @param rows of inputs: replication k takes row (k − 1) mod rows
   */
  public static RowsAbove of(double[] given, double[] drawn, int rows, double threshold) {
    double[] whole = Arrays.stream(given).filter(value -> !Double.isNaN(value)).toArray();
    double[] all = PairedDifference.differences(Arrays.copyOf(given, drawn.length), drawn);
    double[][] byRow = byRow(all, rows);
    double[] means = Arrays.stream(byRow).mapToDouble(of -> Moments.of(of).mean()).toArray();
    int times = Arrays.stream(byRow).mapToInt(of -> of.length).min().orElse(0);
    double centre = Arrays.stream(means).average().orElse(0);
    double kept = times < 2 ? 1 : shareOfInputs(byRow, means);
    double mean = Moments.of(whole).mean() + centre;
    int above =
        (int) Arrays.stream(means).filter(m -> mean + kept * (m - centre) > threshold).count();
    return new RowsAbove(byRow.length, above, times);
  }

  /**
   * In how many rows something that is the case or not was so in at least half of the replications.
   *
   * @param is 1 where it was, else 0
   */
  public static RowsAbove half(double[] is, int rows) {
    double[][] byRow = byRow(is, rows);
    int times = Arrays.stream(byRow).mapToInt(of -> of.length).min().orElse(0);
    int above =
        (int) Arrays.stream(byRow).filter(of -> 2 * Arrays.stream(of).sum() >= of.length).count();
    return new RowsAbove(byRow.length, above, times);
  }

  /** Values of each row that has one. */
  private static double[][] byRow(double[] values, int rows) {
    double[][] byRow = new double[Math.min(rows, values.length)][];
    for (int row = 0; row < byRow.length; row++) {
      int first = row;
      byRow[row] =
          java.util.stream.IntStream.range(0, values.length)
              .filter(at -> at % rows == first)
              .mapToDouble(at -> values[at])
              .filter(value -> !Double.isNaN(value))
              .toArray();
    }
    return Arrays.stream(byRow).filter(of -> of.length > 0).toArray(double[][]::new);
  }

  /** √((B − W)/B), by the mean number of times where rows were not simulated equally often. */
  private static double shareOfInputs(double[][] byRow, double[] means) {
    double squares = 0;
    int count = 0;
    for (double[] of : byRow) {
      squares += of.length > 1 ? Moments.of(of).variance() * (of.length - 1) : 0;
      count += of.length;
    }
    double within = squares / Math.max(1, count - byRow.length);
    double between = (double) count / byRow.length * Moments.of(means).variance();
    return between > within ? Math.sqrt((between - within) / between) : 0;
  }
}
