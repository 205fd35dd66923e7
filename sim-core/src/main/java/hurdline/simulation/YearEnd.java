package hurdline.simulation;

import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.random.RandomStreams;
import hurdline.simulation.activity.Feeding;
import hurdline.simulation.yard.Bales;
import hurdline.simulation.yard.CarriedOverStock;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.ArrayList;
import java.util.List;

/**
 * From one year to the next: gathers the crop that is left when a year ends, and opens another year
 * with it.
 *
 * <p>What lies on tables and in feeders goes back to the yard, in front, as when another line takes
 * the feeder. Bales weighed in but not unloaded come to lie in the yard; what is on the way
 * unweighed stands at the gate as the next year begins. Bales at fields stay there, and a field's
 * unbaled crop is baled with the field's next. A crop that neither fields nor loads bring is not
 * carried on: its stock on hand is all it has in a year, and is there anew in each.
 */
final class YearEnd {
  private final Haulage haulage;
  private final Bales bales;
  private final Stacking stacking;
  private final Hauling hauling;
  private final Feeding feeding;
  private final int lines;
  private final boolean[] isBrought; // by crop

  YearEnd(
      YardPlan yard,
      Haulage haulage,
      Bales bales,
      Stacking stacking,
      Hauling hauling,
      Feeding feeding,
      int lines) {
    this.haulage = haulage;
    this.bales = bales;
    this.stacking = stacking;
    this.hauling = hauling;
    this.feeding = feeding;
    this.lines = lines;
    isBrought = new boolean[yard.crops()];
    for (int crop = 0; crop < isBrought.length; crop++) {
      isBrought[crop] = haulage.delivery(crop).isPresent();
    }
  }

  /**
   * Bales left of crops that something brings, wherever they are, and those that unbaled crop would
   * still make.
   */
  int left() {
    int left = 0;
    for (int crop = 0; crop < isBrought.length; crop++) {
      left += isBrought[crop] ? hauling.leftOver(crop) + onTables(crop) : 0;
    }
    return left;
  }

  private int onTables(int crop) {
    int count = 0;
    for (int l = 0; l < lines; l++) {
      count += feeding.stock.onTableAndFeeder(l, crop);
    }
    return count;
  }

  /**
   * Clears tables and feeders; the year must have been told of already.
   *
   * @param demandW of the last months that a demand ratchet looks at, the latest last
   */
  CarriedOverStock gather(double endS, double[] demandW) {
    List<CarriedOverStock.Bale> inPlaces = new ArrayList<>();
    List<CarriedOverStock.Bale> inFront = new ArrayList<>();
    List<List<CarriedOverStock.Bale>> atGate = new ArrayList<>();
    feeding.clear();
    stacking.gather(inPlaces, inFront, endS);
    inPlaces.removeIf(bale -> !isBrought[bale.crop()]);
    inFront.removeIf(bale -> !isBrought[bale.crop()]);
    for (int carrier = 0; carrier < hauling.carriers.rows(); carrier++) {
      List<CarriedOverStock.Bale> cargo = new ArrayList<>();
      bales.told(hauling.carriers.cargo.first(carrier), Bales.none(), endS, cargo);
      if (hauling.carriers.weighedIn[carrier]) {
        inPlaces.addAll(cargo);
      } else if (!cargo.isEmpty()) {
        atGate.add(cargo);
      }
    }
    List<CarriedOverStock.Bale> atFields = new ArrayList<>();
    double[] unbaledKg = new double[haulage.fields()];
    for (int field = 0; field < unbaledKg.length; field++) {
      unbaledKg[field] = hauling.baling.leftKg(field);
      bales.told(hauling.fields.first(field), field, endS, atFields);
    }
    return new CarriedOverStock(inPlaces, inFront, atGate, atFields, unbaledKg, demandW);
  }

  /**
   * Puts all of it where it was, at time zero, in place of the yard's reset; books, fields and gate
   * are reset already.
   */
  void open(CarriedOverStock left, RandomStreams streams, int replication) {
    stacking.open(left, isBrought, streams, replication);
    left.atFields().forEach(bale -> hauling.fields.lies(bale.at(), bales.add(bale)));
    for (int field = 0; field < left.unbaledKg().length; field++) {
      hauling.standsAt(field, left.unbaledKg()[field]);
    }
    left.atGate().forEach(hauling::standsAtGate);
    hauling.tellPending();
  }
}
