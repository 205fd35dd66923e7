package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lays a line out in the rows of {@link FlowRows} from top to bottom: edges over several rows get a
 * way point in each, and rows are ordered and spread so that edges cross little, run straight and
 * keep within the drawing.
 *
 * @see "Sugiyama, Tagawa and Toda, Methods for visual understanding of hierarchical system
 *     structures (1981); from memory"
 */
final class FlowLayout {
  private static final int MOVES = 48;
  static final double GAP = 18;
  private static final double WAY_POINT_WIDTH = 14;

  /** A node or a way point; x is its middle. */
  static final class Spot {
    final String name;
    final int row;
    final double width;
    final List<Spot> linked = new ArrayList<>();
    double x;

    /** Its number in its row, kept by {@link RowOrder}. */
    int place;

    Spot(String name, int row, double width) {
      this.name = name;
      this.row = row;
      this.width = width;
    }
  }

  /**
   * An edge with the spots that it passes, its ends included; a returning edge has its ends only.
   */
  record Way(LineFlow.Edge edge, List<Spot> spots, boolean returns) {}

  private final Map<String, Integer> rowOf;
  private final Map<String, Spot> spots = new LinkedHashMap<>();
  private final List<List<Spot>> rows = new ArrayList<>();
  private final List<Way> ways = new ArrayList<>();
  private final Set<LineFlow.Edge> returning;
  private final double limit;

  /**
   * @param widths by node name, what its box needs
   * @param limit how wide the drawing may be
   */
  FlowLayout(LineFlow flow, Map<String, Double> widths, double limit) {
    FlowRows placed = new FlowRows(flow, widths, limit);
    this.rowOf = placed.rowOf();
    this.returning = placed.returning();
    this.limit = limit;
    for (LineFlow.Node node : flow.nodes()) {
      spots.put(node.name(), spot(node.name(), rowOf.get(node.name()), widths.get(node.name())));
    }
    flow.edges().stream().filter(this::isKnown).forEach(this::addWay);
    new RowOrder(rows).settle();
    spread();
  }

  List<Spot> nodes() {
    return List.copyOf(spots.values());
  }

  List<Way> ways() {
    return ways;
  }

  int rows() {
    return rows.size();
  }

  double width() {
    return nodesAndPoints().mapToDouble(spot -> spot.x + spot.width / 2).max().orElse(0);
  }

  private java.util.stream.Stream<Spot> nodesAndPoints() {
    return rows.stream().flatMap(List::stream);
  }

  private boolean isKnown(LineFlow.Edge edge) {
    return rowOf.containsKey(edge.from()) && rowOf.containsKey(edge.to());
  }

  private Spot spot(String name, int row, double width) {
    while (rows.size() <= row) {
      rows.add(new ArrayList<>());
    }
    Spot spot = new Spot(name, row, width);
    spot.x = rows.get(row).stream().mapToDouble(other -> other.width + GAP).sum() + width / 2;
    rows.get(row).add(spot);
    return spot;
  }

  private void addWay(LineFlow.Edge edge) {
    Spot from = spots.get(edge.from());
    Spot to = spots.get(edge.to());
    List<Spot> passed = new ArrayList<>(List.of(from));
    if (!returning.contains(edge)) {
      for (int row = from.row + 1; row < to.row; row++) {
        passed.add(spot("", row, WAY_POINT_WIDTH));
      }
    }
    passed.add(to);
    for (int at = 1; at < passed.size() && !returning.contains(edge); at++) {
      passed.get(at - 1).linked.add(passed.get(at));
      passed.get(at).linked.add(passed.get(at - 1));
    }
    ways.add(new Way(edge, passed, returning.contains(edge)));
  }

  /** Places a row's spots side by side in their order, the row's middle at 0. */
  static void layOut(List<Spot> row) {
    double x = -row.stream().mapToDouble(spot -> spot.width + GAP).sum() / 2;
    for (Spot spot : row) {
      spot.x = x + (spot.width + GAP) / 2;
      x += spot.width + GAP;
    }
  }

  /** Moves spots towards what they are linked to, keeping each row's order and gaps. */
  private void spread() {
    for (int sweep = 0; sweep < MOVES; sweep++) {
      for (List<Spot> row : rows) {
        settle(row);
      }
    }
    rows.forEach(row -> keepWithin(row, widest() / 2));
    double left = nodesAndPoints().mapToDouble(spot -> spot.x - spot.width / 2).min().orElse(0);
    nodesAndPoints().forEach(spot -> spot.x -= left);
  }

  /** The limit, or more where boxes of long names need it. */
  private double widest() {
    return rows.stream()
        .mapToDouble(row -> row.stream().mapToDouble(spot -> spot.width + GAP).sum() - GAP)
        .reduce(limit, Math::max);
  }

  /** Pushes a row's spots together until none reaches further than this from the middle. */
  private static void keepWithin(List<Spot> row, double reach) {
    double left = -reach;
    for (Spot spot : row) {
      spot.x = Math.max(spot.x, left + spot.width / 2);
      left = spot.x + spot.width / 2 + GAP;
    }
    double right = reach;
    for (int at = row.size() - 1; at >= 0; at--) {
      Spot spot = row.get(at);
      spot.x = Math.min(spot.x, right - spot.width / 2);
      right = spot.x - spot.width / 2 - GAP;
    }
  }

  private static void settle(List<Spot> row) {
    int count = row.size();
    double[] wanted = new double[count];
    for (int at = 0; at < count; at++) {
      Spot spot = row.get(at);
      wanted[at] = spot.linked.stream().mapToDouble(l -> l.x).average().orElse(spot.x);
    }
    double[] pushedRight = wanted.clone();
    for (int at = 1; at < count; at++) {
      pushedRight[at] =
          Math.max(wanted[at], pushedRight[at - 1] + apart(row.get(at - 1), row.get(at)));
    }
    double[] pushedLeft = wanted.clone();
    for (int at = count - 2; at >= 0; at--) {
      pushedLeft[at] =
          Math.min(wanted[at], pushedLeft[at + 1] - apart(row.get(at), row.get(at + 1)));
    }
    for (int at = 0; at < count; at++) {
      row.get(at).x = (pushedRight[at] + pushedLeft[at]) / 2;
    }
  }

  private static double apart(Spot left, Spot right) {
    return (left.width + right.width) / 2 + GAP;
  }
}
