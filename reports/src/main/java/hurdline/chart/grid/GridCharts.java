package hurdline.chart.grid;

import hurdline.answer.GridAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.Memoized;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a grid: curves where it has one key, tiles where it has two. */
public final class GridCharts {
  private final GridAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> leads = new Memoized<>(this::drawLeads);
  private final Memoized<List<Chart>> goals = new Memoized<>(this::drawGoals);
  private final Memoized<List<Chart>> others = new Memoized<>(this::drawOthers);

  public GridCharts(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What one wants most of. */
  public List<Chart> goals() {
    return goals.get();
  }

  private List<Chart> drawGoals() {
    return figures(answer.drawn().subList(0, answer.goals()));
  }

  /** What else is drawn. */
  public List<Chart> others() {
    return others.get();
  }

  private List<Chart> drawOthers() {
    return figures(answer.drawn().subList(answer.goals(), answer.drawn().size()));
  }

  /** Which plant is the best where, if there are several and two keys. */
  public List<Chart> leads() {
    return leads.get();
  }

  private List<Chart> drawLeads() {
    return answer.keys().size() == 1
        ? List.of()
        : answer.drawn().subList(0, answer.goals()).stream()
            .filter(goal -> answer.leads().stream().anyMatch(l -> l.measure().equals(goal)))
            .map(goal -> new LeadChart(answer, goal, wording).figure())
            .toList();
  }

  private List<Chart> figures(List<String> measures) {
    return measures.stream()
        .filter(one -> answer.rows().stream().anyMatch(row -> row.measure().equals(one)))
        .flatMap(this::figures)
        .toList();
  }

  private Stream<Chart> figures(String measure) {
    return answer.keys().size() == 1
        ? Stream.of(new ResponseChart(answer, measure, wording).figure())
        : answer.plants().stream()
            .map(plant -> new TileChart(answer, measure, plant, wording).figure());
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(leads(), goals(), others()).flatMap(List::stream).toList();
  }
}
