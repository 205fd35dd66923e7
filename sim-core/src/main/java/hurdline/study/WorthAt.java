package hurdline.study;

import hurdline.estimate.Interval;
import hurdline.estimate.Summary;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** What an option is worth with one key multiplied by a factor, as far as it has been asked. */
final class WorthAt {
  /** Nearer neighbours tell the slope of a worth that goes in small jumps poorly. */
  private static final double APART = 0.02;

  private static final double[] NONE = {};

  private final String option;
  private final String key;
  private final OptionWorth worth;
  private final NavigableMap<Double, double[]> known = new TreeMap<>();

  WorthAt(String option, String key, OptionWorth worth) {
    this.option = option;
    this.key = key;
    this.worth = worth;
  }

  /** The mean; NaN where the file's rules refuse the value, which is where a search ends on that side. */
  double mean(double factor) {
    return Summary.of(values(factor)).mean();
  }

  private double[] values(double factor) {
    return known.computeIfAbsent(factor, this::ask);
  }

  private double[] ask(double factor) {
    try {
      return worth.values(option, new Change.Value(key, Swing.times(factor))).orElse(NONE);
    } catch (ProblemsException refused) {
      return NONE;
    }
  }

  /**
   * Limits of the factor at which the mean is zero: Student's interval of the mean there over the slope (the delta method), which
   * is that between the nearest factors on both sides that were asked for. No factor is below 0.
   *
   * @param factor where the mean is zero
   */
  Interval around(double factor) {
    Optional<Map.Entry<Double, double[]>> below = entry(known.lowerEntry(factor * (1 - APART)));
    Optional<Map.Entry<Double, double[]>> above = entry(known.higherEntry(factor * (1 + APART)));
    double[] here = values(factor);
    if (below.isEmpty() || above.isEmpty() || here.length < 2) {
      return Interval.NONE;
    }
    double rise = Summary.of(above.get().getValue()).mean() - Summary.of(below.get().getValue()).mean();
    double slope = rise / (above.get().getKey() - below.get().getKey());
    double half = Math.abs(Summary.of(here).mean95().halfWidth() / slope);
    return Double.isFinite(half) ? new Interval(factor - half, factor + half).within(0, Double.POSITIVE_INFINITY) : Interval.NONE;
  }

  private static Optional<Map.Entry<Double, double[]>> entry(Map.Entry<Double, double[]> of) {
    return Optional.ofNullable(of).filter(one -> one.getValue().length > 0);
  }
}
