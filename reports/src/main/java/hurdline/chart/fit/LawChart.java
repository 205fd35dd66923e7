package hurdline.chart.fit;

import hurdline.answer.FitRow;
import hurdline.answer.FitRow.Point;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.FitLawWords;
import hurdline.text.FitWords;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Recorded amounts beside the law: shares up to each amount on the left, amount against amount on
 * the right.
 */
final class LawChart {
  private static final int HEIGHT = 300;
  private static final int TOP = 34;
  private static final int SIDE = 216;
  private static final int LEFT = 62;
  private static final int RIGHT = 432;

  /** An amount beyond this many times the law's largest stands at the edge. */
  private static final double FAR = 2;

  /** Of all amounts; points.csv has them all. */
  private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

  private final FitRow row;
  private final FitWords words;
  private final double most;
  private final long beyond;

  LawChart(FitRow row, FitWords words) {
    this.row = row;
    this.words = words;
    double ofLaw = row.points().stream().mapToDouble(Point::lawAmount).max().orElse(1);
    double largest =
        row.points().stream()
            .mapToDouble(Point::amount)
            .filter(amount -> amount <= FAR * ofLaw)
            .reduce(ofLaw, Math::max);
    most = largest > 0 && largest < Double.POSITIVE_INFINITY ? largest : 1;
    beyond = row.points().stream().filter(point -> point.amount() > most).count();
  }

  Chart figure() {
    String name = "fit-" + row.key().replace('.', '-');
    String title =
        Titles.capital(words.label(row.key()))
            + ": "
            + row.laws().get(0).law()
            + ", "
            + row.verdict();
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), HEIGHT);
    Graphics2D g = canvas.onWhite();
    frame(g, LEFT, "share at or below", row.unit(), "100 %");
    frame(g, RIGHT, "recorded, " + row.unit(), "by the law, " + row.unit(), words.number(most));
    drawShares(g);
    drawQuantiles(g);
    if (beyond > 0) {
      g.setPaint(Palette.INK);
      g.drawString(words.number(beyond) + " beyond, at the edge", RIGHT + SIDE - 120f, TOP - 10f);
    }
    return new Chart(name, title, alternative(), canvas.finish(title, alternative()), table());
  }

  private void frame(Graphics2D g, int left, String up, String along, String top) {
    g.setPaint(Palette.GRID);
    g.setStroke(new BasicStroke(1));
    for (int i = 0; i <= 4; i++) {
      double at = SIDE * i / 4.0;
      g.draw(new Line2D.Double(left, TOP + at, left + SIDE, TOP + at));
      g.draw(new Line2D.Double(left + at, TOP, left + at, TOP + SIDE));
    }
    g.setPaint(Palette.INK);
    g.setFont(Fonts.of(12));
    g.drawString(up, left, TOP - 10);
    g.drawString(along, left + SIDE / 2f - 20, TOP + SIDE + 32f);
    g.setFont(Fonts.of(11));
    g.drawString("0", left - 4f, TOP + SIDE + 16f);
    g.drawString(words.number(most), left + SIDE - 16f, TOP + SIDE + 16f);
    g.drawString(top, left - 6f - SvgCanvas.metrics(Fonts.of(11)).stringWidth(top), TOP + 5f);
  }

  private void drawShares(Graphics2D g) {
    g.setPaint(Palette.BLUE);
    g.setStroke(new BasicStroke(2));
    Path2D steps = new Path2D.Double();
    steps.moveTo(LEFT, TOP + SIDE);
    for (Point point : row.points()) {
      steps.lineTo(x(LEFT, point.amount()), steps.getCurrentPoint().getY());
      steps.lineTo(x(LEFT, point.amount()), y(point.share()));
    }
    g.draw(steps);
    g.setPaint(Palette.VERMILLION);
    g.setStroke(ChartStyle.DASHED);
    Path2D law = new Path2D.Double();
    law.moveTo(x(LEFT, row.points().get(0).amount()), y(row.points().get(0).lawShare()));
    row.points().forEach(point -> law.lineTo(x(LEFT, point.amount()), y(point.lawShare())));
    g.draw(law);
    g.setFont(Fonts.of(11));
    g.drawString("law", LEFT + SIDE - 24f, TOP + SIDE - 10f);
    g.setPaint(Palette.BLUE);
    g.drawString("recorded", LEFT + SIDE - 56f, TOP + SIDE - 26f);
  }

  private void drawQuantiles(Graphics2D g) {
    g.setPaint(Palette.VERMILLION);
    g.setStroke(ChartStyle.DASHED);
    g.draw(new Line2D.Double(RIGHT, TOP + SIDE, RIGHT + SIDE, TOP));
    g.setPaint(Palette.BLUE);
    g.setStroke(new BasicStroke(1.2f));
    for (Point point : row.points()) {
      g.draw(
          new Ellipse2D.Double(
              x(RIGHT, point.lawAmount()) - 2.5, y(point.amount() / most) - 2.5, 5, 5));
    }
  }

  private double x(int left, double amount) {
    return left + SIDE * Math.min(1, Math.max(0, amount / most));
  }

  private double y(double share) {
    return TOP + SIDE * (1 - Math.min(1, Math.max(0, share)));
  }

  private String alternative() {
    Point middle = FitLawWords.at(row, 0.5);
    Point last = row.points().get(row.points().size() - 1);
    return "Recorded amounts against the "
        + row.laws().get(0).law()
        + " law. Middle: recorded "
        + words.number(middle.amount())
        + ", by the law "
        + words.number(middle.lawAmount())
        + "; largest: recorded "
        + words.number(last.amount())
        + ", by the law "
        + words.number(last.lawAmount())
        + " "
        + row.unit()
        + ".";
  }

  private Chart.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    for (Point point :
        Arrays.stream(SHARES).mapToObj(share -> FitLawWords.at(row, share)).distinct().toList()) {
      rows.add(
          List.of(
              words.number(100 * point.share()),
              words.number(point.amount()),
              words.number(point.lawAmount()),
              words.number(100 * point.lawShare())));
    }
    return new Chart.Grid(
        List.of(
            "share, %",
            "recorded, " + row.unit(), "by the law, " + row.unit(), "law's share at it, %"),
        rows);
  }
}
