package hurdline.answer;

import java.util.List;

/**
 * A plan in years that neither chose nor judged any plan.
 *
 * @param gap what the best plan may be above this one; NaN where that is not known
 * @param low95 limits of the mean
 * @param p05 5th percentile of the years
 * @param interval which interval it is, as in {@link SummaryRow}
 * @param met share of years that meet each bound
 * @param limits what limits each line longest
 */
public record ChosenRow(
    int plan,
    double gap,
    double mean,
    double low95,
    double high95,
    double p05,
    int replications,
    String interval,
    List<Double> met,
    List<ChosenLimit> limits) {
  public ChosenRow {
    met = List.copyOf(met);
    limits = List.copyOf(limits);
  }
}
