package hurdline.chart.season;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.MonthScale;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.measure.Measure;
import hurdline.text.SeasonWords;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When each line worked its last shift, crop by crop with the plans under each other: a bar for the
 * dates of nine years in ten, a line from the earliest to the latest, a stroke for the median, and
 * a mark where the plan's last campaign was to end.
 */
final class EndsChart {
  private static final double KEYS = 24;
  private static final double HEAD = 22;
  private static final double ROW = 22;
  private static final double BAR = 12;
  private static final double AXIS = 20;
  private static final double COUNT = 96;
  private static final double WIDEST_NAME = 190;

  private final SeasonAnswer answer;
  private final Wording wording;
  private final SeasonWords words;
  private final List<End> ends = new ArrayList<>();
  private final MonthScale scale;

  /** The end of a line's work under one plan; planned is the last day of its last campaign. */
  private record End(String plan, Outline.Line line, LocalDate planned, SummaryRow row) {}

  EndsChart(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new SeasonWords(answer, wording);
    for (String line : PlanPaints.lines(answer)) {
      answer.plans().forEach(plan -> add(plan, line));
    }
    scale = ends.isEmpty() ? null : scale();
  }

  private void add(SeasonAnswer.Plan plan, String name) {
    Optional<LocalDate> planned =
        plan.entries().stream()
            .filter(entry -> entry.line().equals(name))
            .map(SeasonAnswer.Entry::to)
            .max(Comparator.naturalOrder());
    Optional<SummaryRow> ended =
        answer
            .find(plan.name(), Measure.SEASON_ENDED.of(name))
            .filter(row -> row.replications() > 0);
    if (planned.isPresent() && ended.isPresent()) {
      Outline.Line line =
          plan.outline().lines().stream()
              .filter(l -> l.name().equals(name))
              .findFirst()
              .orElseThrow();
      ends.add(new End(plan.name(), line, planned.get(), ended.get()));
    }
  }

  boolean isEmpty() {
    return ends.isEmpty();
  }

  /** Whole months, so that the first and the last have their names. */
  private MonthScale scale() {
    LocalDate from =
        ends.stream()
            .map(end -> date(end.row().least()))
            .min(Comparator.naturalOrder())
            .orElseThrow();
    LocalDate to =
        ends.stream()
            .flatMap(end -> Stream.of(end.planned(), date(end.row().most())))
            .max(Comparator.naturalOrder())
            .orElseThrow();
    double names =
        answer.plans().stream()
            .mapToDouble(
                plan ->
                    SvgCanvas.metrics(Fonts.of(12)).stringWidth(wording.titles().plan(plan.name())))
            .max()
            .orElse(0);
    return new MonthScale(
        from.withDayOfMonth(1),
        to.withDayOfMonth(to.lengthOfMonth()),
        Math.min(WIDEST_NAME, names) + 24,
        ChartStyle.widthPx() - COUNT);
  }

  private LocalDate date(double day) {
    return answer.date(day);
  }

  Chart figure() {
    String title = "When each crop was finished";
    long lines = ends.stream().map(end -> end.line().name()).distinct().count();
    double bottom = KEYS + HEAD * lines + ROW * ends.size() + 4;
    SvgCanvas canvas = new SvgCanvas("ends", ChartStyle.widthPx(), (int) Math.ceil(bottom + AXIS));
    Graphics2D g = canvas.onWhite();
    scale.draw(g, KEYS, bottom, wording);
    keys(g);
    double top = KEYS;
    String last = "";
    for (End end : ends) {
      if (!end.line().name().equals(last)) {
        g.setFont(Fonts.bold(12));
        g.drawString(
            wording.titles().crop(end.line().crop())
                + " on "
                + wording.titles().lineInText(end.line().name()),
            4,
            (float) top + 15);
        last = end.line().name();
        top += HEAD;
      }
      row(g, end, top);
      top += ROW;
    }
    return new Chart("ends", title, alternative(), canvas.finish(title, alternative()), table());
  }

