package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.ScreenPlan;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * The screens that a line's mills run on in the long run: every choice of one screen a mill, with
 * its share of the mass.
 *
 * <p>A mill that works to orders has the shares that follow from its orders: each takes the hours
 * that its mass needs, and what is left of the season goes by the shares without an order.
 */
final class ScreenChoices {
  private final CapacityPlant plant;
  private final CompiledLines layout;
  private final Line line;
  private final int number;

  private record Choice(int[] screen, double share) {}

  ScreenChoices(CapacityPlant plant, Line line) {
    this.plant = plant;
    this.line = line;
    layout = plant.layout;
    number = layout.naming.lines.index(line.name());
  }

  List<LineLoads> choices() {
    return choices(-1, -1);
  }

  /**
   * With one screen always in one mill.
   *
   * @param mill −1 for none
   */
  List<LineLoads> choices(int mill, int screen) {
    List<Choice> choices = List.of(new Choice(new int[layout.machines], 1));
    for (Step step : line.steps()) {
      int m = layout.naming.machines.find(step.machine());
      if (m >= 0 && layout.machine[m] instanceof Machine.HammerMill hammer) {
        choices =
            spread(choices, m, m == mill ? only(hammer, screen) : shares(hammer, m, step, mill));
      }
    }
    return choices.stream()
        .map(one -> LineLoads.of(layout, plant.flow, number, one.share, one.screen))
        .toList();
  }

  private static List<Choice> spread(List<Choice> choices, int m, double[] shares) {
    List<Choice> more = new ArrayList<>();
    for (Choice choice : choices) {
      for (int s = 0; s < shares.length; s++) {
        if (shares[s] > 0) {
          int[] screen = choice.screen.clone();
          screen[m] = s;
          more.add(new Choice(screen, choice.share * shares[s]));
        }
      }
    }
    return more;
  }

  private static double[] only(Machine.HammerMill mill, int screen) {
    double[] shares = new double[mill.screens().size()];
    shares[screen] = 1;
    return shares;
  }

  /**
   * Of a second mill that works to orders the screen that is asked for first, so that none waits
   * for another.
   */
  private double[] shares(Machine.HammerMill mill, int m, Step step, int other) {
    ScreenPlan mix = ScreenPlan.of(layout.plant, mill, step);
    if (mix.byOrders()) {
      OrderBook book = new OrderBook(plant, line, m, step);
      return other < 0 ? byOrders(mill, mix, book) : only(mill, book.firstScreen());
    }
    return shares(mill, mix);
  }

  private static double[] shares(Machine.HammerMill mill, ScreenPlan mix) {
    double[] shares = new double[mill.screens().size()];
    double all = 0;
    for (int s = 0; s < shares.length; s++) {
      shares[s] = mix.share(s);
      all += shares[s];
    }
    for (int s = 0; s < shares.length; s++) {
      shares[s] /= all;
    }
    return shares;
  }

  private double[] byOrders(Machine.HammerMill mill, ScreenPlan mix, OrderBook book) {
    double[] fedKg = new double[mill.screens().size()];
    double leftS = plant.lineHours(number).lengthS();
    for (int s = 0; s < fedKg.length; s++) {
      fedKg[s] = book.fedForOrdersKg(s);
      leftS -= fedKg[s] > 0 ? fedKg[s] / book.kgPerS(s) : 0;
    }
    if (leftS > 0 && mix.hasShares()) {
      double secondsPerKg = 0;
      double[] then = shares(mill, mix);
      for (int s = 0; s < then.length; s++) {
        secondsPerKg += then[s] > 0 ? then[s] / book.kgPerS(s) : 0;
      }
      for (int s = 0; s < then.length; s++) {
        fedKg[s] += then[s] * leftS / secondsPerKg;
      }
    }
    double all = 0;
    for (double kg : fedKg) {
      all += kg;
    }
    if (!(all > 0 && all < Double.POSITIVE_INFINITY)) {
      return only(mill, book.firstScreen());
    }
    for (int s = 0; s < fedKg.length; s++) {
      fedKg[s] /= all;
    }
    return fedKg;
  }
}
