package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Amounts drawn one after another from one distribution with one stream: draw n takes the stream's
 * number n. A fixed amount takes none. A draw allocates nothing of ours.
 */
public final class Draws {
  private final DoubleUnaryOperator curve;
  private final RandomStream stream;
  private final boolean fixed;

  public Draws(Distribution distribution, RandomStream stream) {
    this.curve = distribution.curve();
    this.stream = stream;
    this.fixed = distribution instanceof Constant;
  }

  /** The next amount; what is drawn below 0 counts as 0. */
  public double next() {
    return Math.max(0, drawn());
  }

  /** The next amount as a share: below 0 counts as 0, above 1 as 1. */
  public double nextShare() {
    return Math.min(1, Math.max(0, drawn()));
  }

  private double drawn() {
    return curve.applyAsDouble(fixed ? 0.5 : stream.next());
  }
}
