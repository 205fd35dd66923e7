package hurdline.study.choose;

import hurdline.answer.ChooseTerms;
import hurdline.study.replicate.IndifferenceZone;
import java.util.List;

/**
 * What is asked of very many plans.
 *
 * @param narrowed choices of the call: values of a choice of the file, or of a key
 * @param best the measure of which the greatest mean is wanted, and the gap that is small enough
 * @param worth whether the yearly cost of capital is taken off
 * @param bounds what is asked of a share of years; units are looked up
 * @param budgets most that a plan may cost, each for itself; none of them twice
 * @param eachGap whether plans left are set all against all in the end
 * @param mostYears years after which no round is begun; 0 for no such limit
 * @param independent whether each plan has draws of its own and is judged in two stages, not in
 *     rounds against one leader
 */
public record ChooseAsk(
    List<ChoiceChange> narrowed,
    IndifferenceZone best,
    boolean worth,
    List<ChooseTerms.Bound> bounds,
    List<Double> budgets,
    boolean eachGap,
    long mostYears,
    boolean independent) {
  public ChooseAsk {
    narrowed = List.copyOf(narrowed);
    bounds = List.copyOf(bounds);
    budgets = List.copyOf(budgets);
  }
}
