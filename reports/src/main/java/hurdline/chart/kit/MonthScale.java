package hurdline.chart.kit;

import hurdline.text.Wording;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;

/** Where dates lie between two edges of a drawing; as many months are named as names have room. */
public record MonthScale(LocalDate from, LocalDate to, double left, double right) {
  private static final double SHORTEST_MONTH_D = 28;
  private static final double GAP = 3;

  /** Where a date begins; one beyond the scale lies at its edge. */
  public double x(LocalDate date) {
    double days = ChronoUnit.DAYS.between(from, date);
    double all = ChronoUnit.DAYS.between(from, to) + 1;
    return left + Math.max(0, Math.min(1, days / all)) * (right - left);
  }

  public void draw(Graphics2D g, double top, double bottom, Wording wording) {
    g.setFont(Fonts.of(10));
    LocalDate month = from.withDayOfMonth(1);
    double name = g.getFontMetrics().stringWidth(wording.month(YearMonth.from(month))) + GAP;
    double shortest = SHORTEST_MONTH_D * (right - left) / (ChronoUnit.DAYS.between(from, to) + 1);
    int step = (int) Math.ceil(name / shortest);
    for (; !month.isAfter(to); month = month.plusMonths(step)) {
      g.setPaint(Palette.GRID);
      g.draw(new Line2D.Double(x(month), top, x(month), bottom + 3));
      if (x(month) + name < ChartStyle.widthPx()) {
        g.setPaint(Palette.INK);
        g.drawString(
            wording.month(YearMonth.from(month)), (float) x(month) + 1, (float) bottom + 14);
      }
    }
    g.setPaint(Palette.INK);
    g.draw(new Line2D.Double(left, bottom, right, bottom));
  }
}
