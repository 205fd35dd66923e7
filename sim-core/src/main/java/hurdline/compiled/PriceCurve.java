package hurdline.compiled;

import hurdline.plant.Curve;

/** A factor on a price by a share, along a line or in steps. */
final class PriceCurve {
  /** A share that equals a step but for rounding has reached it. */
  private static final double ROUNDING = 1e-9;

  private final boolean inSteps;
  private final Polyline line;
  private final double[] at;
  private final double[] factor;

  PriceCurve(boolean inSteps, Curve curve) {
    this.inSteps = inSteps;
    line = new Polyline(curve);
    at = curve.points().stream().mapToDouble(Curve.Point::at).toArray();
    factor = curve.points().stream().mapToDouble(Curve.Point::factor).toArray();
  }

  double factor(double share) {
    return inSteps ? step(share) : line.of(share);
  }

  private double step(double share) {
    int last = 0;
    while (last + 1 < at.length && share >= at[last + 1] * (1 - ROUNDING)) {
      last++;
    }
    return factor[last];
  }
}
