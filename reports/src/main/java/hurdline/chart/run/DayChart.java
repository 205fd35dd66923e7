package hurdline.chart.run;

import hurdline.answer.Day;
import hurdline.answer.Day.Curve;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.chart.kit.WindowMeans;
import hurdline.measure.State;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A span of one replication on one time axis: rates, bins, what each machine did with its stops
 * named, trucks and yard, one strip under the other.
 */
final class DayChart {
  /** Longer spans are too dense to be read; their events are in the table of events. */
  private static final double LONGEST_H = 14 * 24;

  private static final double[] TICKS_H = {0.5, 1, 2, 3, 6, 12, 24, 48};
  private static final double TICK_ROOM = 46;
  private static final double TITLE = 22;
  private static final double AXIS = 30;

  private final Day day;
  private final Wording wording;
  private final int replication;
  private final DayStrips strips;
  private final WindowMeans windows;
  private final List<Strip> plan = new ArrayList<>();

  /** A part of the picture, over its whole width. */
  private record Strip(double height, boolean withGrid, Drawer drawer) {}

  private interface Drawer {
    void draw(Graphics2D g, double top);
  }

  DayChart(Day day, int replication, Wording wording) {
    this.day = day;
    this.replication = replication;
    this.wording = wording;
    strips = new DayStrips(day, wording);
    windows = new WindowMeans(day.lengthH(), strips.wide());
  }

  static boolean isReadable(Day day) {
    return day != null && day.lengthH() > 0 && day.lengthH() <= LONGEST_H;
  }

  Chart figure() {
    plan();
    int height = (int) Math.ceil(plan.stream().mapToDouble(Strip::height).sum()) + 8;
    SvgCanvas canvas = new SvgCanvas("day", ChartStyle.widthPx(), height);
    Graphics2D g = canvas.onWhite();
    double top = 0;
    for (Strip strip : plan) {
      if (strip.withGrid()) {
        grid(g, top, strip.height());
      }
      strip.drawer().draw(g, top);
      top += strip.height();
    }
    String title = title();
    return new Chart("day", title, alternative(), canvas.finish(title, alternative()), table());
  }

  private String title() {
    return "Replication " + replication + " from " + moment(day.from()) + " to " + moment(day.to());
  }

  private String moment(LocalDateTime at) {
    return wording.date(at.toLocalDate()) + " " + at.toLocalTime();
  }

  private void plan() {
    axis();
    group(rateTitle(), curves(Day.Of.RATE));
    group("In the bin, " + wording.unit("t"), curves(Day.Of.BIN));
    plan.add(new Strip(TITLE, false, (g, top) -> strips.title(g, "What each machine did", top)));
    plan.add(new Strip(20, false, strips::legend));
    for (String machine : machines()) {
      plan.add(
          new Strip(strips.barHeight(machine), true, (g, top) -> strips.machine(g, machine, top)));
    }
    group("Loads at the gate or being unloaded", curves(Day.Of.GATE));
    group("In the yard", curves(Day.Of.YARD));
    axis();
  }

  private String rateTitle() {
    boolean crowded = curves(Day.Of.RATE).stream().anyMatch(windows::isCrowded);
    return "Rate, "
        + wording.unit("t/h")
        + (crowded ? "; where it changes often, means of " + windows.minutes() + " min" : "");
  }

  private void group(String title, List<Curve> curves) {
    if (!curves.isEmpty()) {
      plan.add(new Strip(TITLE, false, (g, top) -> strips.title(g, title, top)));
      curves.forEach(
          curve ->
              plan.add(
                  new Strip(
                      strips.curveHeight(),
                      true,
                      (g, top) -> strips.curve(g, windows.seen(curve), top))));
    }
  }

  /** Those that are not nought throughout. */
  private List<Curve> curves(Day.Of of) {
    return day.curves(of).stream().filter(curve -> curve.most() > 1e-9).toList();
  }

