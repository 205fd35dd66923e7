package hurdline.study.compare;

import hurdline.answer.Selection;
import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.SelectionOfBest;
import hurdline.study.AnswerRows;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Picks the best of base and options: what the comparison has simulated are the first replications,
 * and those that are left are simulated on until one is.
 */
final class BestSelection {
  private static final double CONFIDENCE = 0.95;
  private static final int BATCH = 10;
  private static final int MOST = 10_000;

  private final IndifferenceZone zone;
  private final List<CompiledPlant> stages;
  private final List<String> names;
  private final int first;

  /**
   * @param names of the stages, the base first
   * @param first replications from which the spread of differences is taken, settled beforehand
   */
  BestSelection(IndifferenceZone zone, List<CompiledPlant> stages, List<String> names, int first) {
    this.zone = zone;
    this.stages = stages;
    this.names = names;
    this.first = first;
  }

  /** Nothing where too little was simulated. */
  Selection simulate(
      InterleavedRuns.Simulated simulated, AnswerRows rows, ReplicationBudget simulations) {
    List<ReplicationResults> figures = simulated.figures();
    check(figures);
    if (figures.get(0).count() < first) {
      return Selection.none();
    }
    double[][] values =
        figures.stream().map(of -> of.series(zone.measure())).toArray(double[][]::new);
    double[][] begun = Arrays.stream(values).map(of -> signed(of, first)).toArray(double[][]::new);
    SelectionOfBest selection = new SelectionOfBest(begun, zone.width(), CONFIDENCE);
    int[] taken = new int[stages.size()];
    Arrays.fill(taken, first);
    while (!selection.isDecided() && selection.taken() < MOST) {
      int next = selection.taken();
      if (next == values[selection.left().get(0)].length
          && !simulateOn(selection, values, simulations)) {
        break;
      }
      double[] one = new double[stages.size()];
      for (int at : selection.left()) {
        one[at] = zone.least() ? -values[at][next] : values[at][next];
        taken[at]++;
      }
      selection.take(one);
    }
    return answer(selection, values, taken, rows);
  }

  private void check(List<ReplicationResults> figures) {
    for (ReplicationResults of : figures) {
      if (!of.has(zone.measure())) {
        List<String> known = of.columns().stream().map(Outcome.Column::name).toList();
        throw wrong(
            "asks for a measure that not all of these plants have",
            Nearest.expected("a measure", zone.measure(), known));
      }
      if (Arrays.stream(of.series(zone.measure())).anyMatch(Double::isNaN)) {
        throw wrong(
            "asks for a measure without a value in some years",
            Expected.of("one that every year has"));
      }
    }
  }

  private ProblemsException wrong(String said, Expected expected) {
    String found = "\"" + zone.said() + "\" " + said;
    return new ProblemsException(
        List.of(LocatedProblem.of("", found, expected.text(), expected.nearest())));
  }

  private double[] signed(double[] values, int count) {
    return Arrays.stream(values).limit(count).map(value -> zone.least() ? -value : value).toArray();
  }

  /** Some more of each that is left; false if stop was asked for. */
  private boolean simulateOn(
      SelectionOfBest selection, double[][] values, ReplicationBudget simulations) {
    for (int at : selection.left()) {
      double[] more = simulations.further(stages.get(at), values[at].length, BATCH, zone.measure());
      if (more.length < BATCH) {
        return false;
      }
      int before = values[at].length;
      values[at] = Arrays.copyOf(values[at], before + BATCH);
      System.arraycopy(more, 0, values[at], before, BATCH);
    }
    return true;
  }

  private Selection answer(
      SelectionOfBest selection, double[][] values, int[] taken, AnswerRows rows) {
    List<Selection.Row> all = new ArrayList<>();
    for (int at = 0; at < taken.length; at++) {
      double mean = Arrays.stream(values[at]).limit(taken[at]).average().orElseThrow();
      all.add(new Selection.Row(names.get(at), mean, taken[at], selection.left().contains(at)));
    }
    return new Selection(
        zone.measure(),
        rows.unit(zone.measure()),
        zone.width(),
        zone.least(),
        CONFIDENCE,
        first,
        selection.isDecided(),
        names.get(selection.best()),
        all);
  }
}
