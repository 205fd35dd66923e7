package hurdline.answer;

/**
 * What there is more of in a plant that is changed in one thing.
 *
 * @param by how much more: a share, a count, or s of a shift; NaN where that is not told
 * @param to what it comes to: a count before, a count after or s after midnight as the kind says;
 *     NaN where that is not told
 */
public record Increase(Kind kind, double by, double to) {
  /** What is more. */
  public enum Kind {
    ROOM,
    POWER,
    RATE,
    /** {@code by} more than {@code to}. */
    COUNT,
    /** {@code by} s longer, ending at {@code to}. */
    LONGER_TO,
    /** {@code by} s longer, beginning at {@code to}. */
    LONGER_FROM,
    /** One more, or one less where {@code by} is -1: {@code to} now. */
    TRUCKS,
    /** Receiving until {@code to}. */
    OPEN_TO,
    /** A shift of the calendar that the season did not work. */
    WHOLE_SEASON,
    /** The file's option. */
    OPTION
  }

  public static Increase tenth(Kind kind) {
    return new Increase(kind, 0.1, Double.NaN);
  }

  public static Increase of(Kind kind) {
    return new Increase(kind, Double.NaN, Double.NaN);
  }
}
