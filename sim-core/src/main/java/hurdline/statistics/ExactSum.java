package hurdline.statistics;

import java.math.BigInteger;

/**
 * A sum of doubles that is rounded only once, when it is asked for; so it is the same whatever the
 * order of the terms and however they are grouped.
 *
 * <p>The sum stands in 32 bits of each of 67 whole numbers, which leaves room for carries of 512
 * terms before they must be passed on. Each term goes into the two or three that its 53 bits reach.
 *
 * @see "R. M. Neal (2015), Fast exact summation using small and large superaccumulators,
 *     arXiv:1505.05571, section 2; cited from memory"
 */
public final class ExactSum {
  private static final int CHUNK_BITS = 32;
  private static final long CHUNK_MASK = 0xffff_ffffL;
  private static final int FRACTION_BITS = 52;
  private static final int LARGEST_EXPONENT = 0x7ff;
  private static final int LEAST_POWER = -1074; // of the last bit of a double
  private static final int ROOM = 512;
  private static final int HEAD_BITS = 62;

  private final long[] chunks =
      new long[67]; // 2,099 bits of a double's range, and above them 45 for the number of terms
  private int room = ROOM;
  private double notFinite; // 0 where all terms are finite

  /**
   * One more term; where any is infinite or no number, the sum is what plain addition says of
   * those.
   */
  public void add(double term) {
    long bits = Double.doubleToRawLongBits(term);
    int exponent = (int) (bits >>> FRACTION_BITS) & LARGEST_EXPONENT;
    if (exponent == LARGEST_EXPONENT) {
      notFinite += term;
      return;
    }
    long fraction = bits & ((1L << FRACTION_BITS) - 1);
    long digits = exponent == 0 ? fraction : fraction | 1L << FRACTION_BITS;
    int power = Math.max(0, exponent - 1);
    int at = power / CHUNK_BITS;
    int shift = power % CHUNK_BITS;
    long low = (digits << shift) & CHUNK_MASK;
    long high = digits >>> (CHUNK_BITS - shift);
    chunks[at] += bits < 0 ? -low : low;
    chunks[at + 1] += bits < 0 ? -high : high;
    if (--room == 0) {
      carry();
    }
  }

  /** The same term so many times. */
  public void add(double term, int times) {
    double product = term * times;
    add(product);
    add(Double.isFinite(product) ? Math.fma(term, times, -product) : 0); // what rounding left out
  }

  /** All terms of another sum. */
  public void add(ExactSum other) {
    other.carry();
    carry();
    for (int at = 0; at < chunks.length; at++) {
      chunks[at] += other.chunks[at];
    }
    carry();
    notFinite += other.notFinite;
  }

  /** Brings every number but the last down to its 32 bits. */
  private void carry() {
    for (int at = 0; at + 1 < chunks.length; at++) {
      chunks[at + 1] += chunks[at] >> CHUNK_BITS;
      chunks[at] &= CHUNK_MASK;
    }
    room = ROOM;
  }

  /**
   * The double nearest to the sum, of two equally near the even one; within the range of numbers
   * that keep 53 bits.
   */
  public double value() {
    if (notFinite != 0 || Double.isNaN(notFinite)) {
      return notFinite;
    }
    BigInteger whole = BigInteger.ZERO;
    for (int at = chunks.length - 1; at >= 0; at--) {
      whole = whole.shiftLeft(CHUNK_BITS).add(BigInteger.valueOf(chunks[at]));
    }
    BigInteger size = whole.abs();
    int cut = Math.max(0, size.bitLength() - HEAD_BITS);
    long head = size.shiftRight(cut).longValue();
    boolean more = cut > 0 && size.getLowestSetBit() < cut;
    double rounded = Math.scalb((double) (more ? head | 1 : head), cut + LEAST_POWER);
    return whole.signum() < 0 ? -rounded : rounded;
  }
}
