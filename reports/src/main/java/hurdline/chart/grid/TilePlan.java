package hurdline.chart.grid;

import hurdline.answer.GridAnswer;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.KeyWords;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Where the tiles of a grid of two keys lie: the first key to the right, the second upwards. */
final class TilePlan {
  private static final double RIGHT = 12;
  private static final double TOP = 26;
  private static final double TICKS = 40;
  private static final double LOW = 22;
  private static final double HIGH = 40;
  private static final int MANY = 12;

  private final GridAnswer answer;
  private final KeyWords keys;
  private final int columns;
  private final int rows;
  private final double left;
  private final double tileWidth;
  private final double tileHeight;

  TilePlan(GridAnswer answer, KeyWords keys) {
    this.answer = answer;
    this.keys = keys;
    columns = answer.keys().get(0).values().size();
    rows = answer.keys().get(1).values().size();
    FontMetrics metrics = SvgCanvas.metrics(Fonts.of(12));
    double widest = 0;
    for (int row = 0; row < rows; row++) {
      widest = Math.max(widest, metrics.stringWidth(keys.tick(1, row)));
    }
    left = widest + 14;
    tileWidth = Math.min(140, (ChartStyle.widthPx() - left - RIGHT) / columns);
    tileHeight = rows > MANY ? LOW : HIGH;
  }

  double tileHeight() {
    return tileHeight;
  }

  /** The bottom of the tiles with their ticks and the name of the key below them. */
  double bottom() {
    return TOP + rows * tileHeight + TICKS;
  }

  double left() {
    return left;
  }

  Rectangle2D tile(int cell) {
    int column = answer.cells().get(cell).at().get(0);
    int row = answer.cells().get(cell).at().get(1);
    return new Rectangle2D.Double(
        left + column * tileWidth, TOP + (rows - 1 - row) * tileHeight, tileWidth, tileHeight);
  }

  void drawAxes(Graphics2D g) {
    g.setPaint(Palette.INK);
    g.setFont(Fonts.of(12));
    FontMetrics metrics = g.getFontMetrics();
    g.drawString("upwards: " + keys.axis(1), 4, 14);
    for (int row = 0; row < rows; row++) {
      String tick = keys.tick(1, row);
      double middle = TOP + (rows - 0.5 - row) * tileHeight;
      g.drawString(tick, (float) (left - 8 - metrics.stringWidth(tick)), (float) (middle + 4));
    }
    double under = TOP + rows * tileHeight + 15;
    double free = left - 20;
    for (int column = 0; column < columns; column++) {
      String tick = keys.tick(0, column);
      double width = metrics.stringWidth(tick);
      double from = left + (column + 0.5) * tileWidth - width / 2;
      // A tick that would touch the one before it is left out.
      if (from > free + 6) {
        g.drawString(tick, (float) from, (float) under);
        free = from + width;
      }
    }
    g.drawString("to the right: " + keys.axis(0), (float) left, (float) (under + 18));
  }

  /** Text in the middle of a box, in the greatest size that fits; none if none does. */
  static void drawFitting(Graphics2D g, String text, Rectangle2D box, int greatest) {
    for (int size = greatest; size >= 8; size--) {
      double width = g.getFontMetrics(Fonts.of(size)).stringWidth(text);
      if (width <= box.getWidth() - 4) {
        g.setFont(Fonts.of(size));
        g.drawString(
            text, (float) (box.getCenterX() - width / 2), (float) (box.getCenterY() + 0.36 * size));
        return;
      }
    }
  }

  static void drawLeftOut(Graphics2D g, Rectangle2D tile) {
    g.setPaint(new Hatch(Color.WHITE, Color.GRAY, Hatch.Kind.CROSSED));
    g.fill(tile);
  }

  static void drawFrame(Graphics2D g, Rectangle2D tile, Color color, float width, float[] dash) {
    g.setPaint(color);
    g.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
    double in = width / 2 + 1;
    g.draw(
        new Rectangle2D.Double(
            tile.getX() + in,
            tile.getY() + in,
            tile.getWidth() - 2 * in,
            tile.getHeight() - 2 * in));
  }

  static void drawEdge(Graphics2D g, Rectangle2D tile) {
    g.setPaint(Color.WHITE);
    g.setStroke(new BasicStroke(1));
    g.draw(tile);
  }

  /** A corner cut off: the plant as it stands. */
  static void drawCorner(Graphics2D g, Rectangle2D tile, Color color) {
    g.setPaint(color);
    g.setStroke(new BasicStroke(2));
    double size = 9;
    g.draw(
        new Line2D.Double(
            tile.getX() + 2, tile.getY() + size + 2, tile.getX() + size + 2, tile.getY() + 2));
  }
}
