package hurdline.compiled;

import java.util.Arrays;

/**
 * Hours of the horizon: disjoint intervals [from, to) of seconds, in order, none empty; two that
 * touch are one.
 *
 * <p>Kept as flat arrays, so that a question costs a binary search and a caller that walks along
 * may keep an index of its own. Never changes once made.
 */
public final class TimeWindows {
  public static final TimeWindows NONE = new TimeWindows(new double[0], new double[0]);

  private final double[] fromS;
  private final double[] toS;

  /** [i]: length of all intervals before i; the last entry is the length of all. */
  private final double[] lengthBeforeS;

  private TimeWindows(double[] fromS, double[] toS) {
    this.fromS = fromS;
    this.toS = toS;
    lengthBeforeS = new double[fromS.length + 1];
    for (int i = 0; i < fromS.length; i++) {
      lengthBeforeS[i + 1] = lengthBeforeS[i] + (toS[i] - fromS[i]);
    }
  }

  /**
   * Hours from ends in turn: from, to, from, to … The intervals may come in any order, overlap, and
   * be empty.
   *
   * @param endsS an even number of instants, read only, each interval's end not before its start
   */
  public static TimeWindows of(double... endsS) {
    TimeWindowsBuilder builder = new TimeWindowsBuilder();
    for (int i = 0; i < endsS.length; i += 2) {
      builder.add(endsS[i], endsS[i + 1]);
    }
    return builder.build();
  }

  /** Takes arrays that are in order already, none touching another, and keeps them. */
  static TimeWindows inOrder(double[] fromS, double[] toS) {
    return fromS.length == 0 ? NONE : new TimeWindows(fromS, toS);
  }

  /** Number of intervals. */
  public int count() {
    return fromS.length;
  }

  public double fromS(int interval) {
    return fromS[interval];
  }

  public double toS(int interval) {
    return toS[interval];
  }

  /** Whether the instant lies in an interval; its start does, its end does not. */
  public boolean in(double atS) {
    int interval = startedBy(atS);
    return interval >= 0 && atS < toS[interval];
  }

  /** The first start or end of an interval after the instant; +∞ if there is none. */
  public double nextChangeS(double atS) {
    int interval = startedBy(atS);
    if (interval >= 0 && atS < toS[interval]) {
      return toS[interval];
    }
    return interval + 1 < fromS.length ? fromS[interval + 1] : Double.POSITIVE_INFINITY;
  }

  /** The instant itself if it lies in an interval, else the next start; +∞ if there is none. */
  public double nextInS(double atS) {
    return in(atS) ? atS : nextChangeS(atS);
  }

  /** Length of all intervals. */
  public double lengthS() {
    return lengthBeforeS[fromS.length];
  }

  /** Length of what lies before the instant. */
  public double lengthBeforeS(double atS) {
    int interval = startedBy(atS);
    if (interval < 0) {
      return 0;
    }
    return lengthBeforeS[interval] + (Math.min(atS, toS[interval]) - fromS[interval]);
  }

  /** Length of what lies from one instant to another. */
  public double lengthS(double sinceS, double untilS) {
    return lengthBeforeS(untilS) - lengthBeforeS(sinceS);
  }

  /**
   * The first instant before which so much of the hours lies: the end of an interval rather than
   * the start of the next, and the first start for a length of 0; +∞ if there are not so many
   * hours.
   */
  public double afterS(double lengthS) {
    if (fromS.length == 0 || lengthS > lengthS()) {
      return Double.POSITIVE_INFINITY;
    }
    int found = Arrays.binarySearch(lengthBeforeS, lengthS);
    int interval = Math.max(0, found >= 0 ? found - 1 : -found - 2);
    return Math.min(fromS[interval] + (lengthS - lengthBeforeS[interval]), toS[interval]);
  }

  /** What lies in either. */
  public TimeWindows union(TimeWindows other) {
    return new TimeWindowsBuilder().add(this).add(other).build();
  }

  /** What lies in both. */
  public TimeWindows intersect(TimeWindows other) {
    TimeWindowsBuilder both = new TimeWindowsBuilder();
    int mine = 0;
    int its = 0;
    while (mine < count() && its < other.count()) {
      both.add(Math.max(fromS[mine], other.fromS[its]), Math.min(toS[mine], other.toS[its]));
      if (toS[mine] < other.toS[its]) {
        mine++;
      } else {
        its++;
      }
    }
    return both.build();
  }

  /** What lies in these hours and not in the others. */
  public TimeWindows minus(TimeWindows other) {
    return intersect(other.complement());
  }

  private TimeWindows complement() {
    TimeWindowsBuilder rest = new TimeWindowsBuilder();
    double freeSinceS = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      rest.add(freeSinceS, fromS[i]);
      freeSinceS = toS[i];
    }
    return rest.add(freeSinceS, Double.POSITIVE_INFINITY).build();
  }

  /** The last interval that has started by the instant; −1 if none has. */
  private int startedBy(double atS) {
    int found = Arrays.binarySearch(fromS, atS);
    return found >= 0 ? found : -found - 2;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TimeWindows hours
        && Arrays.equals(fromS, hours.fromS)
        && Arrays.equals(toS, hours.toS);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(fromS) + Arrays.hashCode(toS);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("hours");
    for (int i = 0; i < count(); i++) {
      text.append(" [").append(fromS[i]).append(", ").append(toS[i]).append(')');
    }
    return text.toString();
  }
}
