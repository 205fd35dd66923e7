package hurdline.compiled;

import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Step;
import java.util.Arrays;
import java.util.List;

/** What each screen of each mill makes: {@link CompiledLines}. */
final class MillProducts {
  private MillProducts() {}

  static int[][] of(CompiledLines layout) {
    int[][] makes = new int[layout.machines][];
    for (int m = 0; m < layout.machines; m++) {
      if (layout.machine[m] instanceof Machine.HammerMill mill) {
        makes[m] = of(layout, mill);
      }
    }
    return makes;
  }

  private static int[] of(CompiledLines layout, Machine.HammerMill mill) {
    List<Machine.Screen> screens = mill.screens();
    int[] makes = new int[screens.size()];
    Arrays.fill(makes, -1);
    for (Line line : layout.plant.lines()) {
      for (Step step : line.steps()) {
        for (int s = 0; s < makes.length && step.machine().equals(mill.name()); s++) {
          String product = step.makes().get(screens.get(s).name());
          if (product != null && makes[s] < 0) {
            makes[s] = layout.naming.products.index(product);
          }
        }
      }
    }
    return makes;
  }
}
