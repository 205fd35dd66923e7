package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Uniform distribution: every amount of the range is as likely as any other.
 *
 * @param low least amount, finite
 * @param high greatest amount, finite, not below low
 */
public record Uniform(double low, double high) implements Distribution {
  public Uniform {
    Check.inOrder("low", low, "high", high);
  }

  @Override
  public DoubleUnaryOperator curve() {
    return u -> Math.min(low + u * (high - low), high);
  }

  @Override
  public double mean() {
    return low + (high - low) / 2;
  }
}
