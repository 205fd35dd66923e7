package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * What {@code check} says of a plant that is right: what its lines can do on average, by formula.
 *
 * @param header plant and settings; 0 replications
 * @param flows of each line at its expected capacity; what limits it has a share of 1
 * @param warnings what is allowed but looks wrong
 */
public record CheckAnswer(
    Header header,
    Outline outline,
    Capacity capacity,
    List<LineFlow> flows,
    List<LocatedProblem> warnings)
    implements Answer {
  public CheckAnswer {
    flows = List.copyOf(flows);
    warnings = List.copyOf(warnings);
  }
}
