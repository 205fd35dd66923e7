package hurdline.plant;

import java.util.List;

/**
 * A market that takes so much of a product in each period at the product's price, and more at
 * another.
 *
 * @param beyond mass sold in a period from which a factor on the price holds, up to the next; the
 *     factor is 1 below the first
 */
public record Market(Per per, Curve beyond) {
  /** After which the market takes as much again. */
  public enum Per {
    /** Of the calendar. */
    MONTH,
    /** From the calendar's first day. */
    YEAR
  }

  /** What it takes in a period at the price. */
  public double takesKg() {
    return beyond.isNone() ? Double.POSITIVE_INFINITY : beyond.points().get(0).at();
  }

  /** The mass that would earn as much at the price as {@code kg} of a period do. */
  public double paidKg(double kg) {
    double paidKg = Math.min(kg, takesKg());
    for (int at = 0; at < beyond.points().size(); at++) {
      paidKg += beyond.points().get(at).factor() * stepKg(at, kg);
    }
    return paidKg;
  }

  /** What finds a buyer: all but what would be paid nothing. */
  public double soldKg(double kg) {
    double soldKg = Math.min(kg, takesKg());
    for (int at = 0; at < beyond.points().size(); at++) {
      soldKg += beyond.points().get(at).factor() > 0 ? stepKg(at, kg) : 0;
    }
    return soldKg;
  }

  private double stepKg(int at, double kg) {
    List<Curve.Point> points = beyond.points();
    double toKg = at + 1 < points.size() ? Math.min(kg, points.get(at + 1).at()) : kg;
    return Math.max(0, toKg - points.get(at).at());
  }
}
