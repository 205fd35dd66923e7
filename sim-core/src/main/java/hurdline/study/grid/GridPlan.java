package hurdline.study.grid;

import hurdline.answer.GridCell;
import hurdline.answer.GridKey;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.study.Scenario;
import hurdline.study.Twins;
import java.util.ArrayList;
import java.util.List;

/**
 * The cells of a grid and the plants in each, read and found without problems before any is
 * simulated.
 */
final class GridPlan {
  private final List<Scenario> alternatives;
  private final List<GridKey> keys;
  private final List<GridCell> cells = new ArrayList<>();
  private final List<List<Planted>> planted = new ArrayList<>();

  /** A plant that a cell simulates. */
  record Planted(String name, Plant plant) {}

  /**
   * @throws ProblemsException if a plant has problems without the varied values, or none can be
   *     simulated with any
   */
  GridPlan(List<Scenario> alternatives, List<GridKey> keys) {
    this.alternatives = alternatives;
    this.keys = keys;
    List<Plant> asTheyStand = alternatives.stream().map(plant -> plant.with(List.of())).toList();
    ProblemsException first = null;
    for (List<Integer> at : places()) {
      ProblemsException wrong = add(at, asTheyStand);
      first = first == null ? wrong : first;
    }
    if (first != null && planted.stream().allMatch(List::isEmpty)) {
      throw first;
    }
    refuseTwins();
  }

  /**
   * A varied value takes the place of what an option says; two plants that are one tell nothing.
   */
  private void refuseTwins() {
    for (int a = 0; a < alternatives.size(); a++) {
      for (int b = a + 1; b < alternatives.size(); b++) {
        String one = alternatives.get(a).name();
        String other = alternatives.get(b).name();
        if (planted.stream().allMatch(cell -> areOne(cell, one, other))) {
          throw Twins.refusal(
              alternatives.get(a).source(),
              one,
              other,
              "at every value",
              "another key, factors such as x0.8, or only one of the two");
        }
      }
    }
  }

  private static boolean areOne(List<Planted> cell, String one, String other) {
    Plant first = null;
    Plant second = null;
    for (Planted planted : cell) {
      first = planted.name().equals(one) ? planted.plant() : first;
      second = planted.name().equals(other) ? planted.plant() : second;
    }
    return first == null ? second == null : first.equals(second);
  }

  /** Every pair of values, the last key's fastest. */
  private List<List<Integer>> places() {
    List<List<Integer>> places = List.of(List.of());
    for (GridKey key : keys) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> place : places) {
        for (int value = 0; value < key.values().size(); value++) {
          List<Integer> at = new ArrayList<>(place);
          at.add(value);
          longer.add(at);
        }
      }
      places = longer;
    }
    return places;
  }

  /** The first of the problems; null where all plants have none. */
  private ProblemsException add(List<Integer> at, List<Plant> asTheyStand) {
    List<Planted> here = new ArrayList<>();
    List<GridCell.LeftOut> leftOut = new ArrayList<>();
    ProblemsException first = null;
    boolean same = true;
    for (int a = 0; a < alternatives.size(); a++) {
      Scenario alternative = alternatives.get(a);
      try {
        Plant plant = alternative.with(changes(at));
        here.add(new Planted(alternative.name(), plant));
        same &= plant.equals(asTheyStand.get(a));
      } catch (ProblemsException wrong) {
        leftOut.add(new GridCell.LeftOut(alternative.name(), told(alternative, wrong)));
        first = first == null ? wrong : first;
        same = false;
      }
    }
    cells.add(new GridCell(at, same, leftOut));
    planted.add(here);
    return first;
  }

  /** The first problem, without the folder that the file lies in. */
  private static LocatedProblem told(Scenario alternative, ProblemsException wrong) {
    LocatedProblem first = wrong.problems().get(0);
    String base = alternative.source().file();
    return first.file().endsWith(base) ? first.inFile(base) : first;
  }

  private List<Change> changes(List<Integer> at) {
    List<Change> changes = new ArrayList<>();
    for (int key = 0; key < keys.size(); key++) {
      changes.add(
          new Change.Value(keys.get(key).path(), keys.get(key).values().get(at.get(key)).text()));
    }
    return changes;
  }

  List<GridCell> cells() {
    return cells;
  }

  /** What is simulated in a cell. */
  List<Planted> in(int cell) {
    return planted.get(cell);
  }

  /** How many plants there are over all cells. */
  int plants() {
    return planted.stream().mapToInt(List::size).sum();
  }
}
