package hurdline.plant;

import java.util.List;

/**
 * A factor that depends on one property of the lot: piecewise linear, level beyond its ends.
 *
 * @param points by rising property; empty means the factor 1 everywhere
 */
public record Curve(List<Point> points) {

  /** The factor 1 everywhere. */
  public static final Curve NONE = new Curve(List.of());

  public Curve {
    points = List.copyOf(points);
  }

  /** A property's value (share or metres) and the factor there. */
  public record Point(double at, double factor) {
    public Point {
      Check.notBelow0("at", at);
      Check.notBelow0("factor", factor);
    }
  }

  public boolean isNone() {
    return points.isEmpty();
  }
}
