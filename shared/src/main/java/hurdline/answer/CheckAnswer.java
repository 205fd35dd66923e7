package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * What {@code check} says of a plant that is right: what its lines can do on average, by formula.
 *
 * @param header plant and settings; 0 replications
 * @param warnings what is allowed but looks wrong
 */
public record CheckAnswer(
    Header header, Outline outline, Capacity capacity, List<LocatedProblem> warnings)
    implements Answer {
  public CheckAnswer {
    warnings = List.copyOf(warnings);
  }
}
