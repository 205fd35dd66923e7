package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import hurdline.chart.flow.FlowLayout.Spot;
import hurdline.chart.flow.FlowLayout.Way;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the pipes of a line run and where their figures stand: pipes bend only between rows, where
 * no box is, and what returns goes round the whole drawing.
 */
final class FlowPipes {
  static final double ROW = 84;
  static final double BOX = 38;

  private static final double[] ALONG = {0.55, 0.4, 0.7, 0.28, 0.82, 0.2, 0.88};
  private static final double[] ASIDE = {0, 0.6, -0.6, 1.1, -1.1, 1.7, -1.7, 2.3, -2.3};
  private static final double RETURN_APART = 46;
  private static final double HEIGHT = 14;

  private final List<Way> ways;
  private final List<Way> returning;
  private final double drawn;
  private final List<Rectangle2D> boxes;
  private final Map<Way, Rectangle2D> labels = new HashMap<>();

  /**
   * @param widths by way, what its figure needs
   */
  FlowPipes(FlowLayout layout, Map<LineFlow.Edge, Double> widths) {
    ways = layout.ways();
    returning = ways.stream().filter(Way::returns).toList();
    drawn = layout.width();
    boxes = layout.nodes().stream().map(FlowPipes::box).toList();
    ways.forEach(way -> labels.put(way, place(way, widths.get(way.edge()))));
  }

  static double top(Spot spot) {
    return spot.row * ROW;
  }

  static Rectangle2D box(Spot spot) {
    return new Rectangle2D.Double(spot.x - spot.width / 2, top(spot), spot.width, BOX);
  }

  /** Room to the right of the boxes for what returns. */
  double returnRoom() {
    return room(returning.size());
  }

  static double room(long returns) {
    return returns == 0 ? 0 : RETURN_APART * returns + 10;
  }

  Rectangle2D label(Way way) {
    return labels.get(way);
  }

  Path2D path(Way way) {
    return way.returns() ? back(way) : down(way);
  }

  private static Path2D down(Way way) {
    List<Spot> spots = way.spots();
    Spot to = spots.get(spots.size() - 1);
    Path2D path = new Path2D.Double();
    path.moveTo(spots.get(0).x, top(spots.get(0)) + BOX);
    for (int at = 1; at < spots.size(); at++) {
      Spot before = spots.get(at - 1);
      Spot spot = spots.get(at);
      double end = top(spot) - (spot == to ? 6 : 0);
      double middle = (top(before) + BOX + end) / 2;
      path.curveTo(before.x, middle, spot.x, middle, spot.x, end);
      if (spot != to) {
        path.lineTo(spot.x, top(spot) + BOX);
      }
    }
    return path;
  }

  /** Down into the gap, out to the right, up, and into its target from above. */
  private Path2D back(Way way) {
    Spot from = way.spots().get(0);
    Spot to = way.spots().get(1);
    double out = outer(way);
    double leaves = top(from) + BOX + 8;
    double enters = top(to) - 14;
    Path2D path = new Path2D.Double();
    path.moveTo(from.x + from.width / 4, top(from) + BOX);
    path.lineTo(from.x + from.width / 4, leaves);
    path.lineTo(out, leaves);
    path.lineTo(out, enters);
    path.lineTo(entry(to), enters);
    path.lineTo(entry(to), top(to) - 6);
    return path;
  }

  private double outer(Way way) {
    return drawn + RETURN_APART * (returning.indexOf(way) + 0.5);
  }

  /** Where the arrow of a way ends. */
  Point2D end(Way way) {
    Spot to = way.spots().get(way.spots().size() - 1);
    return new Point2D.Double(way.returns() ? entry(to) : to.x, top(to));
  }

  private static double entry(Spot to) {
    return to.x + to.width / 4;
  }

  /** The first place on or beside its pipe where a figure covers no other figure and no box. */
  private Rectangle2D place(Way way, double wide) {
    List<Rectangle2D> places = way.returns() ? besideReturn(way, wide) : places(way, wide);
    return places.stream().filter(this::isFree).findFirst().orElseGet(() -> places.get(0));
  }

  private boolean isFree(Rectangle2D place) {
    return labels.values().stream().noneMatch(place::intersects)
        && boxes.stream().noneMatch(place::intersects);
  }

  private List<Rectangle2D> besideReturn(Way way, double wide) {
    double lower = top(way.spots().get(0)) + BOX;
    double upper = top(way.spots().get(1));
    List<Rectangle2D> places = new ArrayList<>();
    for (double along : ALONG) {
      places.add(label(outer(way), upper + along * (lower - upper), wide));
    }
    return places;
  }

  private static List<Rectangle2D> places(Way way, double wide) {
    List<Rectangle2D> places = new ArrayList<>();
    for (double aside : ASIDE) {
      for (int at = 1; at < way.spots().size(); at++) {
        Spot from = way.spots().get(at - 1);
        Spot to = way.spots().get(at);
        for (double along : ALONG) {
          // The pipe is a cubic curve whose two control points lie half-way down.
          double over = along * along * (3 - 2 * along);
          double down = 1.5 * along * (1 - along) + along * along * along;
          places.add(
              label(
                  from.x + over * (to.x - from.x) + aside * wide,
                  top(from) + BOX + down * (ROW - BOX),
                  wide));
        }
      }
    }
    return places;
  }

  private static Rectangle2D label(double x, double y, double wide) {
    return new Rectangle2D.Double(x - wide / 2, y - HEIGHT / 2, wide, HEIGHT);
  }
}
