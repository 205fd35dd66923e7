package hurdline.outside;

import java.util.Arrays;

/**
 * How far each value of a row hangs together with the next: r = Σ(yᵢ − ȳ)(yᵢ₊₁ − ȳ) / Σ(yᵢ − ȳ)²,
 * the sum above over all but the last.
 *
 * @see "NIST Statistical Reference Datasets, univariate: lag-1 autocorrelation coefficient
 *     (definition from memory)"
 */
public final class Autocorrelation {
  private Autocorrelation() {}

  public static double ofNeighbours(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double together = 0;
    double squares = 0;
    for (int i = 0; i < values.length; i++) {
      double off = values[i] - mean;
      squares += off * off;
      together += i + 1 < values.length ? off * (values[i + 1] - mean) : 0;
    }
    return together / squares;
  }
}
