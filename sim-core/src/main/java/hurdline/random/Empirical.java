package hurdline.random;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Observed amounts, each drawn with the same chance and nothing between them.
 *
 * @param values at least one, each finite; their order does not matter
 */
public record Empirical(List<Double> values) implements Distribution {
  public Empirical {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException(
          "values are 0 in number; expected at least 1 observed amount");
    }
    values.forEach(value -> Check.finite("observed value", value));
  }

  /** The observed amounts one by one. */
  public static Empirical of(double... values) {
    return new Empirical(Arrays.stream(values).boxed().toList());
  }

  @Override
  public DoubleUnaryOperator curve() {
    double[] rising = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return u -> rising[Math.min((int) (u * rising.length), rising.length - 1)];
  }

  @Override
  public double mean() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.size();
  }
}
