package hurdline.simulation.results;

import hurdline.measure.Measure;
import java.util.List;

/**
 * What one replication came to. Arrays are handed over.
 *
 * @param columns what {@code values} are, the same for every replication of a plant
 * @param values one for each column
 * @param weekColumns what a week's values are
 * @param weeks [week][column]
 * @param monthColumns what a month's values are
 * @param months [month][column]
 * @param levels [crop][place, then all places together][day] highest level of the day
 * @param storeKg [store][day] highest level of the day
 * @param wayKg [head][node][outlet] mass that took that way
 * @param years what each year of the horizon earned and cost
 * @param shared how the building and its machines were shared among the crops
 * @param balesLeft bales at the end, wherever, of crops that fields or loads bring, and those
 *     unbaled crop would make
 */
public record Outcome(
    int replication,
    List<Column> columns,
    double[] values,
    List<Column> weekColumns,
    double[][] weeks,
    List<Column> monthColumns,
    double[][] months,
    int[][][] levels,
    double[][] storeKg,
    double[][][] wayKg,
    Years years,
    Shared shared,
    int balesLeft) {

  /**
   * How crops shared the building: more figures than most questions need, so they are kept apart.
   *
   * @param columns what {@code values} are
   * @param strips [week][2 · (machine · crops + crop)] hours at work, and behind them tonnes taken
   *     in
   */
  public record Shared(List<Column> columns, double[] values, double[][] strips) {}

  /**
   * Amounts of money by year, counted from the first day of the horizon, the last cut by its end.
   *
   * @param columns what a year's values are; the horizon's own measures where it is a year or less
   * @param values [year][column]
   */
  public record Years(List<Column> columns, double[][] values) {}

  /** The value of the measure with this full name, which the plant must have. */
  public double value(String measure) {
    for (int at = 0; at < columns.size(); at++) {
      if (columns.get(at).name().equals(measure)) {
        return values[at];
      }
    }
    throw new IllegalArgumentException(measure + " is no measure of this plant");
  }

  /**
   * A measure of this plant.
   *
   * @param name its full name
   * @param crop whose unit of count it is in, empty where it is in none
   */
  public record Column(String name, Measure measure, String crop) {}
}
