package hurdline.text;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridRow;
import hurdline.answer.Header;
import hurdline.unit.Counted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The answer of a grid for the terminal, and in sentences for the report. */
public final class GridWords {
  private static final int CELLS_TOLD = 3;

  private final GridAnswer answer;
  private final Wording wording;
  private final KeyWords keys;
  private final LeadWords leads;

  public GridWords(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    keys = new KeyWords(answer, wording);
    leads = new LeadWords(answer, wording);
  }

  /**
   * What the terminal shows: what one would say of it, the main figures as a table, and where the
   * best lies goal by goal.
   *
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new GridHeadline(answer, wording).sentences());
    lines.add("");
    lines.addAll(GridTable.of(answer, wording).lines(width));
    lines.add("");
    List<String> told = new ArrayList<>(goals());
    leftOut().ifPresent(told::add);
    told.forEach(sentence -> lines.add(sentence.substring(0, sentence.length() - 1)));
    lines.add(legend());
    return lines;
  }

  /** What the figures of the table are. */
  public String legend() {
    int replications = answer.header().replications();
    return replications == 1
        ? "One simulated year at each value: no interval can be given."
        : "Intervals are those of the mean of "
            + wording.count(replications)
            + " simulated years at each value.";
  }

  /** On the best plant, on the best of each goal and plant, and on the other measures. */
  public List<String> sentences() {
    List<String> all = new ArrayList<>(goals());
    all.addAll(others());
    leftOut().ifPresent(all::add);
    return all;
  }

  private List<String> goals() {
    List<String> all = new ArrayList<>();
    for (String goal : answer.drawn().subList(0, answer.goals())) {
      leads.sentence(goal, label(goal)).ifPresent(all::add);
      all.addAll(ofPlants(goal, plant -> best(goal, plant)));
    }
    return all;
  }

  private List<String> others() {
    List<String> all = new ArrayList<>();
    for (String other : answer.drawn().subList(answer.goals(), answer.drawn().size())) {
      all.addAll(ofPlants(other, plant -> span(other, plant)));
    }
    return all;
  }

  /**
   * What is to be said of a measure for each plant, once for all plants of which it is the same.
   */
  private List<String> ofPlants(String measure, Function<String, Optional<String>> said) {
    Map<String, List<String>> plants = new LinkedHashMap<>();
    for (String plant : answer.plants()) {
      said.apply(plant)
          .ifPresent(text -> plants.computeIfAbsent(text, key -> new ArrayList<>()).add(plant));
    }
    List<String> sentences = new ArrayList<>();
    plants.forEach(
        (text, same) ->
            sentences.add(
                KeyWords.capital(label(measure))
                    + (answer.plants().size() > 1
                        ? " of "
                            + same.stream().map(keys::plant).collect(Collectors.joining(" and "))
                        : "")
                    + ": "
                    + text));
    return sentences;
  }

  private String title() {
    Header header = answer.header();
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", "
        + keys.plants()
        + title.changes()
        + ", "
        + keys.ranges()
        + " ("
        + answer.cells().size()
        + (answer.keys().size() == 1 ? " values" : " cells")
        + "), "
        + title.simulatedEach();
  }

  /** What a drawn measure is called. */
  public String label(String measure) {
    return MainMeasures.label(measure, answer.outline(), wording);
  }

  private Optional<String> best(String goal, String plant) {
    return answer.best().stream()
        .filter(best -> best.measure().equals(goal) && best.plant().equals(plant))
        .findFirst()
        .map(best -> isLevel(goal, plant) ? level(best) : best(best, rows(goal, plant).size()));
  }

  /** Whether a measure is the same in all cells but for rounding. */
  boolean isLevel(String measure, String plant) {
    DoubleSummaryStatistics means =
        rows(measure, plant).stream().mapToDouble(GridRow::mean).summaryStatistics();
    double furthest = Math.max(Math.abs(means.getMax()), Math.abs(means.getMin()));
    return means.getCount() > 1 && means.getMax() - means.getMin() <= 1e-9 * furthest;
  }

  private String level(GridBest best) {
    return "the same at every value, " + amount(best.cell(), best.plant(), best.measure()) + ".";
  }

  private String best(GridBest best, int cells) {
    if (answer.header().replications() > 1 && best.alike().size() == cells - 1) {
      return "no value differs significantly from the highest, at "
          + keys.cell(best.cell())
          + ", "
          + amount(best.cell(), best.plant(), best.measure())
          + ".";
    }
    String edge =
        keys.mayRiseOn(best.cell(), best.alike())
            ? "; the grid ends there, and beyond it may be more"
            : "";
    return "highest at "
        + keys.cell(best.cell())
        + ", "
        + amount(best.cell(), best.plant(), best.measure())
        + "; "
        + told(best, cells)
        + edge
        + ".";
  }

  private String told(GridBest best, int cells) {
    if (answer.header().replications() < 2) {
      return "one replication says nothing about the spread";
    }
    if (best.alike().isEmpty()) {
      return "significantly different from every other value";
    }
    if (answer.keys().size() == 1) {
      return "no significant difference from it: " + keys.runs(best.alike());
    }
    if (best.alike().size() <= CELLS_TOLD) {
      return "no significant difference from it: "
          + best.alike().stream().map(keys::cell).collect(Collectors.joining("; "));
    }
    long beside =
        best.alike().stream().filter(cell -> keys.areNeighbours(cell, best.cell())).count();
    long all =
        IntStream.range(0, answer.cells().size())
            .filter(cell -> keys.areNeighbours(cell, best.cell()))
            .count();
    return "no significant difference from it: "
        + best.alike().size()
        + " of the other "
        + Counted.of(cells - 1, "cell")
        + ", "
        + beside
        + " of its "
        + all
        + " neighbors among them";
  }

  /** From where to where a measure goes over the cells. */
  private Optional<String> span(String measure, String plant) {
    List<GridRow> rows = rows(measure, plant);
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    if (rows.size() == 1 || isLevel(measure, plant)) {
      return Optional.of(amount(rows.get(0)) + (rows.size() > 1 ? " at every value." : "."));
    }
    GridRow least = rows.stream().min(Comparator.comparingDouble(GridRow::mean)).orElseThrow();
    GridRow most = rows.stream().max(Comparator.comparingDouble(GridRow::mean)).orElseThrow();
    if (least.high95() >= most.mean() && most.low95() <= least.mean()) {
      return Optional.of("about " + amount(rows.get(0)) + " at every value.");
    }
    return Optional.of(
        "from "
            + amount(least)
            + " at "
            + keys.cell(least.cell())
            + " to "
            + amount(most)
            + " at "
            + keys.cell(most.cell())
            + ".");
  }

  private List<GridRow> rows(String measure, String plant) {
    return answer.rows().stream()
        .filter(row -> row.measure().equals(measure) && row.plant().equals(plant))
        .filter(row -> !Double.isNaN(row.mean()))
        .toList();
  }

  private String amount(int cell, String plant, String measure) {
    return answer.row(cell, plant, measure).map(this::amount).orElse("not defined");
  }

  /** {@code 2,560 ton (2,520 to 2,600)}. */
  private String amount(GridRow row) {
    return wording.withInterval(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private Optional<String> leftOut() {
    List<GridCell> missing =
        answer.cells().stream().filter(cell -> !cell.leftOut().isEmpty()).toList();
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "Left out, since the plant has problems there: "
            + missing.stream()
                .map(cell -> keys.cell(answer.cells().indexOf(cell)))
                .collect(Collectors.joining("; "))
            + ".");
  }
}
