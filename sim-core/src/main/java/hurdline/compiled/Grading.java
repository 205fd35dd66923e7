package hurdline.compiled;

import hurdline.plant.Cleanliness;
import hurdline.plant.Curve;

/** By which factor the price of a package changes with what is left in it, compiled. */
public final class Grading {
  /** A share that equals a step but for rounding has reached it. */
  private static final double ROUNDING = 1e-9;

  /** The component whose share counts. */
  public final int component;

  private final boolean inSteps;
  private final Polyline line;
  private final double[] at;
  private final double[] factor;

  Grading(Cleanliness cleanliness, int component) {
    this.component = component;
    inSteps = cleanliness.inSteps();
    Curve curve = cleanliness.factors();
    line = new Polyline(curve);
    at = curve.points().stream().mapToDouble(Curve.Point::at).toArray();
    factor = curve.points().stream().mapToDouble(Curve.Point::factor).toArray();
  }

  /**
   * @param share of a package's dry matter
   */
  public double factor(double share) {
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
