package hurdline.work;

import hurdline.line.Haulage;
import hurdline.line.YardPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * From one year to the next: gathers the crop that is left when a year ends, and opens another year with it.
 *
 * <p>What lies on tables and in feeders goes back to the yard, in front, as when another line takes the feeder. Bales weighed in
 * but not unloaded come to lie in the yard; what is on the way unweighed stands at the gate as the next year begins. Bales at
 * fields stay there, and a field's unbaled crop is baled with the field's next.
 */
final class YearEnd {
  private final YardPlan yard;
  private final Haulage haulage;
  private final Bales bales;
  private final Stacking stacking;
  private final Hauling hauling;
  private final Feeding feeding;
  private final int lines;

  YearEnd(
      YardPlan yard, Haulage haulage, Bales bales, Stacking stacking, Hauling hauling, Feeding feeding, int lines) {
    this.yard = yard;
    this.haulage = haulage;
    this.bales = bales;
    this.stacking = stacking;
    this.hauling = hauling;
    this.feeding = feeding;
    this.lines = lines;
  }

  /** Bales of all crops left, wherever they are, and those that unbaled crop would still make. */
  int left() {
    int left = 0;
    for (int crop = 0; crop < yard.crops(); crop++) {
      left += hauling.leftOver(crop);
    }
    for (int l = 0; l < lines; l++) {
      left += feeding.onTableAndFeeder(l);
    }
    return left;
  }

  /** Clears tables and feeders; the year must have been told of already. */
  LeftOver gather(double endS) {
    List<LeftOver.Bale> inPlaces = new ArrayList<>();
    List<LeftOver.Bale> inFront = new ArrayList<>();
    List<List<LeftOver.Bale>> atGate = new ArrayList<>();
    feeding.clear();
    stacking.gather(inPlaces, inFront, endS);
    for (int carrier = 0; carrier < hauling.carriers.rows(); carrier++) {
      List<LeftOver.Bale> cargo = new ArrayList<>();
      int first = hauling.carriers.cargo.first(carrier);
      for (int bale = first; bale != Bales.NONE; bale = bales.next[bale]) {
        cargo.add(bales.told(bale, Bales.NONE, endS));
      }
      if (hauling.carriers.weighedIn[carrier]) {
        inPlaces.addAll(cargo);
      } else if (!cargo.isEmpty()) {
        atGate.add(cargo);
      }
    }
    List<LeftOver.Bale> atFields = new ArrayList<>();
    double[] unbaledKg = new double[haulage.fields()];
    for (int field = 0; field < unbaledKg.length; field++) {
      unbaledKg[field] = hauling.baling.leftKg(field);
      for (int bale = hauling.fields.first(field); bale != Bales.NONE; bale = bales.next[bale]) {
        atFields.add(bales.told(bale, field, endS));
      }
    }
    return new LeftOver(inPlaces, inFront, atGate, atFields, unbaledKg);
  }

  /** Puts all of it where it was, at time zero; the yard must be empty, fields and gate reset. */
  void open(LeftOver left) {
    bales.reset();
    stacking.open(left);
    left.atFields().forEach(bale -> hauling.fields.lies(bale.at(), bales.add(bale)));
    for (int field = 0; field < left.unbaledKg().length; field++) {
      hauling.standsAt(field, left.unbaledKg()[field]);
    }
    left.atGate().forEach(hauling::standsAtGate);
    hauling.tellPending();
  }
}
