package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * An amount that does not vary.
 *
 * @param value the amount, finite
 */
public record Constant(double value) implements Distribution {
  public Constant {
    Check.finite("value", value);
  }

  @Override
  public DoubleUnaryOperator curve() {
    return constant(value);
  }

  @Override
  public double mean() {
    return value;
  }

  static DoubleUnaryOperator constant(double value) {
    return u -> value;
  }
}
