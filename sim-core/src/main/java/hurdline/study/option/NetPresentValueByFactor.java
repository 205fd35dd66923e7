package hurdline.study.option;

import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.statistics.Interval;
import hurdline.statistics.Summary;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** What an option is worth with one key multiplied by a factor, as far as it has been asked. */
final class NetPresentValueByFactor {
  /** Nearer neighbours tell the slope of a worth that goes in small jumps poorly. */
  private static final double APART = 0.02;

  private static final double[] NONE = {};

  private final String option;
  private final String key;
  private final OptionNetPresentValue.Worth worth;
  private final NavigableMap<Double, double[]> known = new TreeMap<>();

  NetPresentValueByFactor(String option, String key, OptionNetPresentValue.Worth worth) {
    this.option = option;
    this.key = key;
    this.worth = worth;
  }

  /**
   * The mean; NaN where the file's rules refuse the value, which is where a search ends on that
   * side.
   */
  double mean(double factor) {
    return Summary.of(values(factor)).mean();
  }

  private double[] values(double factor) {
    return known.computeIfAbsent(factor, this::ask);
  }

  private double[] ask(double factor) {
    try {
      return worth.of(option, new Change.Value(key, InputRange.times(factor))).orElse(NONE);
    } catch (ProblemsException refused) {
      return NONE;
    }
  }

  /**
   * Limits of the factor at which the mean is zero: Student's interval of the mean there over the
   * slope (the delta method), which is that between the nearest factors on both sides. Where a side
   * has none that was asked for, as close to an end of what was searched, one more is asked for. No
   * factor is below 0.
   *
   * @param factor where the mean is zero
   */
  Interval around(double factor) {
    double[] here = values(factor);
    if (here.length < 2) {
      return Interval.NONE;
    }
    Point below = beside(factor, -1);
    Point above = beside(factor, 1);
    double slope = (above.mean() - below.mean()) / (above.factor() - below.factor());
    double half = Math.abs(Summary.of(here).mean95().halfWidth() / slope);
    return Double.isFinite(half)
        ? new Interval(factor - half, factor + half).within(0, Double.POSITIVE_INFINITY)
        : Interval.NONE;
  }

  private record Point(double factor, double mean) {}

  /**
   * The nearest point on one side that tells a slope; the crossing itself where the file's rules
   * refuse that side.
   */
  private Point beside(double factor, int side) {
    double near = factor * (1 + side * APART);
    Map.Entry<Double, double[]> asked =
        side < 0 ? known.floorEntry(near) : known.ceilingEntry(near);
    double at = asked != null && asked.getValue().length > 0 ? asked.getKey() : near;
    double mean = mean(at);
    return Double.isNaN(mean) ? new Point(factor, mean(factor)) : new Point(at, mean);
  }
}
