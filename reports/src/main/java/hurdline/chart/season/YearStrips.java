package hurdline.chart.season;

import hurdline.answer.MachineWeekRow;
import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.MonthScale;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.Wording;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A year at a glance: the building's calendar, and under it a strip for each machine with a column
 * for each week, its paint the crop and its height the hours at work. All plans have one scale.
 */
final class YearStrips {
  private static final double LEFT = 118;
  private static final double RIGHT = ChartStyle.widthPx() - 14;
  private static final double KEYS = 24;
  private static final double ROW = 20;
  private static final double BAR = 17;
  private static final double AXIS = 20;
  private static final int WEEKS_A_COLUMN = 4;

  private final SeasonAnswer answer;
  private final SeasonAnswer.Plan plan;
  private final Wording wording;
  private final List<MachineWeekRow> rows;
  private final List<String> machines;
  private final List<String> crops;
  private final PlanCalendar calendar;
  private final MonthScale scale;
  private final double mostHours;

  YearStrips(SeasonAnswer answer, SeasonAnswer.Plan plan, Wording wording) {
    this.answer = answer;
    this.plan = plan;
    this.wording = wording;
    rows = answer.strips().stream().filter(row -> row.plan().equals(plan.name())).toList();
    machines = plan.outline().machines();
    crops = plan.outline().lines().stream().map(Outline.Line::crop).distinct().toList();
    calendar = new PlanCalendar(answer, plan, wording);
    scale = new MonthScale(answer.header().from(), answer.header().to(), LEFT, RIGHT);
    mostHours = answer.strips().stream().mapToDouble(MachineWeekRow::hours).max().orElse(1);
  }

