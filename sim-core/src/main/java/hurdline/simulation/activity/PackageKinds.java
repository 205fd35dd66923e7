package hurdline.simulation.activity;

import hurdline.plant.Packaging;
import java.util.ArrayList;
import java.util.List;

/** Packages of each product, numbered in the order of the products; most have one. */
final class PackageKinds {
  private record Kind(int product, Packaging packaging) {}

  private final List<Kind> kinds = new ArrayList<>();
  private final int[] kind; // [machine * products + product]

  PackageKinds(Fillers fillers, int products) {
    kind = new int[fillers.packaging.length];
    for (int p = 0; p < products; p++) {
      for (int m : fillers.packers) {
        int at = m * products + p;
        if (fillers.packaging[at] != null) {
          kind[at] = number(new Kind(p, fillers.packaging[at]));
        }
      }
    }
  }

  private int number(Kind one) {
    if (!kinds.contains(one)) {
      kinds.add(one);
    }
    return kinds.indexOf(one);
  }

  int count() {
    return kinds.size();
  }

  /** The kind that a machine fills with a product. */
  int of(int machineAndProduct) {
    return kind[machineAndProduct];
  }

  Packaging packaging(int kind) {
    return kinds.get(kind).packaging();
  }
}
