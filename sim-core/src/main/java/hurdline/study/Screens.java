package hurdline.study;

import hurdline.line.Layout;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Product;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The screens that a line's mills run on in the long run: every choice of one screen a mill, with its
 * share of the mass.
 */
final class Screens {
  private final Layout layout;

  /**
   * One choice.
   *
   * @param screen [machine] the screen that is in
   * @param share of the mass, above 0; all choices together 1
   */
  record Choice(int[] screen, double share) {}

  Screens(Layout layout) {
    this.layout = layout;
  }

  List<Choice> of(Line line) {
    List<Choice> choices = List.of(new Choice(new int[layout.machines], 1));
    for (Step step : line.steps()) {
      int m = layout.naming.machines.find(step.machine());
      if (m >= 0 && layout.machine[m] instanceof Machine.HammerMill mill) {
        choices = spread(choices, m, shares(mill, step));
      }
    }
    return choices;
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

  private double[] shares(Machine.HammerMill mill, Step step) {
    double[] shares = new double[mill.screens().size()];
    if (step.mix() instanceof Step.Shares mix) {
      double all = mix.shares().stream().mapToDouble(Step.MixShare::share).sum();
      mix.shares().forEach(one -> shares[index(mill, one.screen())] += one.share() / all);
    } else if (step.mix() instanceof Step.ByOrders) {
      shares[firstOrdered(mill, step)] = 1;
    } else {
      shares[0] = 1;
    }
    return shares;
  }

  private static int index(Machine.HammerMill mill, String screen) {
    for (int s = 0; s < mill.screens().size(); s++) {
      if (mill.screens().get(s).name().equals(screen)) {
        return s;
      }
    }
    throw new IllegalArgumentException(mill.name() + " has no screen \"" + screen + "\"");
  }

  /** The screen of the order that is due first; the first screen where nothing is ordered. */
  private int firstOrdered(Machine.HammerMill mill, Step step) {
    record Due(Product.Order order, String screen) {}
    List<Due> due = new ArrayList<>();
    for (Map.Entry<String, String> made : step.makes().entrySet()) {
      layout.plant.products().stream()
          .filter(product -> product.name().equals(made.getValue()))
          .flatMap(product -> product.orders().stream())
          .forEach(order -> due.add(new Due(order, made.getKey())));
    }
    return due.stream()
        .min(Comparator.comparing((Due one) -> one.order.due()))
        .map(one -> index(mill, one.screen))
        .orElse(0);
  }
}
