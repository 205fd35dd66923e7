package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.simulation.activity.Feeding;
import hurdline.simulation.activity.Filling;
import hurdline.simulation.activity.ReplicationState;
import java.util.Arrays;

/**
 * Holds what came in against where it is now, by component and for water: on hand + weighed in + in
 * bins on the first day = left the line + lost in the yard or dried there + still in places,
 * trucks, tables, feeders and bins.
 */
final class Balance {
  private static final double ROUNDING = 1e-9;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final int[] component; // the yard's number of each component
  private final Feeding feeding;
  private final MaterialBooks material;
  private final IntakeBooks intake;
  private final double[] stillKg;
  private final double[] openedKg; // dry matter by component in all bins on the first day
  private double openedWaterKg;

  Balance(
      ReplicationState present,
      int[] component,
      Feeding feeding,
      MaterialBooks material,
      IntakeBooks intake) {
    this.present = present;
    this.component = component;
    this.feeding = feeding;
    this.material = material;
    this.intake = intake;
    layout = present.layout;
    stillKg = new double[layout.components];
    openedKg = new double[layout.components];
  }

  /** What lies in the bins as the horizon begins. */
  void open() {
    Arrays.fill(openedKg, 0);
    openedWaterKg = 0;
    for (int b = 0; b < layout.bins; b++) {
      openedWaterKg += present.network.waterKg(b);
      for (int c = 0; c < openedKg.length; c++) {
        openedKg[c] += present.network.dryKg(b, c);
      }
    }
  }

  /**
   * What was made of products with a store, or lay there on the first day, against what has left,
   * waits and is begun.
   *
   * @throws BalanceException if it differs by more than rounding
   */
  void checkStores(Filling filling, SoldMass sold) {
    for (int p = 0; p < layout.naming.products.count(); p++) {
      if (layout.stores.has(p)) {
        double madeKg =
            material.fitKg(p)
                + material.tooWetKg(p)
                + filling.goods.openedFitKg(p)
                + filling.goods.openedTooWetKg(p);
        double there = sold.fitKg(p) + sold.tooWetKg(p) + sold.purgeKg(p) + filling.heldKg(p);
        if (!(Math.abs(madeKg - there) <= ROUNDING * Math.max(1, madeKg))) {
          throw new BalanceException(
              "the balance of %s is broken in replication %d: %s kg were made, %s kg left or are there"
                  .formatted(layout.naming.products.name(p), present.replication(), madeKg, there));
        }
      }
    }
  }

  /**
   * The largest gap over all that came in.
   *
   * @throws BalanceException if it is more than rounding
   */
  double residual() {
    Arrays.fill(stillKg, 0);
    double still = 0;
    for (int l = 0; l < layout.lines; l++) {
      still += feeding.stock.stillHereKg(l, stillKg);
    }
    double worst = 0;
    String where = "";
    double stillDry = 0;
    for (int c = 0; c < layout.components; c++) {
      stillDry += stillKg[c];
      double gap = Math.abs(gapKg(c));
      if (!(gap <= worst)) {
        worst = gap;
        where = layout.naming.components.name(c);
      }
    }
    double gap = Math.abs(waterGapKg(still - stillDry));
    if (!(gap <= worst)) {
      worst = gap;
      where = "water";
    }
    return judge(worst, where);
  }

  private double judge(double worstKg, String where) {
    double takenInKg = openedWaterKg + Arrays.stream(openedKg).sum();
    for (int crop = 0; crop < layout.naming.crops.count(); crop++) {
      takenInKg += intake.onHand.kg(crop) + intake.weighedIn.kg(crop);
    }
    double residual = takenInKg > 0 ? worstKg / takenInKg : worstKg;
    if (!(residual <= ROUNDING)) {
      throw new BalanceException(
          "the balance of %s is broken in replication %d: %s kg of %s kg taken in"
              .formatted(where, present.replication(), worstKg, takenInKg));
    }
    return residual;
  }

  private double gapKg(int c) {
    int theirs = component[c];
    double gap = openedKg[c] + material.brokenKg[c] - material.leftComponentKg[c] - stillKg[c];
    for (int crop = 0; crop < layout.naming.crops.count(); crop++) {
      gap +=
          intake.onHand.componentDryKg(crop, theirs)
              + intake.weighedIn.componentDryKg(crop, theirs)
              - intake.lostInYard.componentDryKg(crop, theirs)
              - intake.inPlacesAtEnd.componentDryKg(crop, theirs)
              - intake.inTrucksAtEnd.componentDryKg(crop, theirs);
    }
    for (int b = 0; b < layout.bins; b++) {
      gap -= present.network.dryKg(b, c);
    }
    return gap;
  }

  private double waterGapKg(double stillWaterKg) {
    double gap = openedWaterKg - material.leftWaterKg - stillWaterKg;
    for (int crop = 0; crop < layout.naming.crops.count(); crop++) {
      gap +=
          intake.onHand.waterKg(crop)
              + intake.weighedIn.waterKg(crop)
              - intake.lostInYard.waterKg(crop)
              - intake.driedInYardKg(crop)
              - intake.inPlacesAtEnd.waterKg(crop)
              - intake.inTrucksAtEnd.waterKg(crop);
    }
    for (int b = 0; b < layout.bins; b++) {
      gap -= present.network.waterKg(b);
    }
    return gap;
  }
}
