package hurdline.chart;

import hurdline.answer.LineFlow;
import hurdline.words.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A line drawn from top to bottom with its mean flows; what held it is marked. */
final class FlowDiagram {
  private static final double ROW = 84;
  private static final double BOX = 38;
  private static final double EDGE = 16;
  private static final double RETURN_ROOM = 50;
  private static final double[] LABEL_PLACES = {0.55, 0.4, 0.7, 0.28, 0.82};
  private static final double HELD_SHOWN = 0.005;
  private static final Color PIPE = new Color(0xa9c4d4);

  private final LineFlow flow;
  private final Wording wording;
  private final Map<String, LineFlow.Node> nodes = new HashMap<>();
  private final double most;

  FlowDiagram(LineFlow flow, Wording wording) {
    this.flow = flow;
    this.wording = wording;
    flow.nodes().forEach(node -> nodes.put(node.name(), node));
    this.most = flow.edges().stream().mapToDouble(LineFlow.Edge::tPerH).max().orElse(1);
  }

  Figure figure() {
    SvgCanvas measuring = new SvgCanvas("measure", Look.WIDTH, 10);
    FlowLayout layout =
        new FlowLayout(flow, widths(measuring.graphics().getFontMetrics(Fonts.of(12))));
    double drawn = layout.width();
    boolean returns = layout.ways().stream().anyMatch(FlowLayout.Way::returns);
    int width =
        (int) Math.max(Look.WIDTH, Math.ceil(drawn + 2 * EDGE + (returns ? RETURN_ROOM : 0)));
    int height = (int) (layout.rows() * ROW - (ROW - BOX) + 2 * EDGE);
    double left = (width - drawn) / 2;
    String name = "flow-" + flow.line();
    SvgCanvas canvas = new SvgCanvas(name, width, height);
    Graphics2D g = canvas.graphics();
    g.setPaint(Color.WHITE);
    g.fill(new Rectangle2D.Double(0, 0, width, height));
    g.translate(left, EDGE);
    layout.ways().forEach(way -> drawWay(g, way, drawn));
    layout.nodes().forEach(spot -> drawNode(g, spot));
    List<Rectangle2D> taken = new ArrayList<>();
    layout.ways().forEach(way -> drawFlow(g, way, drawn, taken));
    String title = "Flow through " + flow.line();
    return new Figure(name, title, alternative(), canvas.finish(title, alternative()), table());
  }

  private Map<String, Double> widths(FontMetrics metrics) {
    Map<String, Double> widths = new HashMap<>();
    for (LineFlow.Node node : flow.nodes()) {
      double text =
          Math.max(metrics.stringWidth(node.name()), 0.85 * metrics.stringWidth(below(node)));
      widths.put(node.name(), Math.max(64, Math.ceil(text) + 16));
    }
    return widths;
  }

  /** The second line in a node's box. */
  private String below(LineFlow.Node node) {
    if (node.heldShare() >= HELD_SHOWN) {
      return "holds "
          + wording.fixed(node.heldShare(), node.heldShare() < 0.1 ? 1 : 0, "share")
          + " %";
    }
    return switch (node.kind()) {
      case MACHINE -> node.what();
      case BIN -> "bin";
      case PRODUCT -> "product";
      case WASTE, AIR -> "leaves";
    };
  }

  private static double top(FlowLayout.Spot spot) {
    return spot.row * ROW;
  }

