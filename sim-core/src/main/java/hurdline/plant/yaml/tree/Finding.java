package hurdline.plant.yaml.tree;

import hurdline.plant.Problem;
import hurdline.problem.LocatedProblem;
import hurdline.problem.LocatedProblem.Severity;
import java.util.Comparator;

/**
 * A problem with its place.
 *
 * @param because the change that brought it about, such as {@code option bigger_mill}; empty for
 *     the file as it stands
 */
public record Finding(SourcePosition place, Problem problem, String because) {

  /** File order; what no file holds comes last. */
  static final Comparator<Finding> IN_ORDER =
      Comparator.comparing((Finding finding) -> finding.place().isNowhere())
          .thenComparingInt(finding -> finding.place().line())
          .thenComparingInt(finding -> finding.place().column());

  public Finding(SourcePosition place, Problem problem) {
    this(place, problem, "");
  }

  /** A problem of that file. */
  public LocatedProblem problemOf(String file) {
    return located(Severity.PROBLEM, file);
  }

  /** Something that may be meant. */
  public LocatedProblem warningOf(String file) {
    return located(Severity.WARNING, file);
  }

  private LocatedProblem located(Severity severity, String file) {
    return new LocatedProblem(
        severity,
        file,
        place.line(),
        place.column(),
        problem.path(),
        problem.said(),
        problem.expected().text(),
        problem.expected().nearest(),
        because);
  }

  public Finding because(String reason) {
    return new Finding(place, problem, reason);
  }

  /** Whether both are of the same place and key. */
  public boolean echoes(Finding other) {
    return place.equals(other.place) && problem.path().equals(other.problem.path());
  }
}
