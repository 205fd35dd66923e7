package hurdline.answer;

import java.util.List;

/**
 * Every measure of every replication.
 *
 * @param measures the columns of {@code values}
 * @param values values[replication][measure], replication 0 the first; handed over, not to be
 *     written again
 */
public record Samples(List<Measured> measures, double[][] values) {
  public Samples {
    measures = List.copyOf(measures);
  }

  /**
   * A measure of this plant.
   *
   * @param measure its full name
   * @param unit as it stands in the unit column: {@code t}, {@code USD}, {@code modules}
   */
  public record Measured(String measure, String unit) {}

  public static Samples none() {
    return new Samples(List.of(), new double[0][]);
  }
}
