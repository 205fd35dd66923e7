package hurdline.random;

import org.apache.commons.rng.UniformRandomProvider;

/** The random numbers of one source of chance in one replication. Not for use by two threads. */
public final class RandomStream {
  private static final double STEP = 0x1p-52;

  private final UniformRandomProvider generator;

  RandomStream(UniformRandomProvider generator) {
    this.generator = generator;
  }

  /**
   * The next number, uniform over the open interval (0, 1): the middle of one of 2⁵² equal steps,
   * so that neither end comes up and 1 − u is as good a number as u.
   */
  public double next() {
    return ((generator.nextLong() >>> 12) + 0.5) * STEP;
  }

  /** The next number as a standard normal deviate: mean 0, standard deviation 1. */
  public double nextNormal() {
    return StandardNormal.quantile(next());
  }
}
