package hurdline.chart.choose;

import hurdline.answer.ChooseAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.Memoized;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a choice among very many plans. */
public final class ChooseCharts {
  private final ChooseAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> frontier = new Memoized<>(this::drawFrontier);
  private final Memoized<List<Chart>> effects = new Memoized<>(this::drawEffects);

  public ChooseCharts(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What each budget buys, where some were named. */
  public List<Chart> frontier() {
    return frontier.get();
  }

  private List<Chart> drawFrontier() {
    return answer.frontier().size() > 1
        ? List.of(new FrontierChart(answer, wording).figure())
        : List.of();
  }

  /** What another value of each choice does to the named plan. */
  public List<Chart> effects() {
    return effects.get();
  }

  private List<Chart> drawEffects() {
    return answer.effects().isEmpty()
        ? List.of()
        : List.of(new EffectChart(answer, wording).figure());
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(frontier(), effects()).flatMap(List::stream).toList();
  }
}
