package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;

/**
 * Figures of a replication beside those worked out by hand, which they must meet but for rounding.
 */
public record Figures(Map<String, Double> figures) {
  private static final double ROUNDING = 1e-9;

  public static Figures of(TestPlant plant) {
    return new Figures(plant.figures());
  }

  public Figures give(String measure, double expected) {
    assertThat(figures).containsKey(measure);
    assertThat(figures.get(measure))
        .as(measure)
        .isCloseTo(expected, within(ROUNDING * Math.max(1, Math.abs(expected))));
    return this;
  }
}
