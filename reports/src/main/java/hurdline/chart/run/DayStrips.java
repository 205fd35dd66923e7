package hurdline.chart.run;

import hurdline.answer.Day;
import hurdline.answer.Day.Curve;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Palette;
import hurdline.measure.State;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws the strips of a day, each at the height that it is told. */
final class DayStrips {
  private static final double CURVE = 46;
  private static final double LEFT = 168;
  private static final double RIGHT = 24;
  private static final double BAR = 14;
  private static final double BAR_GAP = 5;
  private static final double NAMES = 11;
  private static final int NAMES_PX = 9;

  private final Day day;
  private final Wording wording;

  DayStrips(Day day, Wording wording) {
    this.day = day;
    this.wording = wording;
  }

  double wide() {
    return ChartStyle.widthPx() - LEFT - RIGHT;
  }

  double x(double hour) {
    return LEFT + wide() * hour / day.lengthH();
  }

  double curveHeight() {
    return CURVE;
  }

  void title(Graphics2D g, String text, double top) {
    g.setPaint(Palette.INK);
    g.setFont(Fonts.bold(12));
    g.drawString(text, 4, (float) top + 16);
  }

  void centred(Graphics2D g, int size, String text, double x, double y) {
    Font font = Fonts.of(size);
    g.setFont(font);
    g.drawString(text, (float) (x - g.getFontMetrics(font).stringWidth(text) / 2.0), (float) y);
  }

  private void endingAt(Graphics2D g, int size, String text, double x, double y) {
    Font font = Fonts.of(size);
    g.setFont(font);
    g.drawString(text, (float) (x - g.getFontMetrics(font).stringWidth(text)), (float) y);
  }