  private void drawWay(Graphics2D g, FlowLayout.Way way, double drawn) {
    Path2D path = path(way, drawn);
    float thick = (float) (1.5 + 9 * Math.sqrt(Math.max(0, way.edge().tPerH()) / most));
    g.setPaint(PIPE);
    g.setStroke(
        way.returns()
            ? new BasicStroke(
                thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {6, 4}, 0)
            : new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(path);
    FlowLayout.Spot to = way.spots().get(way.spots().size() - 1);
    g.setPaint(Palette.INK);
    if (way.returns()) {
      arrow(g, to.x + to.width / 2, top(to) + BOX / 2, -1, 0);
    } else {
      arrow(g, to.x, top(to), 0, 1);
    }
  }

  private static Path2D path(FlowLayout.Way way, double drawn) {
    FlowLayout.Spot from = way.spots().get(0);
    FlowLayout.Spot to = way.spots().get(way.spots().size() - 1);
    Path2D path = new Path2D.Double();
    if (way.returns()) {
      double out = drawn + RETURN_ROOM * 0.6;
      path.moveTo(from.x + from.width / 2, top(from) + BOX / 2);
      path.curveTo(
          out,
          top(from) + BOX / 2,
          out,
          top(to) + BOX / 2,
          to.x + to.width / 2 + 6,
          top(to) + BOX / 2);
      return path;
    }
    path.moveTo(from.x, top(from) + BOX);
    for (int at = 1; at < way.spots().size(); at++) {
      FlowLayout.Spot before = way.spots().get(at - 1);
      FlowLayout.Spot spot = way.spots().get(at);
      double start = top(before) + BOX;
      double end = top(spot) - (spot == to ? 6 : 0);
      double middle = (start + end) / 2;
      path.curveTo(before.x, middle, spot.x, middle, spot.x, end);
      if (spot != to) {
        path.lineTo(spot.x, top(spot) + BOX);
      }
    }
    return path;
  }

  private static void arrow(Graphics2D g, double x, double y, double dx, double dy) {
    Path2D head = new Path2D.Double();
    head.moveTo(x, y);
    head.lineTo(x - 7 * dx - 4 * dy, y - 7 * dy - 4 * dx);
    head.lineTo(x - 7 * dx + 4 * dy, y - 7 * dy + 4 * dx);
    head.closePath();
    g.fill(head);
  }

  private void drawNode(Graphics2D g, FlowLayout.Spot spot) {
    LineFlow.Node node = nodes.get(spot.name);
    boolean holder = node.equals(holder());
    double round = node.kind() == LineFlow.Kind.MACHINE ? 10 : 0;
    RoundRectangle2D box =
        new RoundRectangle2D.Double(
            spot.x - spot.width / 2, top(spot), spot.width, BOX, round, round);
    g.setPaint(
        holder
            ? new Color(0xffe2a8)
            : node.kind() == LineFlow.Kind.MACHINE ? Color.WHITE : new Color(0xf1f1f1));
    g.fill(box);
    g.setPaint(holder ? Palette.VERMILLION : Palette.INK);
    float[] dashes = node.kind() == LineFlow.Kind.BIN ? new float[] {5, 3} : null;
    g.setStroke(
        new BasicStroke(
            holder ? 3.5f : 1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    g.draw(box);
    g.setPaint(Palette.INK);
    centred(g, holder ? Fonts.bold(12) : Fonts.of(12), node.name(), spot.x, top(spot) + 16);
    centred(g, Fonts.of(10), below(node), spot.x, top(spot) + 30);
  }

  private void drawFlow(Graphics2D g, FlowLayout.Way way, double drawn, List<Rectangle2D> taken) {
    String text = rate(way.edge().tPerH());
    double wide = g.getFontMetrics(Fonts.of(11)).stringWidth(text) + 4;
    Rectangle2D box = room(way, drawn, wide, taken);
    taken.add(box);
    g.setPaint(Color.WHITE);
    g.fill(new RoundRectangle2D.Double(box.getX(), box.getY(), wide, box.getHeight(), 4, 4));
    g.setPaint(Palette.INK);
    centred(g, Fonts.of(11), text, box.getCenterX(), box.getY() + 11);
  }

  /** The first place along the pipe where the figure covers no other. */
  private static Rectangle2D room(
      FlowLayout.Way way, double drawn, double wide, List<Rectangle2D> taken) {
    FlowLayout.Spot from = way.spots().get(0);
    FlowLayout.Spot next = way.spots().get(1);
    if (way.returns()) {
      double middle = (top(from) + top(next) + BOX) / 2;
      return label(drawn + RETURN_ROOM * 0.3, middle, wide);
    }
    double start = top(from) + BOX;
    for (double along : LABEL_PLACES) {
      // The pipe is a cubic curve whose two control points lie half-way down.
      double over = along * along * (3 - 2 * along);
      double down = 1.5 * along * (1 - along) + along * along * along;
      Rectangle2D box = label(from.x + over * (next.x - from.x), start + down * (ROW - BOX), wide);
      if (taken.stream().noneMatch(box::intersects)) {
        return box;
      }
    }
    return label((from.x + next.x) / 2, start + (ROW - BOX) / 2, wide);
  }

  private static Rectangle2D label(double x, double y, double wide) {
    return new Rectangle2D.Double(x - wide / 2, y - 7, wide, 14);
  }

  /** Two decimals show what a line of a few tonnes an hour does; a trickle gets more. */
  private String rate(double tPerH) {
    return wording.fixed(tPerH, tPerH > 0 && tPerH < 0.01 ? 4 : 2, "t/h");
  }

  private static void centred(Graphics2D g, Font font, String text, double x, double y) {
    g.setFont(font);
    g.drawString(text, (float) (x - g.getFontMetrics(font).stringWidth(text) / 2.0), (float) y);
  }

  private LineFlow.Node holder() {
    return flow.nodes().stream()
        .filter(node -> node.heldShare() >= HELD_SHOWN)
        .max(Comparator.comparingDouble(LineFlow.Node::heldShare))
        .orElse(null);
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    flow.edges()
        .forEach(edge -> parts.add(edge.from() + " to " + edge.to() + " " + rate(edge.tPerH())));
    LineFlow.Node holder = holder();
    String held =
        holder == null
            ? ""
            : " " + holder.name() + " " + below(holder) + " of the scheduled hours.";
    return "The line from top to bottom with mean flows in "
        + wording.unit("t/h")
        + " over its scheduled hours: "
        + String.join(", ", parts)
        + "."
        + held;
  }

  private Figure.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    flow.edges().forEach(edge -> rows.add(List.of(edge.from(), edge.to(), rate(edge.tPerH()))));
    return new Figure.Grid(List.of("from", "to", "mean " + wording.unit("t/h")), rows);
  }
}
