package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A line, or a part of it, from top to bottom with its mean flows; what held it is marked. */
public final class FlowDiagram {
  private static final double ROW = FlowPipes.ROW;
  private static final double BOX = FlowPipes.BOX;
  private static final double EDGE = 16;
  private static final int LETTERS = 11;
  private static final double HELD_SHOWN = 0.005;
  private static final Color PIPE = new Color(0xa9c4d4);

  private final LineFlow line;
  private final FlowBasis basis;
  private final FlowSheets.Sheet sheet;
  private final String part;
  private final Wording wording;
  private final Function<String, Optional<SummaryRow>> measures;
  private final Map<String, LineFlow.Node> nodes = new HashMap<>();
  private final double most;
  private final FlowLayout layout;
  private final FlowPipes pipes;

  private FlowDiagram(
      LineFlow line,
      FlowBasis basis,
      FlowSheets.Sheet sheet,
      String part,
      Function<String, Optional<SummaryRow>> measures,
      Wording wording) {
    this.line = line;
    this.basis = basis;
    this.sheet = sheet;
    this.part = part;
    this.measures = measures;
    this.wording = wording;
    sheet.flow().nodes().forEach(node -> nodes.put(node.name(), node));
    this.most = line.edges().stream().mapToDouble(LineFlow.Edge::tPerH).max().orElse(1);
    Map<String, Double> widths = new HashMap<>();
    sheet.flow().nodes().forEach(node -> widths.put(node.name(), width(node)));
    layout = new FlowLayout(sheet.flow(), widths, room(line));
    pipes = new FlowPipes(layout, figureWidths());
  }

  /**
   * A simulated line in as many parts as its letters need room.
   *
   * @param measures by full name, for the levels of bins
   */
  public static List<FlowDiagram> of(
      LineFlow line, Function<String, Optional<SummaryRow>> measures, Wording wording) {
    return of(line, FlowBasis.SIMULATED, measures, wording);
  }

  /** The same of a line at its expected capacity. */
  public static List<FlowDiagram> expected(LineFlow line, Wording wording) {
    return of(line, FlowBasis.EXPECTED, measure -> Optional.empty(), wording);
  }

  private static List<FlowDiagram> of(
      LineFlow line,
      FlowBasis basis,
      Function<String, Optional<SummaryRow>> measures,
      Wording wording) {
    LineFlow nothing = new LineFlow(line.line(), List.of(), List.of());
    FlowSheets.Sheet none = new FlowSheets.Sheet(nothing, List.of(), Map.of());
    FlowDiagram measuring = new FlowDiagram(line, basis, none, "", measures, wording);
    List<FlowSheets.Sheet> sheets = new FlowSheets(line, measuring::width, room(line)).sheets();
    List<FlowDiagram> parts = new ArrayList<>();
    for (int at = 0; at < sheets.size(); at++) {
      String part = sheets.size() == 1 ? "" : ", part " + (at + 1) + " of " + sheets.size();
      parts.add(new FlowDiagram(line, basis, sheets.get(at), part, measures, wording));
    }
    return parts;
  }

  /** For the boxes; what returns runs beside them. */
  private static double room(LineFlow line) {
    return ChartStyle.widthPx() - 2 * EDGE - FlowPipes.room(FlowRows.returns(line));
  }

  FlowLayout layout() {
    return layout;
  }

  FlowPipes pipes() {
    return pipes;
  }

  public Chart figure() {
    double drawn = layout.width() + pipes.returnRoom();
    int width = (int) Math.max(ChartStyle.widthPx(), Math.ceil(drawn + 2 * EDGE));
    int height = (int) (layout.rows() * ROW - (ROW - BOX) + 2 * EDGE);
    String name = basis.prefix + line.line() + part.replaceFirst(", part ([0-9]+).*", "-$1");
    SvgCanvas canvas = new SvgCanvas(name, width, height);
    Graphics2D g = canvas.onWhite();
    g.translate((width - drawn) / 2, EDGE);
    layout.ways().forEach(way -> drawWay(g, way));
    layout.nodes().forEach(spot -> drawNode(g, spot));
    layout.ways().forEach(way -> drawFlow(g, way));
    String title =
        "Flow through "
            + wording.titles().lineInText(line.line())
            + basis.at
            + ", "
            + basis.mean
            + wording.unit("t/h")
            + part;
    return new Chart(
        name, title, alternative(), canvas.atFullSize().finish(title, alternative()), table());
  }

  private Map<LineFlow.Edge, Double> figureWidths() {
    FontMetrics metrics = SvgCanvas.metrics(Fonts.of(LETTERS));
    Map<LineFlow.Edge, Double> widths = new HashMap<>();
    sheet
        .flow()
        .edges()
        .forEach(edge -> widths.put(edge, metrics.stringWidth(rate(edge.tPerH())) + 4.0));
    return widths;
  }

  private double width(LineFlow.Node node) {
    BoxTitle title = new BoxTitle(title(node));
    double text = SvgCanvas.metrics(Fonts.of(LETTERS)).stringWidth(below(node));
    return Math.max(64, Math.ceil(Math.max(title.width(), text)) + 16);
  }

  /** What is read in place of the name of what the line itself or a part of it has. */
  private String title(String name) {
    String own = FlowSheets.shown(name);
    return line.nodes().stream()
        .filter(node -> node.name().equals(own))
        .findFirst()
        .map(this::title)
        .orElse(own);
  }

  private String title(LineFlow.Node node) {
    String name = FlowSheets.shown(node.name());
    return switch (node.kind()) {
      case MACHINE, BIN -> wording.titles().machine(name);
      case PRODUCT -> wording.titles().product(name);
      case WASTE, AIR -> name;
    };
  }

