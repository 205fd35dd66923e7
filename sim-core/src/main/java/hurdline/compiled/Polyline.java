package hurdline.compiled;

import hurdline.plant.Curve;

/**
 * A correction curve in flat arrays: piecewise linear, level beyond its ends; 1 where it has no
 * points.
 */
public final class Polyline {
  private final double[] at;
  private final double[] factor;

  Polyline(Curve curve) {
    at = curve.points().stream().mapToDouble(Curve.Point::at).toArray();
    factor = curve.points().stream().mapToDouble(Curve.Point::factor).toArray();
  }

  /** Whether it corrects nothing, whatever the value. */
  public boolean isOne() {
    return at.length == 0;
  }

  /** The greatest factor. */
  public double most() {
    double most = at.length == 0 ? 1 : factor[0];
    for (double each : factor) {
      most = Math.max(most, each);
    }
    return most;
  }

  /** Factor at a property's value. */
  public double of(double value) {
    int n = at.length;
    if (n == 0) {
      return 1;
    }
    if (!(value > at[0])) {
      return factor[0];
    }
    for (int i = 1; i < n; i++) {
      if (value <= at[i]) {
        double share = (value - at[i - 1]) / (at[i] - at[i - 1]);
        return factor[i - 1] + share * (factor[i] - factor[i - 1]);
      }
    }
    return factor[n - 1];
  }
}
