package hurdline.fit;

import hurdline.fit.Observations.Seen;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The distance of what was seen from a law in the weighting of Anderson and Darling. Where some had
 * not ended, the step curve K is that of Kaplan and Meier and the integral goes as far as was seen.
 *
 * <p>A² = n ∫ (K(z) − z)² / (z(1 − z)) dz with z = F of an amount. Where K is level at c, the piece
 * from a to b is n·(c²·ln(b/a) + (1 − c)²·ln((1 − a)/(1 − b)) − (b − a)). Without censoring it is
 * the usual A².
 */
final class AndersonDarling {
  private static final double EDGE = 1e-15;

  private record Point(double z, boolean ended) {}

  private AndersonDarling() {}

  /** A² of a fit; intervals count at their middles. */
  static double of(LawFit fit, Observations seen) {
    Point[] points = seen.all().stream().map(one -> point(fit, seen, one)).toArray(Point[]::new);
    return of(points);
  }

  private static Point point(LawFit fit, Observations seen, Seen one) {
    double at = (one.isGoing() ? one.low() : (one.low() + one.high()) / 2) / fit.unit();
    return new Point(
        fit.law().shareSeen(at, fit.t(), one.entry() / fit.unit(), seen.cutHigh), !one.isGoing());
  }

  /** Of amounts that all ended, by their F. */
  static double of(List<Double> shares) {
    return of(shares.stream().map(z -> new Point(z, true)).toArray(Point[]::new));
  }

  private static double of(Point[] points) {
    Arrays.sort(
        points, Comparator.comparingDouble(Point::z).thenComparing(point -> !point.ended()));
    double left = 1;
    double from = 0;
    double sum = 0;
    for (int rank = 0; rank < points.length; rank++) {
      double to = Math.min(Math.max(points[rank].z(), EDGE), 1 - EDGE);
      sum += piece(1 - left, from, to);
      from = to;
      if (points[rank].ended()) {
        left *= 1 - 1.0 / (points.length - rank);
      }
    }
    return points.length * (left <= EDGE ? sum + piece(1, from, 1) : sum);
  }

  private static double piece(double c, double a, double b) {
    if (!(b > a)) {
      return 0;
    }
    double low = c == 0 ? 0 : c * c * Math.log(b / a);
    double high = c == 1 ? 0 : (1 - c) * (1 - c) * (Math.log1p(-a) - Math.log1p(-b));
    return low + high - (b - a);
  }
}
