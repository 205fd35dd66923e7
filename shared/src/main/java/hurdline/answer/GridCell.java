package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * A cell of a grid: one value for each of its keys.
 *
 * @param at which value of each key, from 0
 * @param asItStands whether these values leave the plant as it is without them
 * @param leftOut why a plant could not be simulated with these values; none where all could
 */
public record GridCell(List<Integer> at, boolean asItStands, List<LeftOut> leftOut) {
  public GridCell {
    at = List.copyOf(at);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * A plant that is missing in a cell.
   *
   * @param plant its name
   * @param problem the first of its problems
   */
  public record LeftOut(String plant, LocatedProblem problem) {}
}
