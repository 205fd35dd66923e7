package hurdline.chart;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Campaigns and changeovers of a plan as bars over the calendar; those at once stand in two rows. */
final class PlanCalendar {
  private static final double ROW = 24;
  private static final double BAR = 15;

  private final SeasonAnswer answer;
  private final SeasonAnswer.Plan plan;
  private final List<Integer> rowOf = new ArrayList<>();
  private final int rows;

  PlanCalendar(SeasonAnswer answer, SeasonAnswer.Plan plan) {
    this.answer = answer;
    this.plan = plan;
    List<LocalDate> busyTo = new ArrayList<>();
    for (SeasonAnswer.Entry entry : plan.entries()) {
      int row = 0;
      while (row < busyTo.size() && !busyTo.get(row).isBefore(entry.from())) {
        row++;
      }
      if (row == busyTo.size()) {
        busyTo.add(entry.to());
      } else {
        busyTo.set(row, entry.to());
      }
      rowOf.add(row);
    }
    rows = Math.max(1, busyTo.size());
  }

  double height() {
    return ROW * rows;
  }

  void draw(Graphics2D g, double top, ToDoubleFunction<LocalDate> x) {
    for (int at = 0; at < plan.entries().size(); at++) {
      SeasonAnswer.Entry entry = plan.entries().get(at);
      double y = top + ROW * rowOf.get(at);
      double left = x.applyAsDouble(entry.from());
      double right = x.applyAsDouble(entry.to().plusDays(1));
      Rectangle2D bar = new Rectangle2D.Double(left, y, Math.max(1, right - left), BAR);
      g.setPaint(entry.isChangeover() ? PlanPaints.changeover() : PlanPaints.of(answer, crop(entry)));
      g.fill(bar);
      g.setPaint(Palette.INK);
      g.setStroke(new BasicStroke(0.7f));
      g.draw(bar);
      if (!entry.isChangeover()) {
        name(g, entry.line(), bar);
        ends(g, entry, at, y + BAR + 4, x);
      }
    }
    g.setStroke(new BasicStroke(1));
  }

  private String crop(SeasonAnswer.Entry entry) {
    return plan.outline().lines().stream()
        .filter(line -> line.name().equals(entry.line()))
        .map(Outline.Line::crop)
        .findFirst()
        .orElseThrow();
  }

  private static void name(Graphics2D g, String line, Rectangle2D bar) {
    g.setFont(Fonts.of(10));
    double wide = g.getFontMetrics().stringWidth(line);
    if (wide + 10 < bar.getWidth()) {
      double left = bar.getCenterX() - wide / 2;
      g.setPaint(Color.WHITE);
      g.fill(new Rectangle2D.Double(left - 3, bar.getY() + 1.5, wide + 6, BAR - 3));
      g.setPaint(Palette.INK);
      g.drawString(line, (float) left, (float) (bar.getMaxY() - 4));
    }
  }

  /** Under a line's last campaign the band of the dates on which it ended, its middle as a stroke. */
  private void ends(
      Graphics2D g, SeasonAnswer.Entry entry, int at, double y, ToDoubleFunction<LocalDate> x) {
    boolean last =
        plan.entries().stream().skip(at + 1).noneMatch(e -> e.line().equals(entry.line()));
    SummaryRow ended =
        answer.find(plan.name(), Measure.SEASON_ENDED.of(entry.line())).orElse(null);
    if (last && ended != null && !Double.isNaN(ended.p50())) {
      double low = x.applyAsDouble(date(ended.p05()));
      double high = x.applyAsDouble(date(ended.p95()).plusDays(1));
      double middle = x.applyAsDouble(date(ended.p50()).plusDays(1));
      g.setPaint(Palette.INK);
      g.setStroke(new BasicStroke(2));
      g.draw(new Line2D.Double(low, y, high, y));
      g.draw(new Line2D.Double(middle, y - 3, middle, y + 3));
      g.setStroke(new BasicStroke(0.7f));
    }
  }

  private LocalDate date(double day) {
    return answer.header().from().plusDays(Math.round(day) - 1);
  }

  String inWords() {
    return plan.entries().stream()
        .map(
            entry ->
                (entry.isChangeover() ? "changeover" : entry.line())
                    + " " + entry.from() + " to " + entry.to())
        .collect(Collectors.joining(", "));
  }
}
