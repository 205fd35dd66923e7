package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Triangular distribution: its density rises straight from the least amount to the most likely one
 * and falls straight to the greatest.
 *
 * <p>x = low + √(u·(high − low)·(mode − low)) up to the mode, high − √((1 − u)·(high − low)·(high −
 * mode)) beyond.
 *
 * @param low least amount, finite
 * @param mode most likely amount, not below low
 * @param high greatest amount, finite, not below the mode
 */
public record Triangular(double low, double mode, double high) implements Distribution {
  public Triangular {
    Check.inOrder("low", low, "mode", mode);
    Check.inOrder("mode", mode, "high", high);
  }

  @Override
  public DoubleUnaryOperator curve() {
    double width = high - low;
    if (width == 0) {
      return Constant.constant(mode);
    }
    double rising = width * (mode - low);
    double falling = width * (high - mode);
    double shareToMode = (mode - low) / width;
    return u -> u < shareToMode ? low + Math.sqrt(u * rising) : high - Math.sqrt((1 - u) * falling);
  }

  @Override
  public double mean() {
    return (low + mode + high) / 3;
  }
}
