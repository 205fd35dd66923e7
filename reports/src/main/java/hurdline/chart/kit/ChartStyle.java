package hurdline.chart.kit;

import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.DateFormat;
import java.text.FieldPosition;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** What all charts have in common: font, colours, axes. */
public final class ChartStyle {
  private static final int WIDTH = 720;

  /** Of lines that mark a level or a size. */
  public static final BasicStroke DASHED =
      new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {8, 5}, 0);

  private static final TimeZone NO_ZONE = TimeZone.getTimeZone("UTC");
  private static final int MONTHS_WITHOUT_GAPS = 12;
  private static final int DAYS_SHOWN_AS_DAYS = 62;

  private ChartStyle() {}

  /** Draws a small chart for nobody. */
  public static void getReady() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    data.addValue(1, "a", "b");
    data.addValue(2, "c", "b");
    StackedBarRenderer bars = flat(new StackedBarRenderer());
    bars.setSeriesPaint(0, new Hatch(Palette.ORANGE, Palette.INK, Hatch.Kind.RISING));
    NumberAxis axis = numberAxis("d", new Wording(UnitSystem.METRIC, Locale.ROOT));
    svg("ready", lying(new CategoryPlot(data, categoryAxis(), axis, bars)), true, 100, "e", "f");
  }

  public static NumberAxis numberAxis(String label, Wording wording) {
    NumberAxis axis = new BoundedAxis(label, wording);
    dress(axis);
    return axis;
  }

  public static CategoryAxis categoryAxis() {
    CategoryAxis axis = new CategoryAxis();
    axis.setTickLabelFont(Fonts.of(12));
    axis.setTickLabelPaint(Palette.INK);
    axis.setAxisLinePaint(Palette.INK);
    axis.setMaximumCategoryLabelWidthRatio(3f);
    axis.setLowerMargin(0.01);
    axis.setUpperMargin(0.01);
    axis.setCategoryMargin(0.3);
    return axis;
  }

  /** A date axis over the horizon, its dates in the reader's order. */
  public static DateAxis dateAxis(LocalDate from, LocalDate to, Wording wording) {
    DateAxis axis = new DateAxis(null, NO_ZONE, Locale.ROOT);
    long days = ChronoUnit.DAYS.between(from, to) + 1;
    boolean byDay = days <= DAYS_SHOWN_AS_DAYS;
    int step = (int) (byDay ? (days + 9) / 10 : 1 + days / 31 / MONTHS_WITHOUT_GAPS);
    Ticks format = new Ticks(wording, byDay);
    axis.setTickUnit(
        new DateTickUnit(byDay ? DateTickUnitType.DAY : DateTickUnitType.MONTH, step, format));
    axis.setRange(new Date(millis(from)), new Date(millis(to.plusDays(1))));
    dress(axis);
    axis.setTickLabelFont(Fonts.of(10));
    return axis;
  }

  /** Writes dates as the wording does. */
  private static final class Ticks extends DateFormat {
    private final transient Wording wording;
    private final boolean byDay;

    Ticks(Wording wording, boolean byDay) {
      this.wording = wording;
      this.byDay = byDay;
      calendar = Calendar.getInstance(NO_ZONE, Locale.ROOT);
    }

    @Override
    public StringBuffer format(Date date, StringBuffer text, FieldPosition place) {
      LocalDate at = LocalDate.ofInstant(date.toInstant(), ZoneOffset.UTC);
      return text.append(byDay ? wording.day(at) : wording.month(YearMonth.from(at)));
    }

    @Override
    public Date parse(String text, ParsePosition place) {
      throw new UnsupportedOperationException("ticks are only written");
    }
  }

  /** A legend's patch, wide enough to show a pattern. */
  public static Rectangle2D swatch() {
    return new Rectangle2D.Double(-8, -6, 16, 12);
  }

  /** Bars of one even paint, without a shadow. */
  public static <B extends BarRenderer> B flat(B bars) {
    bars.setBarPainter(new StandardBarPainter());
    bars.setShadowVisible(false);
    return bars;
  }

  /** Flat bars of several series that stand close together, each series in its paint. */
  public static <B extends BarRenderer> B sideBySide(B bars, int series) {
    bars.setItemMargin(0);
    bars.setDefaultLegendShape(swatch());
    for (int at = 0; at < series; at++) {
      bars.setSeriesPaint(at, Palette.series(at));
    }
    return flat(bars);
  }

  /** Says beside a line what it marks. */
  public static void label(Marker line, String text, int size) {
    line.setLabel(text);
    line.setLabelFont(Fonts.of(size));
    line.setLabelPaint(Palette.INK);
    line.setLabelBackgroundColor(new Color(255, 255, 255, 0));
  }

  public static long millis(LocalDate date) {
    return date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
  }

  public static void dress(ValueAxis axis) {
    axis.setLabelFont(Fonts.of(12));
    axis.setTickLabelFont(Fonts.of(12));
    axis.setLabelPaint(Palette.INK);
    axis.setTickLabelPaint(Palette.INK);
    axis.setAxisLinePaint(Palette.INK);
  }

  public static CategoryPlot lying(CategoryPlot plot) {
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(org.jfree.chart.axis.AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(Palette.GRID);
    plot.setRangeGridlineStroke(new BasicStroke(1));
    plot.setOutlineVisible(false);
    return plot;
  }

  /** Bars that stand over their months. */
  public static CategoryPlot months(DefaultCategoryDataset data, BarRenderer bars, NumberAxis up) {
    CategoryAxis axis = categoryAxis();
    axis.setTickLabelFont(Fonts.of(11));
    axis.setCategoryLabelPositions(
        data.getColumnCount() > MONTHS_WITHOUT_GAPS
            ? CategoryLabelPositions.UP_90
            : CategoryLabelPositions.STANDARD);
    CategoryPlot plot = lying(new CategoryPlot(data, axis, up, bars));
    plot.setOrientation(PlotOrientation.VERTICAL);
    return plot;
  }

  /**
   * A line with its band.
   *
   * @param along its axis, or null where plots share one
   * @param marked whether each value has a mark
   */
  public static XYPlot band(
      YIntervalSeries series, ValueAxis along, NumberAxis up, boolean marked) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    DeviationRenderer band = new DeviationRenderer(true, marked);
    band.setAlpha(0.35f);
    band.setSeriesPaint(0, Palette.BLUE);
    band.setSeriesFillPaint(0, Palette.SKY);
    band.setSeriesStroke(0, new BasicStroke(2));
    band.setSeriesShape(0, new Ellipse2D.Double(-3, -3, 6, 6));
    return dressed(new XYPlot(data, along, up, band));
  }

  public static XYPlot dressed(XYPlot plot) {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(Palette.GRID);
    plot.setDomainGridlinePaint(Palette.GRID);
    plot.setRangeGridlineStroke(new BasicStroke(1));
    plot.setDomainGridlineStroke(new BasicStroke(1));
    plot.setOutlineVisible(false);
    return plot;
  }

  /** Draws a chart; a legend where there is more than one series. */
  public static String svg(
      String name,
      org.jfree.chart.plot.Plot plot,
      boolean legend,
      int height,
      String title,
      String alternative) {
    JFreeChart chart = new JFreeChart(null, Fonts.of(12), plot, legend);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(4, 4, 4, 12));
    if (legend) {
      LegendTitle keys = chart.getLegend();
      keys.setItemFont(Fonts.of(12));
      keys.setItemPaint(Palette.INK);
      keys.setPosition(RectangleEdge.TOP);
      keys.setFrame(BlockBorder.NONE);
    }
    SvgCanvas canvas = new SvgCanvas(name, WIDTH, height);
    chart.draw(canvas.graphics(), new Rectangle2D.Double(0, 0, WIDTH, height));
    return canvas.finish(title, alternative);
  }

  /** How wide every chart is, in pixels. */
  public static int widthPx() {
    return WIDTH;
  }
}
