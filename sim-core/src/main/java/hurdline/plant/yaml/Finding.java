package hurdline.plant.yaml;

import hurdline.plant.Problem;
import java.util.Comparator;

/**
 * A problem with its place.
 *
 * @param because the change that brought it about, such as " (with option bigger_mill)"; empty for
 *     the file as it stands
 */
record Finding(Spot place, Problem problem, String because) {

  /** File order; what no file holds comes last. */
  static final Comparator<Finding> IN_ORDER =
      Comparator.comparing((Finding finding) -> finding.place().isNowhere())
          .thenComparingInt(finding -> finding.place().line())
          .thenComparingInt(finding -> finding.place().column());

  Finding(Spot place, Problem problem) {
    this(place, problem, "");
  }

  /** One finished line. */
  String line(String file) {
    return line(file, "; expected ");
  }

  /** One finished line for something that may be meant. */
  String caution(String file) {
    return line(file, "; ");
  }

  /** Keys and names may hold line breaks, wrong as they are. */
  private String line(String file, String then) {
    String line = where(file) + ": " + problem.said() + then + problem.expected() + because;
    return line.replaceAll("\\R", " ");
  }

  private String where(String file) {
    String spot = place.isNowhere() ? file : file + ":" + place.line() + ":" + place.column();
    return problem.path().isEmpty() ? spot : spot + " " + problem.path();
  }

  Finding because(String reason) {
    return new Finding(place, problem, reason);
  }

  /** Whether both are of the same place and key. */
  boolean echoes(Finding other) {
    return place.equals(other.place) && problem.path().equals(other.problem.path());
  }
}
