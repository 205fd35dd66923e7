package hurdline.random;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Beta distribution given by mean and sd over a finite range.
 *
 * <p>With m = (mean − low)/(high − low), s = sd/(high − low) and n = m(1 − m)/s² − 1 it is the
 * standard one of α = m·n and β = (1 − m)·n. There is no closed inverse; the library seeks it, at
 * some µs a draw, and its logarithms may differ in the last bit from processor to processor. With
 * an sd below a thousandth of the mean's distance from either end the normal distribution of the
 * same mean and sd, cut to the range, stands in, off by less than 1e-5 of that distance.
 *
 * @param mean inside the range
 * @param sd 0 or above; with 0 the amount is the mean; its square below (mean − low)·(high − mean)
 * @param low least amount, finite
 * @param high greatest amount, finite
 */
public record Beta(double mean, double sd, double low, double high) implements Distribution {
  private static final double NARROW = 1e-3;

  public Beta {
    Check.finite("mean", mean);
    Check.notBelow0("sd", sd);
    Check.finite("low", low);
    Check.finite("high", high);
    Check.cut(low, high);
    if (sd == 0) {
      Check.holds(mean, low, high);
    } else if (!(low < mean && mean < high)) {
      throw new IllegalArgumentException(
          "mean is " + mean + "; expected above low, " + low + ", and below high, " + high);
    } else if (!(sd * sd < (mean - low) * (high - mean))) {
      throw new IllegalArgumentException(
          "sd is "
              + sd
              + "; expected below "
              + Math.sqrt((mean - low) * (high - mean))
              + " for this mean and range");
    }
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (sd <= NARROW * Math.min(mean - low, high - mean)) {
      return new Normal(mean, sd, low, high).curve();
    }
    double width = high - low;
    double m = (mean - low) / width;
    double s = sd / width;
    double n = m * (1 - m) / (s * s) - 1;
    TruncatedDistribution standard =
        new TruncatedDistribution(BetaDistribution.of(m * n, (1 - m) * n), 0, 1);
    return u -> Check.within(low, low + width * standard.at(u), high);
  }
}
