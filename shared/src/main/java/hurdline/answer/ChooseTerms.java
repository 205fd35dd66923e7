package hurdline.answer;

import java.util.List;

/**
 * By what a plan was chosen.
 *
 * @param measure of which the greatest mean is the best
 * @param unit of the measure
 * @param band gap at which no more rounds were due
 * @param worth whether the yearly cost of capital was taken off
 * @param alpha chance with which what is said of all budgets together may be wrong
 * @param choosing years that chose the first leader, or of the first stage
 * @param rounds new years of each round, as said beforehand; none of two stages
 * @param eachGap whether plans left were set all against all in the end
 * @param bounds what was asked of a share of the years
 * @param mostYears years after which no round was begun; 0 for no such limit
 * @param independent whether each plan had draws of its own and was judged in two stages
 */
public record ChooseTerms(
    String measure,
    String unit,
    double band,
    boolean worth,
    double alpha,
    int choosing,
    List<Integer> rounds,
    boolean eachGap,
    List<Bound> bounds,
    long mostYears,
    boolean independent) {
  public ChooseTerms {
    rounds = List.copyOf(rounds);
    bounds = List.copyOf(bounds);
  }

  /**
   * A bound on a measure.
   *
   * @param share of years in which it is to be met
   */
  public record Bound(String measure, String unit, boolean atLeast, double value, double share) {}
}
