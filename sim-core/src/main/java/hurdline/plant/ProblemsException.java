package hurdline.plant;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.stream.Collectors;

/** All problems of a plant at once. */
public final class ProblemsException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<LocatedProblem> problems;

  /**
   * @param problems at least one
   */
  public ProblemsException(List<LocatedProblem> problems) {
    super(problems.stream().map(LocatedProblem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<LocatedProblem> problems() {
    return problems;
  }

  /** One line of text each. */
  public List<String> lines() {
    return problems.stream().map(LocatedProblem::text).toList();
  }
}
