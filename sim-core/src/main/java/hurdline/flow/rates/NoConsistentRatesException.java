package hurdline.flow.rates;

import java.util.Arrays;

/**
 * No rates were found on which the holders of a knot of heads agree; says which limits and heads
 * are in the knot.
 */
final class NoConsistentRatesException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int[] limits;
  private final int[] heads;

  NoConsistentRatesException(int[] limits, int[] heads, int rounds) {
    super(
        "no rates agree after "
            + rounds
            + " rounds: limits "
            + Arrays.toString(limits)
            + " and heads "
            + Arrays.toString(heads)
            + " hold each other");
    this.limits = limits;
    this.heads = heads;
  }

  /** Numbers of the limits that hold heads of the knot. */
  int[] limits() {
    return limits.clone();
  }

  /** Numbers of the heads whose rates did not settle. */
  int[] heads() {
    return heads.clone();
  }
}
