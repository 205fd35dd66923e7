package hurdline.unit;

/** So many of something, in words that fit the number: {@code 1 row}, {@code 2 rows}. */
public final class Counted {
  private static final String LIFE = "life";

  private Counted() {}

  /**
   * {@code 1 row}, {@code 12 rows}.
   *
   * @param one the name of one of them
   */
  public static String of(long count, String one) {
    return count + " " + noun(count, one);
  }

  /**
   * The same with a number that is written already, such as {@code 1,200}.
   *
   * @param written stands for {@code count}
   */
  public static String of(double count, String written, String one) {
    return written + " " + noun(count, one);
  }

  /** The name of so many: {@code row} of one, {@code rows} of none or several. */
  public static String noun(double count, String one) {
    if (count == 1) {
      return one;
    }
    return one.endsWith(LIFE)
        ? one.substring(0, one.length() - LIFE.length()) + "lives"
        : one + "s";
  }

  /** {@code is} of one, {@code are} of none or several. */
  public static String are(long count) {
    return count == 1 ? "is" : "are";
  }
}
