package hurdline.chart.season;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SeasonAnswer.Entry;
import hurdline.answer.SummaryRow;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.MonthScale;
import hurdline.chart.kit.Palette;
import hurdline.text.SeasonWords;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Campaigns and changeovers of a plan as bars over the calendar; those at once stand in two rows.
 */
final class PlanCalendar {
  private static final double ROW = 24;
  private static final double BAR = 15;

  private final SeasonAnswer answer;
  private final SeasonAnswer.Plan plan;
  private final Wording wording;
  private final SeasonWords words;
  private final List<Integer> rowOf = new ArrayList<>();
  private final int rows;

  PlanCalendar(SeasonAnswer answer, SeasonAnswer.Plan plan, Wording wording) {
    this.answer = answer;
    this.plan = plan;
    this.wording = wording;
    words = new SeasonWords(answer, wording);
    List<LocalDate> busyTo = new ArrayList<>();
    for (Entry entry : plan.entries()) {
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

  void draw(Graphics2D g, double top, MonthScale scale) {
    for (int at = 0; at < plan.entries().size(); at++) {
      Entry entry = plan.entries().get(at);
      double y = top + ROW * rowOf.get(at);
      bar(g, scale.x(entry.from()), scale.x(entry.to().plusDays(1)), y, Color.WHITE);
      if (entry.isChangeover()) {
        bar(g, scale.x(entry.from()), scale.x(entry.to().plusDays(1)), y, PlanPaints.changeover());
      } else {
        simulated(g, entry, y, scale);
      }
    }
    g.setStroke(new BasicStroke(1));
  }

  /**
   * What was worked of a campaign in half of the years or more, to the median of its ends; under it
   * their band.
   */
  private void simulated(Graphics2D g, Entry entry, double y, MonthScale scale) {
    double left = scale.x(entry.from());
    Optional<SummaryRow> ended = answer.ended(plan.name(), entry);
    ended
        .filter(row -> 2 * row.replications() >= answer.header().replications())
        .ifPresent(
            row -> {
              double middle = scale.x(answer.date(row.p50()).plusDays(1));
              bar(g, left, middle, y, PlanPaints.of(answer, crop(entry)));
            });
    double right = scale.x(entry.to().plusDays(1));
    name(
        g, wording.titles().line(entry.line()), new Rectangle2D.Double(left, y, right - left, BAR));
    ended
        .filter(row -> answer.date(row.p05()).isBefore(entry.to()))
        .ifPresent(row -> band(g, row, y + BAR + 4, scale));
  }

  private static void bar(Graphics2D g, double left, double right, double y, Paint paint) {
    Rectangle2D bar = new Rectangle2D.Double(left, y, Math.max(1, right - left), BAR);
    PlanPaints.bar(g, bar, paint);
  }

  private String crop(Entry entry) {
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

  private void band(Graphics2D g, SummaryRow row, double y, MonthScale scale) {
    double low = scale.x(answer.date(row.p05()));
    double high = scale.x(answer.date(row.p95()).plusDays(1));
    double middle = scale.x(answer.date(row.p50()).plusDays(1));
    g.setPaint(Palette.INK);
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(low, y, high, y));
    g.draw(new Line2D.Double(middle, y - 3, middle, y + 3));
  }

  String inWords() {
    return plan.entries().stream()
        .map(
            entry ->
                (entry.isChangeover() ? "changeover" : wording.titles().line(entry.line()))
                    + " planned "
                    + wording.span(entry.from(), entry.to())
                    + ended(entry))
        .collect(Collectors.joining("; "));
  }

  private String ended(Entry entry) {
    String ended = words.ended(plan.name(), entry);
    boolean worked = answer.ended(plan.name(), entry).isPresent();
    return ended.isEmpty() ? "" : worked ? ", ended " + ended : ", " + ended;
  }
}
