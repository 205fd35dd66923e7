package hurdline.study.run;

import hurdline.answer.Day;
import java.util.ArrayList;
import java.util.List;

/**
 * One value over a span, from points told in order of time, those before and after the span
 * included.
 */
final class SampledCurve {
  private static final double EQUAL = 1e-9;

  private final double lengthH;
  private final boolean slopes;
  private final List<Double> hours = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private double lastH = Double.NaN;
  private double last;
  private boolean over;

  /**
   * @param slopes whether the value runs straight from point to point, else it holds until the next
   */
  SampledCurve(double lengthH, boolean slopes) {
    this.lengthH = lengthH;
    this.slopes = slopes;
  }

  void is(double hour, double value) {
    if (over) {
      return;
    }
    if (hour >= 0 && hours.isEmpty()) {
      begin(hour, value);
    }
    if (hour >= lengthH) {
      end(hour, value);
    } else if (hour >= 0) {
      add(hour, value);
    }
    lastH = hour;
    last = value;
  }

  private void begin(double hour, double value) {
    add(0, Double.isNaN(lastH) ? value : at(0, hour, value));
  }

  private void end(double hour, double value) {
    over = true;
    add(lengthH, slopes ? at(lengthH, hour, value) : hour > lengthH ? last : value);
  }

  /** The value between the last point and one that is told now. */
  private double at(double wanted, double hour, double value) {
    return slopes && hour > lastH
        ? last + (value - last) * (wanted - lastH) / (hour - lastH)
        : last;
  }

  /**
   * A value that holds needs no point; one of an instant that is told again counts as told last.
   */
  private void add(double hour, double value) {
    int end = hours.size() - 1;
    if (end >= 0 && hours.get(end) >= hour) {
      values.set(end, value);
      return;
    }
    if (end >= 1 && level(end, value) && hour < lengthH) {
      hours.set(end, hour);
      return;
    }
    hours.add(hour);
    values.add(value);
  }

  private boolean level(int end, double value) {
    return Math.abs(values.get(end) - value) <= EQUAL
        && Math.abs(values.get(end - 1) - value) <= EQUAL;
  }

  Day.Curve curve(Day.Of of, String name, String unit) {
    if (hours.isEmpty()) {
      add(0, Double.isNaN(lastH) ? 0 : last);
    }
    if (!over) {
      add(lengthH, last);
    }
    return new Day.Curve(
        of,
        name,
        unit,
        hours.stream().mapToDouble(Double::doubleValue).toArray(),
        values.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