  /** A curve over its own scale, whose ends stand beside it. */
  void curve(Graphics2D g, Curve curve, double top) {
    double low = curve.of() == Day.Of.YARD ? curve.least() : 0;
    double high = curve.most() > low ? curve.most() : low + 1;
    double upper = top + 6;
    double lower = top + CURVE - 4;
    double perUnit = (lower - upper) / (high - low);
    Path2D line = line(curve, low, lower, perUnit);
    Path2D area = new Path2D.Double(line);
    area.lineTo(x(day.lengthH()), lower);
    area.lineTo(x(0), lower);
    area.closePath();
    g.setPaint(new Color(0xd6ebf8));
    g.fill(area);
    g.setPaint(Palette.INK);
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(LEFT, lower, LEFT + wide(), lower));
    g.setPaint(Palette.BLUE);
    g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(line);
    g.setPaint(Palette.INK);
    String small = curve.of() == Day.Of.YARD ? curve.unit() : line(curve);
    double middle = (upper + lower) / 2;
    endingAt(
        g,
        12,
        Fonts.fitted(name(curve), 12, LEFT - 52),
        LEFT - 46,
        middle + (small.isEmpty() ? 4 : 0));
    endingAt(g, 9, Fonts.fitted(small, 9, LEFT - 52), LEFT - 46, middle + 11);
    endingAt(g, 9, number(high, curve), LEFT - 4, upper + 6);
    endingAt(g, 9, number(low, curve), LEFT - 4, lower);
  }

  private Path2D line(Curve curve, double low, double lower, double perUnit) {
    Path2D line = new Path2D.Double();
    double[] hours = curve.hours();
    double[] values = curve.values();
    line.moveTo(x(hours[0]), lower - (values[0] - low) * perUnit);
    for (int at = 1; at < hours.length; at++) {
      if (curve.of() != Day.Of.BIN) {
        line.lineTo(x(hours[at]), lower - (values[at - 1] - low) * perUnit);
      }
      line.lineTo(x(hours[at]), lower - (values[at] - low) * perUnit);
    }
    return line;
  }

  /** Loads and bales are counted; masses and rates get two decimals. */
  String number(double value, Curve curve) {
    boolean counted = curve.of() == Day.Of.YARD || curve.of() == Day.Of.GATE;
    boolean whole = counted && value == Math.rint(value);
    return wording.fixed(value, whole ? 0 : counted ? 1 : 2, curve.unit());
  }

  void legend(Graphics2D g, double top) {
    double x = 4;
    for (State state : State.values()) {
      boolean there = day.bars().stream().anyMatch(bar -> bar.state() == state);
      if (there && state != State.UNUSED) {
        swatch(g, state, new Rectangle2D.Double(x, top + 3, 16, 11));
        String word = state.word().replace('_', ' ');
        g.setPaint(Palette.INK);
        g.setFont(Fonts.of(11));
        g.drawString(word, (float) x + 20, (float) top + 13);
        x += 32 + g.getFontMetrics(Fonts.of(11)).stringWidth(word);
      }
    }
  }

  private static void swatch(Graphics2D g, State state, Rectangle2D box) {
    g.setPaint(Palette.state(state));
    g.fill(box);
    g.setPaint(new Color(0x777777));
    g.setStroke(new BasicStroke(0.5f));
    g.draw(box);
  }

  /** Room for a machine's bar, and under it for the names of its stops. */
  double barHeight(String machine) {
    return BAR
        + BAR_GAP
        + (of(machine).stream().anyMatch(bar -> !bar.stop().isEmpty()) ? NAMES : 0);
  }

  /** What a curve is of. */
  String name(Curve curve) {
    return switch (curve.of()) {
      case RATE, BIN -> wording.titles().machine(curve.name().split("\\.")[0]);
      case GATE, YARD -> wording.titles().crop(curve.name());
    };
  }

  /**
   * The line of a rate whose machine several lines begin with, which stands behind a dot; empty for
   * all others.
   */
  String line(Curve curve) {
    int dot = curve.name().indexOf('.');
    return dot < 0 ? "" : wording.titles().line(curve.name().substring(dot + 1));
  }

  private List<Day.Bar> of(String machine) {
    return day.bars().stream().filter(bar -> bar.machine().equals(machine)).toList();
  }

  void machine(Graphics2D g, String machine, double top) {
    g.setPaint(Palette.INK);
    endingAt(
        g, 12, Fonts.fitted(wording.titles().machine(machine), 12, LEFT - 12), LEFT - 6, top + 13);
    for (Day.Bar bar : joined(of(machine))) {
      if (bar.state() != State.UNUSED) {
        double left = x(bar.fromH());
        g.setPaint(Palette.state(bar.state()));
        g.fill(new Rectangle2D.Double(left, top + 2, Math.max(0.4, x(bar.toH()) - left), BAR));
      }
    }
    names(g, machine, top + 2 + BAR + NAMES - 2);
  }

  /** Bars too short to be seen one by one are left to their neighbour; a stop never is. */
  private List<Day.Bar> joined(List<Day.Bar> bars) {
    List<Day.Bar> all = new ArrayList<>();
    for (Day.Bar bar : bars) {
      Day.Bar last = all.isEmpty() ? null : all.get(all.size() - 1);
      boolean goesOn =
          last != null
              && (last.state() == bar.state() && last.stop().equals(bar.stop())
                  || x(bar.toH()) - x(bar.fromH()) < 0.4 && bar.stop().isEmpty());
      if (goesOn) {
        all.set(
            all.size() - 1,
            new Day.Bar(last.machine(), last.state(), last.stop(), last.fromH(), bar.toH()));
      } else {
        all.add(bar);
      }
    }
    return all;
  }

  /** Each stop's name under its beginning, as far as names do not meet; all are in the table. */
  private void names(Graphics2D g, String machine, double y) {
    Font font = Fonts.of(NAMES_PX);
    g.setFont(font);
    g.setPaint(Palette.INK);
    double free = LEFT;
    for (Day.Bar bar : of(machine)) {
      String said = wording.titles().stops(machine, bar.stop());
      double wide = g.getFontMetrics(font).stringWidth(said);
      double left = Math.min(x(bar.fromH()), ChartStyle.widthPx() - wide - 2);
      if (!bar.stop().isEmpty() && left >= free) {
        g.drawString(said, (float) left, (float) y);
        free = left + wide + 5;
      }
    }
  }
}
