package hurdline.text;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridRow;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where in a grid the best lies and how sure that is, in two to five sentences that one could say
 * aloud.
 */
public final class GridHeadline {
  private static final int GOALS = 2;
  private static final String WHICH = "which is higher";

  private final GridAnswer answer;
  private final KeyWords keys;
  private final Spoken spoken;
  private final GridWords words;
  private final LeadWords leads;

  public GridHeadline(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.keys = new KeyWords(answer, wording);
    this.spoken = new Spoken(wording);
    this.words = new GridWords(answer, wording);
    this.leads = new LeadWords(answer, wording);
  }

  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    List<String> goals = answer.drawn().subList(0, answer.goals());
    if (answer.plants().size() > 1 && !goals.isEmpty()) {
      leads.sentence(goals.get(0), words.label(goals.get(0))).ifPresent(sentences::add);
    }
    for (int at = 0; at < Math.min(GOALS, goals.size()); at++) {
      Optional<GridBest> best = best(goals.get(at));
      best.ifPresent(of -> sentences.add(best(of)));
      if (at == 0) {
        best.flatMap(this::edge).ifPresent(sentences::add);
      }
    }
    if (answer.header().replications() == 1) {
      sentences.add("Each value rests on one simulated year, and another may differ much.");
    } else if (sentences.size() < 2) {
      sentences.add(
          "Each value rests on "
              + spoken.number(answer.header().replications(), Double.NaN, Double.NaN, "count")
              + " simulated years.");
    }
    return sentences;
  }

  /** Of the plant that reaches the most anywhere. */
  private Optional<GridBest> best(String goal) {
    return answer.best().stream()
        .filter(best -> best.measure().equals(goal) && row(best).isPresent())
        .max(Comparator.comparingDouble(best -> row(best).orElseThrow().mean()));
  }

  private Optional<GridRow> row(GridBest best) {
    return answer.row(best.cell(), best.plant(), best.measure());
  }

  private String best(GridBest best) {
    GridRow row = row(best).orElseThrow();
    String plant = answer.plants().size() > 1 ? " with " + keys.plant(best.plant()) : "";
    String what = "The " + Titles.inText(words.label(best.measure()));
    if (words.isLevel(best.measure(), best.plant())) {
      return what
          + " is the same at every value"
          + plant
          + ": "
          + spoken.amount(row.mean(), row.low95(), row.high95(), row.unit())
          + ".";
    }
    return what
        + " is highest at "
        + keys.cell(best.cell())
        + plant
        + ": "
        + spoken.estimate(row.mean(), row.low95(), row.high95(), row.unit())
        + sure(best, row)
        + ".";
  }

  private String sure(GridBest best, GridRow row) {
    int replications = answer.header().replications();
    if (replications < 2) {
      return "";
    }
    if (best.alike().isEmpty()) {
      return ", significantly more than at every other value";
    }
    String which =
        best.alike().size() == 1
            ? "at " + keys.cell(best.alike().get(0))
            : "at "
                + spoken.number(best.alike().size(), Double.NaN, Double.NaN, "count")
                + " other values";
    return ", not significantly more than " + which + needed(best, row);
  }

  /**
   * By the intervals of both means, as if they were independent; on the same random draws fewer may
   * do. Where that is no more than were simulated, it is the many pairs of values that leave it
   * open, and no number is known.
   */
  private String needed(GridBest best, GridRow row) {
    int replications = answer.header().replications();
    return best.alike().stream()
        .flatMap(cell -> answer.row(cell, best.plant(), best.measure()).stream())
        .max(Comparator.comparingDouble(GridRow::mean))
        .map(
            next ->
                Spoken.needed(
                    replications, row.mean() - next.mean(), Math.hypot(half(row), half(next))))
        .map(
            needed ->
                "; "
                    + (needed > replications
                        ? spoken.wouldDecide(needed, replications, "replications", WHICH)
                        : "more replications would show " + WHICH))
        .orElse("");
  }

  private static double half(GridRow row) {
    return (row.high95() - row.low95()) / 2;
  }

  private Optional<String> edge(GridBest best) {
    return keys.mayRiseOn(best.cell(), best.alike())
        ? Optional.of("The grid ends there, and beyond it may be more.")
        : Optional.empty();
  }
}
