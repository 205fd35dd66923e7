package hurdline.chart;

import hurdline.answer.GridAnswer;
import hurdline.words.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a grid: curves where it has one key, tiles where it has two. */
public final class GridFigures {
  private final GridAnswer answer;
  private final Wording wording;
  private final Once<List<Figure>> leads = new Once<>(this::drawLeads);
  private final Once<List<Figure>> goals = new Once<>(this::drawGoals);
  private final Once<List<Figure>> others = new Once<>(this::drawOthers);

  public GridFigures(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What one wants most of. */
  public List<Figure> goals() {
    return goals.get();
  }

  private List<Figure> drawGoals() {
    return figures(answer.drawn().subList(0, answer.goals()));
  }

  /** What else is drawn. */
  public List<Figure> others() {
    return others.get();
  }

  private List<Figure> drawOthers() {
    return figures(answer.drawn().subList(answer.goals(), answer.drawn().size()));
  }

  /** Which plant is the best where, if there are several and two keys. */
  public List<Figure> leads() {
    return leads.get();
  }

  private List<Figure> drawLeads() {
    return answer.keys().size() == 1
        ? List.of()
        : answer.drawn().subList(0, answer.goals()).stream()
            .filter(goal -> answer.leads().stream().anyMatch(l -> l.measure().equals(goal)))
            .map(goal -> new LeadChart(answer, goal, wording).figure())
            .toList();
  }

  private List<Figure> figures(List<String> measures) {
    return measures.stream()
        .filter(one -> answer.rows().stream().anyMatch(row -> row.measure().equals(one)))
        .flatMap(this::figures)
        .toList();
  }

  private Stream<Figure> figures(String measure) {
    return answer.keys().size() == 1
        ? Stream.of(new ResponseChart(answer, measure, wording).figure())
        : answer.plants().stream()
            .map(plant -> new TileChart(answer, measure, plant, wording).figure());
  }

  /** Every chart, in the order of the report. */
  public List<Figure> all() {
    return Stream.of(leads(), goals(), others()).flatMap(List::stream).toList();
  }
}
