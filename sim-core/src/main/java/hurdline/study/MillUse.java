package hurdline.study;

import hurdline.answer.MillRow;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the mills of a plant are to do on each screen. */
public final class MillUse {
  private static final double TONNE_KG = 1000;

  private MillUse() {}

  /** Mills that some line of the season uses, in the file's order. */
  public static List<MillRow> rows(String option, Plant plant, List<Line> lines) {
    List<MillRow> rows = new ArrayList<>();
    for (Machine machine : plant.machines()) {
      Optional<Step> step =
          lines.stream()
              .flatMap(line -> line.steps().stream())
              .filter(s -> s.machine().equals(machine.name()))
              .findFirst();
      if (machine instanceof Machine.HammerMill mill && step.isPresent()) {
        for (int s = 0; s < mill.screens().size(); s++) {
          String screen = mill.screens().get(s).name();
          String product = step.get().makes().getOrDefault(screen, "");
          rows.add(
              new MillRow(
                  option,
                  mill.name(),
                  screen,
                  product,
                  share(step.get().mix(), screen, s == 0),
                  ordered(plant, product)));
        }
      }
    }
    return rows;
  }

  private static double share(Step.Mix mix, String screen, boolean first) {
    if (mix instanceof Step.Shares shares) {
      return shares.shares().stream()
          .filter(one -> one.screen().equals(screen))
          .mapToDouble(Step.MixShare::share)
          .sum();
    }
    return mix instanceof Step.ByOrders ? Double.NaN : first ? 1 : 0;
  }

  private static double ordered(Plant plant, String name) {
    return plant.products().stream()
            .filter(product -> product.name().equals(name))
            .flatMap(product -> product.orders().stream())
            .mapToDouble(Product.Order::massKg)
            .sum()
        / TONNE_KG;
  }
}
