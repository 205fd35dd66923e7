package hurdline.study.replicate;

import java.util.List;

/**
 * What the replications done so far say of one figure.
 *
 * @param label of the figure, a word
 * @param names of what the kind speaks of
 * @param unit of the engine, such as {@code t}
 * @param low95 NaN where too few are done
 */
public record HeadlineSoFar(
    Kind kind,
    String label,
    List<String> names,
    String unit,
    double mean,
    double low95,
    double high95) {
  public HeadlineSoFar {
    names = List.copyOf(names);
  }

  /** Whose figure it is. */
  public enum Kind {
    /** That of the plant. */
    MEAN,
    /** How far the first of two named plants is above the second. */
    LEAD,
    /** Room that the yard needs. */
    ROOM,
    /** That of the cell with the highest, among as many as are named. */
    HIGHEST,
    /** How far the best plan may be above the leader. */
    GAP
  }

  /** Where too few replications are done to say anything. */
  public static HeadlineSoFar unknown() {
    return new HeadlineSoFar(Kind.MEAN, "", List.of(), "", Double.NaN, Double.NaN, Double.NaN);
  }
}