  /** Those that some campaign uses in the span. */
  private List<String> machines() {
    return day.machines().stream()
        .filter(
            machine ->
                day.bars().stream()
                    .anyMatch(bar -> bar.machine().equals(machine) && bar.state() != State.UNUSED))
        .toList();
  }

  private void axis() {
    plan.add(new Strip(AXIS, false, this::drawAxis));
  }

  private void drawAxis(Graphics2D g, double top) {
    g.setPaint(Palette.INK);
    boolean first = true;
    for (LocalDateTime at : ticks()) {
      double x = strips.x(hour(at));
      strips.centred(g, 10, at.toLocalTime().toString(), x, top + 12);
      if (first || at.getHour() == 0 && at.getMinute() == 0) {
        strips.centred(g, 10, wording.day(at.toLocalDate()), x, top + 24);
      }
      first = false;
    }
  }

  private void grid(Graphics2D g, double top, double height) {
    g.setPaint(Palette.GRID);
    g.setStroke(new BasicStroke(1));
    for (LocalDateTime at : ticks()) {
      double x = strips.x(hour(at));
      g.draw(new Line2D.Double(x, top, x, top + height));
    }
  }

  private double hour(LocalDateTime at) {
    return java.time.Duration.between(day.from(), at).toSeconds() / 3600.0;
  }

  /** Round times of the day, as many as have room. */
  private List<LocalDateTime> ticks() {
    double stepH = TICKS_H[TICKS_H.length - 1];
    for (int at = TICKS_H.length - 1; at >= 0; at--) {
      if (TICKS_H[at] * strips.wide() / day.lengthH() >= TICK_ROOM) {
        stepH = TICKS_H[at];
      }
    }
    long stepMin = Math.round(stepH * 60);
    List<LocalDateTime> ticks = new ArrayList<>();
    LocalDateTime at = day.from().toLocalDate().atStartOfDay();
    for (; !at.isAfter(day.to()); at = at.plusMinutes(stepMin)) {
      if (!at.isBefore(day.from())) {
        ticks.add(at);
      }
    }
    return ticks;
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    for (String machine : machines()) {
      double down = day.hours(machine, State.DOWN) + day.hours(machine, State.PLANNED);
      if (down > 0) {
        parts.add(
            wording.titles().machine(machine)
                + " is down for "
                + wording.fixed(down, 1, "h")
                + " h");
      }
    }
    String stops = parts.isEmpty() ? "no machine is down" : String.join(", ", parts);
    String yard =
        curves(Day.Of.YARD).stream()
            .map(
                curve ->
                    "; of "
                        + Titles.inText(wording.titles().crop(curve.name()))
                        + " the yard holds "
                        + wording.fixed(curve.values()[0], 0, curve.unit())
                        + " "
                        + curve.unit()
                        + " at first and "
                        + wording.fixed(curve.values()[curve.values().length - 1], 0, curve.unit())
                        + " at last")
            .reduce("", String::concat);
    return "Strips on one time axis of "
        + wording.amount(day.lengthH(), "h")
        + ": rates, bins, states of the machines, trucks and yard. Over it "
        + stops
        + yard
        + ".";
  }

  private Chart.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    Stream.of(Day.Of.values())
        .flatMap(of -> curves(of).stream())
        .sorted(Comparator.comparing(Curve::of))
        .forEach(
            curve ->
                rows.add(
                    List.of(
                        says(curve),
                        curve.of() == Day.Of.GATE ? "loads" : wording.unit(curve.unit()),
                        strips.number(curve.least(), curve),
                        strips.number(curve.mean(), curve),
                        strips.number(curve.most(), curve))));
    return new Chart.Grid(List.of("what", "unit", "least", "mean", "most"), rows);
  }

  private String says(Curve curve) {
    String name = strips.name(curve);
    return switch (curve.of()) {
      case RATE ->
          "rate of " + name + (strips.line(curve).isEmpty() ? "" : ", " + strips.line(curve));
      case BIN -> "in " + name;
      case GATE -> "loads of " + name + " at the gate";
      case YARD -> name + " in the yard";
    };
  }
}