  private void row(Graphics2D g, End end, double top) {
    double middle = top + ROW / 2;
    g.setFont(Fonts.of(12));
    g.drawString(
        Fonts.fitted(wording.titles().plan(end.plan()), 12, WIDEST_NAME), 14, (float) middle + 4);
    g.setFont(Fonts.of(11));
    g.drawString(years(end) + " years", (float) scale.right() + 16, (float) middle + 4);
    SummaryRow row = end.row();
    g.setStroke(new BasicStroke(1));
    g.draw(
        new Line2D.Double(
            scale.x(date(row.least())), middle, scale.x(date(row.most()).plusDays(1)), middle));
    band(g, end, scale.x(date(row.p05())), scale.x(date(row.p95()).plusDays(1)), middle);
    double at = (scale.x(date(row.p50())) + scale.x(date(row.p50()).plusDays(1))) / 2;
    stroke(g, at, middle);
    planned(g, scale.x(end.planned().plusDays(1)), middle);
    g.setStroke(new BasicStroke(1));
  }

  private void band(Graphics2D g, End end, double left, double right, double middle) {
    Rectangle2D bar =
        new Rectangle2D.Double(left, middle - BAR / 2, Math.max(1, right - left), BAR);
    PlanPaints.bar(g, bar, PlanPaints.of(answer, end.line().crop()));
  }

  private static void stroke(Graphics2D g, double x, double middle) {
    g.setPaint(Palette.INK);
    g.setStroke(new BasicStroke(2.5f));
    g.draw(new Line2D.Double(x, middle - BAR / 2 - 3, x, middle + BAR / 2 + 3));
  }

  /** A hollow triangle whose point touches the end of the planned last day. */
  private static void planned(Graphics2D g, double x, double middle) {
    Path2D mark = new Path2D.Double();
    mark.moveTo(x, middle);
    mark.lineTo(x + 7, middle - 5);
    mark.lineTo(x + 7, middle + 5);
    mark.closePath();
    g.setPaint(java.awt.Color.WHITE);
    g.fill(mark);
    g.setPaint(Palette.INK);
    g.setStroke(new BasicStroke(1));
    g.draw(mark);
  }

  private void keys(Graphics2D g) {
    double y = 10;
    g.setPaint(Palette.INK);
    stroke(g, 10, y);
    double x = key(g, 18, "median");
    Rectangle2D bar = new Rectangle2D.Double(x, y - BAR / 2, 18, BAR);
    PlanPaints.bar(g, bar, Palette.SKY);
    x = key(g, x + 24, "5th to 95th percentile");
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(x, y, x + 18, y));
    x = key(g, x + 24, "earliest to latest");
    planned(g, x, y);
    x = key(g, x + 13, "planned last day");
    g.drawString("finished in", (float) scale.right() + 16, 14);
  }

  private static double key(Graphics2D g, double x, String word) {
    g.setFont(Fonts.of(11));
    g.setPaint(Palette.INK);
    g.drawString(word, (float) x, 14);
    return x + g.getFontMetrics().stringWidth(word) + 16;
  }

  /** {@code 38 of 40}. */
  private String years(End end) {
    return words.outOfAll(end.plan(), Measure.SEASON_LINE_FINISHED.of(end.line().name()));
  }

  private String alternative() {
    List<String> told = new ArrayList<>();
    for (End end : ends) {
      told.add(
          name(end)
              + " "
              + words.dates(end.row())
              + ", planned to "
              + wording.date(end.planned())
              + ", finished in "
              + years(end)
              + " years");
    }
    return "Bars of the dates on which each line worked its last shift, a stroke for the median and a"
        + " triangle for the planned last day: "
        + String.join("; ", told)
        + ".";
  }

  private String name(End end) {
    return wording.titles().line(end.line().name()) + ", " + wording.titles().plan(end.plan());
  }

  private Chart.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    for (End end : ends) {
      SummaryRow row = end.row();
      List<String> cells = new ArrayList<>(List.of(name(end)));
      Stream.of(row.least(), row.p05(), row.p50(), row.p95(), row.most())
          .forEach(day -> cells.add(wording.date(date(day))));
      cells.add(wording.date(end.planned()));
      cells.add(years(end));
      cells.add(String.valueOf(row.replications()));
      rows.add(cells);
    }
    return new Chart.Grid(
        List.of(
            "line, plan",
            "earliest",
            "5 %",
            "median",
            "95 %",
            "latest",
            "planned",
            "finished in years",
            "years with a shift"),
        rows);
  }
}