  /** The second line in a node's box. */
  private String below(LineFlow.Node node) {
    if (isJoint(node)) {
      return sheet.joints().getOrDefault(node.name(), "from part 00");
    }
    if (node.heldShare() >= HELD_SHOWN) {
      return basis.limits(node, wording);
    }
    return switch (node.kind()) {
      case MACHINE -> node.what();
      case BIN -> level(node.name());
      case PRODUCT -> "product";
      case WASTE, AIR -> "leaves";
    };
  }

  private static boolean isJoint(LineFlow.Node node) {
    return node.what().equals(FlowSheets.JOINT);
  }

  private String level(String bin) {
    Optional<SummaryRow> mean = measures.apply(Measure.BIN_LEVEL_MEAN.of(bin));
    Optional<SummaryRow> peak = measures.apply(Measure.BIN_LEVEL_PEAK.of(bin));
    return mean.isEmpty() || peak.isEmpty()
        ? "bin"
        : "bin: mean "
            + wording.fixed(mean.get().mean(), 1, "t")
            + ", peak "
            + wording.fixed(peak.get().mean(), 1, "t")
            + " "
            + wording.unit("t");
  }

  private void drawWay(Graphics2D g, FlowLayout.Way way) {
    float thick = (float) (1.5 + 9 * Math.sqrt(share(way.edge().tPerH())));
    g.setPaint(PIPE);
    g.setStroke(
        way.returns()
            ? new BasicStroke(
                thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {6, 4}, 0)
            : new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(pipes.path(way));
    g.setPaint(Palette.INK);
    Point2D end = pipes.end(way);
    arrow(g, end.getX(), end.getY());
  }

  /** Of the greatest flow, 0 to 1; of a line that stood all the time each flow is 0. */
  private double share(double tPerH) {
    return tPerH > 0 && most > 0 ? Math.min(1, tPerH / most) : 0;
  }

  private static void arrow(Graphics2D g, double x, double y) {
    Path2D head = new Path2D.Double();
    head.moveTo(x, y);
    head.lineTo(x - 4, y - 7);
    head.lineTo(x + 4, y - 7);
    head.closePath();
    g.fill(head);
  }

  private void drawNode(Graphics2D g, FlowLayout.Spot spot) {
    LineFlow.Node node = nodes.get(spot.name);
    boolean isLimit = limits(node);
    double round = isJoint(node) ? BOX : node.kind() == LineFlow.Kind.MACHINE ? 10 : 0;
    RoundRectangle2D box =
        new RoundRectangle2D.Double(
            spot.x - spot.width / 2, FlowPipes.top(spot), spot.width, BOX, round, round);
    g.setPaint(
        isLimit
            ? new Color(0xffe2a8)
            : node.kind() == LineFlow.Kind.MACHINE || isJoint(node)
                ? Color.WHITE
                : new Color(0xf1f1f1));
    g.fill(box);
    g.setPaint(isLimit ? Palette.VERMILLION : Palette.INK);
    float[] dashes = node.kind() == LineFlow.Kind.BIN ? new float[] {5, 3} : null;
    g.setStroke(
        new BasicStroke(
            isLimit ? 3.5f : 1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    g.draw(box);
    g.setPaint(Palette.INK);
    BoxTitle title = new BoxTitle(title(node));
    title.draw(g, isLimit || isJoint(node), spot.x, FlowPipes.top(spot));
    centred(g, Fonts.of(LETTERS), below(node), spot.x, FlowPipes.top(spot) + title.below());
  }

  private void drawFlow(Graphics2D g, FlowLayout.Way way) {
    Rectangle2D box = pipes.label(way);
    g.setPaint(Color.WHITE);
    g.fill(
        new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), 4, 4));
    g.setPaint(Palette.INK);
    centred(g, Fonts.of(LETTERS), rate(way.edge().tPerH()), box.getCenterX(), box.getY() + 11);
  }

  /** Two decimals show what a line of a few tonnes an hour does; a trickle gets more. */
  private String rate(double tPerH) {
    return wording.fixed(tPerH, tPerH > 0 && tPerH < 0.01 ? 4 : 2, "t/h");
  }

  static void centred(Graphics2D g, Font font, String text, double x, double y) {
    g.setFont(font);
    g.drawString(text, (float) (x - g.getFontMetrics(font).stringWidth(text) / 2.0), (float) y);
  }

  /** By formula all that limit together are marked; of simulated years what limits longest. */
  private boolean limits(LineFlow.Node node) {
    return basis == FlowBasis.EXPECTED ? node.heldShare() > 0 : node.equals(holder());
  }

  private LineFlow.Node holder() {
    return line.nodes().stream()
        .filter(node -> node.heldShare() >= HELD_SHOWN)
        .max(Comparator.comparingDouble(LineFlow.Node::heldShare))
        .orElse(null);
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    sheet
        .edges()
        .forEach(
            edge ->
                parts.add(
                    title(edge.from()) + " to " + title(edge.to()) + " " + rate(edge.tPerH())));
    LineFlow.Node holder = holder();
    String held =
        holder == null
            ? ""
            : " "
                + Titles.capital(wording.titles().machineInText(holder.name()))
                + " "
                + basis.limitsInText(holder, wording);
    return "The line from top to bottom"
        + part
        + ", with "
        + basis.mean
        + "flows in "
        + wording.unit("t/h")
        + " over its scheduled hours"
        + basis.at
        + ": "
        + String.join(", ", parts)
        + "."
        + held;
  }

  private Chart.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    sheet
        .edges()
        .forEach(
            edge -> rows.add(List.of(title(edge.from()), title(edge.to()), rate(edge.tPerH()))));
    return new Chart.Grid(List.of("from", "to", basis.mean + wording.unit("t/h")), rows);
  }
}
