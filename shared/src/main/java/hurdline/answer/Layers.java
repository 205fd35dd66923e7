package hurdline.answer;

/** Bales on top of each other, seen along the stack. */
public final class Layers {
  private Layers() {}

  /**
   * Bales of one length of a stack: w·h of square ones; of round ones, which lie in the hollows
   * between those below, w + (w − 1) + … over h layers, h·(2w − h + 1)/2.
   */
  public static int bales(int wide, int high, boolean round) {
    return round ? high * (2 * wide - high + 1) / 2 : wide * high;
  }

  /**
   * Height of h layers of bales of a height d: h·d of square ones; of round ones of a diameter d,
   * whose centers are √3/2·d above each other, d·(1 + (h − 1)·√3/2).
   */
  public static double heightM(double baleM, int high, boolean round) {
    return round ? baleM * (1 + (high - 1) * Math.sqrt(3) / 2) : baleM * high;
  }
}
