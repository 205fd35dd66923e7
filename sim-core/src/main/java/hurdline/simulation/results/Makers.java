package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;

/**
 * Which lines make which products: those that their steps lead to, on whatever screen of a mill.
 */
final class Makers {
  private final boolean[][] makes; // [line][product]
  private final int[] first; // [product]

  /**
   * @param fromMill [mill][screen] product, −1 for none
   */
  Makers(CompiledLines layout, int[][] fromMill) {
    int products = layout.naming.products.count();
    makes = new boolean[layout.lines][products];
    first = new int[products];
    boolean[] found = new boolean[products];
    for (Stretch stretch : layout.stretch) {
      for (int s = 0; s < stretch.sinks; s++) {
        switch (stretch.sinkKind[s]) {
          case PILED, PACKED -> add(stretch.line, stretch.sinkTarget[s], found);
          case PACKED_FROM_MILL -> {
            for (int product : fromMill[stretch.sinkTarget[s]]) {
              add(stretch.line, product, found);
            }
          }
          case WASTE, DUST, BIN -> {}
        }
      }
    }
  }

  private void add(int line, int product, boolean[] found) {
    if (product >= 0) {
      makes[line][product] = true;
      if (!found[product]) {
        found[product] = true;
        first[product] = line;
      }
    }
  }

  boolean makes(int line, int product) {
    return makes[line][product];
  }

  /** The line whose steps lead to a product, the first in order of heads; line 0 if none does. */
  int first(int product) {
    return first[product];
  }
}
