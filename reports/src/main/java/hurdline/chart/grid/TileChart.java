package hurdline.chart.grid;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.GridWords;
import hurdline.text.KeyWords;
import hurdline.text.Wording;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** A measure over the two keys of a grid: a tile for each cell, pale to dark, its figure in it. */
final class TileChart {
  private static final Color PALE = new Color(0xf1f6fa);
  private static final Color DARK = new Color(0x00507f);
  private static final int LEGEND = 44;
  private static final double EVEN = 0.05; // of half the interval: less off its middle is not seen

  private final GridAnswer answer;
  private final String measure;
  private final String plant;
  private final Wording wording;
  private final KeyWords keys;
  private final String label;
  private final List<GridRow> rows = new ArrayList<>();
  private final double least;
  private final double most;

  TileChart(GridAnswer answer, String measure, String plant, Wording wording) {
    this.answer = answer;
    this.measure = measure;
    this.plant = plant;
    this.wording = wording;
    keys = new KeyWords(answer, wording);
    label =
        new GridWords(answer, wording).label(measure)
            + (answer.plants().size() > 1 ? " of " + keys.plant(plant) : "");
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      GridRow row = answer.row(cell, plant, measure).orElse(null);
      rows.add(row);
      if (row != null && !Double.isNaN(row.mean())) {
        low = Math.min(low, row.mean());
        high = Math.max(high, row.mean());
      }
    }
    least = low;
    most = high;
  }

  Chart figure() {
    String title = label + " over " + keys.name(0) + " and " + keys.name(1);
    String name =
        "tiles-" + measure + (answer.plants().size() > 1 ? "-" + plant.replace('+', '-') : "");
    TilePlan plan = new TilePlan(answer, keys);
    int height = (int) Math.ceil(plan.bottom() + LEGEND);
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), height);
    Graphics2D g = canvas.onWhite();
    for (int cell = 0; cell < rows.size(); cell++) {
      drawTile(g, plan.tile(cell), cell);
    }
    frames(g, plan);
    for (int cell = 0; cell < rows.size(); cell++) {
      drawFigure(g, plan.tile(cell), cell, plan.tileHeight() >= 34);
    }
    plan.drawAxes(g);
    drawLegend(g, plan);
    return new Chart(name, title, alternative(), canvas.finish(title, alternative()), table());
  }

  private void drawTile(Graphics2D g, Rectangle2D tile, int cell) {
    if (isMissing(cell)) {
      TilePlan.drawLeftOut(g, tile);
      return;
    }
    double dark = dark(cell);
    g.setPaint(shade(dark));
    g.fill(tile);
    TilePlan.drawEdge(g, tile);
    if (answer.cells().get(cell).asItStands()) {
      TilePlan.drawCorner(g, tile, ink(dark));
    }
  }

  private boolean isMissing(int cell) {
    return rows.get(cell) == null || Double.isNaN(rows.get(cell).mean());
  }

  /** The mean, and below it half the interval where there is room. */
  private void drawFigure(Graphics2D g, Rectangle2D tile, int cell, boolean isHigh) {
    if (isMissing(cell)) {
      return;
    }
    GridRow row = rows.get(cell);
    g.setPaint(ink(dark(cell)));
    String spread = spread(row);
    boolean two = isHigh && !spread.isEmpty();
    Rectangle2D upper =
        two
            ? new Rectangle2D.Double(
                tile.getX(), tile.getY() + 3, tile.getWidth(), tile.getHeight() / 2)
            : tile;
    TilePlan.drawFitting(g, number(row), upper, 13);
    if (two) {
      TilePlan.drawFitting(
          g,
          spread,
          new Rectangle2D.Double(
              tile.getX(), tile.getCenterY() + 1, tile.getWidth(), tile.getHeight() / 2 - 4),
          10);
    }
  }

  private double dark(int cell) {
    return most > least ? (rows.get(cell).mean() - least) / (most - least) : 0;
  }

  private static Color shade(double dark) {
    return new Color(
        mixed(PALE.getRed(), DARK.getRed(), dark),
        mixed(PALE.getGreen(), DARK.getGreen(), dark),
        mixed(PALE.getBlue(), DARK.getBlue(), dark));
  }

  private static int mixed(int from, int to, double share) {
    return (int) Math.round(from + share * (to - from));
  }

  /** Whichever of dark and white stands out more. */
  private static Color ink(double dark) {
    return dark > 0.55 ? Color.WHITE : Palette.INK;
  }

  private String number(GridRow row) {
    return wording.number(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private String spread(GridRow row) {
    double half = (row.high95() - row.low95()) / 2;
    boolean even = Math.abs(row.low95() + half - row.mean()) < EVEN * half;
    return !(half > 0)
        ? ""
        : even
            ? "±" + wording.number(half, row.low95(), row.high95(), row.unit())
            : wording.interval(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private Optional<GridBest> best() {
    return answer.best().stream()
        .filter(best -> best.measure().equals(measure) && best.plant().equals(plant))
        .filter(best -> answer.header().replications() > 1)
        .findFirst();
  }

  private void frames(Graphics2D g, TilePlan plan) {
    best()
        .ifPresent(
            best -> {
              best.alike()
                  .forEach(
                      cell ->
                          TilePlan.drawFrame(
                              g, plan.tile(cell), ink(dark(cell)), 1.5f, new float[] {4, 3}));
              TilePlan.drawFrame(g, plan.tile(best.cell()), Color.WHITE, 4.5f, null);
              TilePlan.drawFrame(g, plan.tile(best.cell()), Palette.INK, 3, null);
            });
  }

  private void drawLegend(Graphics2D g, TilePlan plan) {
    double top = plan.bottom() + 6;
    if (most >= least) {
      int steps = 12;
      for (int step = 0; step < steps; step++) {
        g.setPaint(shade(step / (steps - 1.0)));
        g.fill(new Rectangle2D.Double(plan.left() + 8 * step, top, 8, 12));
      }
      g.setPaint(Palette.INK);
      g.setFont(Fonts.of(11));
      g.drawString(
          wording.rough(least, unit()) + " to " + wording.rough(most, unit()) + ", pale to dark",
          (float) (plan.left() + 8 * steps + 8),
          (float) top + 10);
    }
    g.setPaint(Palette.INK);
    g.setFont(Fonts.of(11));
    g.drawString(marks(), (float) plan.left(), (float) top + 28);
  }

  /** What the marks in this very picture mean. */
  private String marks() {
    List<String> said = new ArrayList<>();
    best()
        .ifPresent(
            best -> {
              said.add("bold frame: highest");
              if (!best.alike().isEmpty()) {
                said.add("dashed: no significant difference from it");
              }
            });
    if (answer.cells().stream().anyMatch(GridCell::asItStands)) {
      said.add("corner: as it stands");
    }
    if (rows.stream().anyMatch(Objects::isNull)) {
      said.add("crossed: left out");
    }
    return String.join("; ", said);
  }

  private String unit() {
    return rows.stream().filter(Objects::nonNull).map(GridRow::unit).findFirst().orElse("");
  }

  private String alternative() {
    List<String> tiles =
        IntStream.range(0, rows.size())
            .mapToObj(cell -> keys.cell(cell) + ": " + text(rows.get(cell)))
            .toList();
    return "Tiles of "
        + label
        + " in "
        + wording.unit(unit())
        + ". "
        + String.join("; ", tiles)
        + (marks().isEmpty() ? "." : ". Marked: " + bestSaid());
  }

  private String bestSaid() {
    return best()
        .map(
            best ->
                "highest at "
                    + keys.cell(best.cell())
                    + ", no significant difference from "
                    + best.alike().size()
                    + " other cells.")
        .orElse(marks() + ".");
  }

  private String text(GridRow row) {
    return row == null
        ? "left out"
        : wording.cell(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private Chart.Grid table() {
    List<String> head = new ArrayList<>();
    head.add(label + ", " + wording.unit(unit()));
    int columns = answer.keys().get(0).values().size();
    for (int column = 0; column < columns; column++) {
      head.add(keys.name(0) + " " + keys.values(0).get(column));
    }
    List<List<String>> lines = new ArrayList<>();
    int many = answer.keys().get(1).values().size();
    for (int row = 0; row < many; row++) {
      List<String> line = new ArrayList<>();
      line.add(keys.name(1) + "\u00a0" + keys.values(1).get(row));
      for (int column = 0; column < columns; column++) {
        line.add(text(rows.get(column * many + row)));
      }
      lines.add(line);
    }
    return new Chart.Grid(head, lines);
  }
}
