package hurdline.chart.fit;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.BacktestAnswer.Period;
import hurdline.answer.BacktestAnswer.Series;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.BacktestWords;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;

/** A chart for each series of a backtest: the simulated band and what was recorded in it. */
public final class SeasonCharts {
  private static final int HEIGHT = 240;
  private static final int TOP = 30;
  private static final int TALL = 160;
  private static final int LEFT = 70;
  private static final int WIDE = 600;
  private static final int FEWEST = 4;

  private final BacktestAnswer answer;
  private final BacktestWords words;
  private final Wording wording;

  private SeasonCharts(BacktestAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new BacktestWords(answer, wording);
  }

  public static List<Chart> all(BacktestAnswer answer, Wording wording) {
    SeasonCharts charts = new SeasonCharts(answer, wording);
    return answer.series().stream()
        .filter(of -> charts.periods(of).size() >= FEWEST)
        .map(charts::chart)
        .toList();
  }

  private List<Period> periods(Series of) {
    return answer.periods().stream()
        .filter(period -> period.kind() == of.kind() && period.of().equals(of.of()))
        .toList();
  }

  private Chart chart(Series of) {
    List<Period> periods = periods(of);
    String name =
        ("season-" + of.kind() + "-" + of.of())
            .toLowerCase(java.util.Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("-$", "");
    String title = Titles.capital(words.label(of)) + ": " + words.verdict(of);
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), HEIGHT);
    draw(canvas.onWhite(), of, periods);
    String alternative = alternative(of, periods);
    return new Chart(
        name, title, alternative, canvas.finish(title, alternative), table(of, periods));
  }

  private void draw(Graphics2D g, Series of, List<Period> periods) {
    double most = periods.stream().mapToDouble(p -> Math.max(p.seen(), p.p95())).max().orElse(1);
    double top = most > 0 ? most : 1;
    g.setPaint(Palette.GRID);
    g.setStroke(new BasicStroke(1));
    for (int i = 0; i <= 4; i++) {
      double at = TOP + TALL * i / 4.0;
      g.draw(new Line2D.Double(LEFT, at, LEFT + WIDE, at));
    }
    Path2D band = new Path2D.Double();
    Path2D median = new Path2D.Double();
    for (int i = 0; i < periods.size(); i++) {
      move(band, i, x(i, periods), y(periods.get(i).p95() / top));
      move(median, i, x(i, periods), y(periods.get(i).p50() / top));
    }
    for (int i = periods.size() - 1; i >= 0; i--) {
      band.lineTo(x(i, periods), y(periods.get(i).p05() / top));
    }
    band.closePath();
    g.setPaint(Palette.GRID);
    g.fill(band);
    g.setPaint(Palette.VERMILLION);
    g.setStroke(ChartStyle.DASHED);
    g.draw(median);
    g.setPaint(Palette.BLUE);
    for (int i = 0; i < periods.size(); i++) {
      g.fill(new Ellipse2D.Double(x(i, periods) - 2.5, y(periods.get(i).seen() / top) - 2.5, 5, 5));
    }
    g.setPaint(Palette.INK);
    g.setFont(Fonts.of(11));
    String unit = of.unit().equals("count") ? "" : " " + wording.unit(of.unit());
    g.drawString(wording.roughly(top, of.unit()) + unit, 4f, TOP + 4f);
    g.drawString("0", LEFT - 14f, TOP + TALL + 4f);
    g.drawString(wording.date(periods.get(0).from()), LEFT, TOP + TALL + 18f);
    String last = wording.date(periods.get(periods.size() - 1).from());
    g.drawString(
        last, LEFT + WIDE - SvgCanvas.metrics(Fonts.of(11)).stringWidth(last), TOP + TALL + 18f);
    g.drawString(
        "dots: recorded; band: 5th to 95th percentile, dashed: median of the replications",
        LEFT,
        TOP + TALL + 36f);
  }

  private static void move(Path2D path, int at, double x, double y) {
    if (at == 0) {
      path.moveTo(x, y);
    } else {
      path.lineTo(x, y);
    }
  }

  private static double x(int at, List<Period> periods) {
    return LEFT + (double) WIDE * at / (periods.size() - 1);
  }

  private static double y(double share) {
    return TOP + TALL * (1 - Math.min(1, Math.max(0, share)));
  }

  private String alternative(Series of, List<Period> periods) {
    long outside = periods.stream().filter(p -> p.seen() < p.p05() || p.seen() > p.p95()).count();
    return Titles.capital(words.label(of))
        + ", recorded and simulated. "
        + wording.count(outside)
        + " of "
        + wording.count(periods.size())
        + " periods lie outside the band from the 5th to the 95th percentile.";
  }

  private Chart.Grid table(Series of, List<Period> periods) {
    return new GridColumns<Period>(wording)
        .text("from", period -> wording.date(period.from()))
        .text("recorded", period -> wording.roughly(period.seen(), of.unit()))
        .text("5th percentile", period -> wording.roughly(period.p05(), of.unit()))
        .text("median", period -> wording.roughly(period.p50(), of.unit()))
        .text("95th percentile", period -> wording.roughly(period.p95(), of.unit()))
        .of(periods);
  }
}