  Chart figure() {
    String title = "The year at a glance, " + wording.titles().plan(plan.name());
    String name = "year-" + plan.name();
    double top = KEYS + calendar.height() + 8;
    double bottom = top + ROW * machines.size();
    int height = (int) Math.ceil(bottom + AXIS);
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), height);
    Graphics2D g = canvas.onWhite();
    keys(g);
    scale.draw(g, KEYS, bottom, wording);
    calendar.draw(g, KEYS, scale);
    label(g, "building", KEYS + calendar.height() / 2 + 4);
    columns(g, top);
    for (int row = 0; row < machines.size(); row++) {
      double base = top + ROW * (row + 1);
      label(g, Fonts.fitted(wording.titles().machine(machines.get(row)), 11, LEFT - 10), base - 5);
      g.setPaint(Palette.GRID);
      g.draw(new Line2D.Double(LEFT, base, RIGHT, base));
    }
    return new Chart(name, title, alternative(), canvas.finish(title, alternative()), table());
  }

  /** First date of a week: that of the horizon, then Mondays. */
  private LocalDate weekFrom(int week) {
    LocalDate from = answer.header().from();
    return week == 1
        ? from
        : from.with(TemporalAdjusters.next(DayOfWeek.MONDAY)).plusWeeks(week - 2);
  }

  private void keys(Graphics2D g) {
    double x = LEFT;
    for (String crop : crops) {
      x = key(g, x, PlanPaints.of(answer, crop), wording.titles().crop(crop));
    }
    x = key(g, x, PlanPaints.changeover(), "changeover");
    x = key(g, x, java.awt.Color.WHITE, "planned, not needed");
    g.setFont(Fonts.of(11));
    g.setPaint(Palette.INK);
    String scale = "full height " + wording.fixed(mostHours, 0, "h") + " producing hours a week";
    g.drawString(scale, (float) x, 14);
  }

  private static double key(Graphics2D g, double x, java.awt.Paint paint, String word) {
    g.setPaint(paint);
    Rectangle2D patch = new Rectangle2D.Double(x, 4, 16, 12);
    g.fill(patch);
    g.setPaint(Palette.INK);
    g.draw(patch);
    g.setFont(Fonts.of(11));
    g.drawString(word, (float) x + 21, 14);
    return x + 21 + g.getFontMetrics().stringWidth(word) + 16;
  }

  private static void label(Graphics2D g, String word, double y) {
    g.setFont(Fonts.of(11));
    g.setPaint(Palette.INK);
    float wide = g.getFontMetrics().stringWidth(word);
    g.drawString(word, (float) Math.max(2, LEFT - 8 - wide), (float) y);
  }

  /**
   * All columns of a crop are one shape: a browser prints each patterned shape as a picture of its
   * own.
   */
  private void columns(Graphics2D g, double top) {
    Map<String, Path2D> shapes = new LinkedHashMap<>();
    for (int row = 0; row < machines.size(); row++) {
      strip(shapes, machines.get(row), top + ROW * (row + 1));
    }
    shapes.forEach(
        (crop, shape) -> {
          g.setPaint(PlanPaints.of(answer, crop));
          g.fill(shape);
        });
  }

  private void strip(Map<String, Path2D> shapes, String machine, double base) {
    int week = 0;
    double stacked = 0;
    for (MachineWeekRow row : ofMachine(machine)) {
      stacked = row.week() == week ? stacked : 0;
      week = row.week();
      double high = mostHours > 0 ? BAR * row.hours() / mostHours : 0;
      double left = scale.x(weekFrom(week));
      double wide = Math.max(0.5, scale.x(weekFrom(week + 1)) - left - 0.8);
      shapes
          .computeIfAbsent(row.crop(), crop -> new Path2D.Double())
          .append(new Rectangle2D.Double(left, base - stacked - high, wide, high), false);
      stacked += high;
    }
  }

  private List<MachineWeekRow> ofMachine(String machine) {
    return rows.stream()
        .filter(row -> row.machine().equals(machine))
        .sorted(java.util.Comparator.comparingInt(MachineWeekRow::week))
        .toList();
  }

  private String alternative() {
    List<String> told = new ArrayList<>();
    for (String crop : crops) {
      List<MachineWeekRow> of = rows.stream().filter(row -> row.crop().equals(crop)).toList();
      if (!of.isEmpty()) {
        MachineWeekRow most =
            of.stream()
                .max(java.util.Comparator.comparingDouble(MachineWeekRow::hours))
                .orElseThrow();
        int first = of.stream().mapToInt(MachineWeekRow::week).min().orElseThrow();
        int last = of.stream().mapToInt(MachineWeekRow::week).max().orElseThrow();
        told.add(
            wording.titles().crop(crop)
                + " from week "
                + first
                + " to week "
                + last
                + ", at most "
                + wording.fixed(most.hours(), 0, "h")
                + " h a week on "
                + wording.titles().machineInText(most.machine()));
      }
    }
    return "The building's calendar, "
        + calendar.inWords()
        + "; under it strips of "
        + machines.size()
        + " machines with the producing hours of each week: "
        + String.join("; ", told)
        + ".";
  }

  /** Four weeks a column: what the eye can tell, and a page can hold. */
  private Chart.Grid table() {
    int weeks = weeks();
    List<String> head = new ArrayList<>(List.of("machine, crop"));
    for (int first = 1; first <= weeks; first += WEEKS_A_COLUMN) {
      int last = Math.min(first + WEEKS_A_COLUMN - 1, weeks);
      head.add(first == last ? "week " + first + " h" : "weeks " + first + "–" + last + " h");
    }
    List<List<String>> cells = new ArrayList<>();
    for (String machine : machines) {
      for (String crop : crops) {
        List<MachineWeekRow> of =
            ofMachine(machine).stream().filter(row -> row.crop().equals(crop)).toList();
        if (!of.isEmpty()) {
          cells.add(
              line(
                  wording.titles().machine(machine) + ", " + wording.titles().crop(crop),
                  of,
                  weeks));
        }
      }
    }
    return new Chart.Grid(head, cells);
  }

  private int weeks() {
    int week = 1;
    while (!weekFrom(week + 1).isAfter(answer.header().to())) {
      week++;
    }
    return week;
  }

  private List<String> line(String label, List<MachineWeekRow> of, int weeks) {
    List<String> line = new ArrayList<>(List.of(label));
    for (int first = 1; first <= weeks; first += WEEKS_A_COLUMN) {
      int from = first;
      double hours =
          of.stream()
              .filter(row -> row.week() >= from && row.week() < from + WEEKS_A_COLUMN)
              .mapToDouble(MachineWeekRow::hours)
              .sum();
      line.add(wording.fixed(hours, 0, "h"));
    }
    return line;
  }
}
