package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.plant.LotAttribute;
import java.util.Arrays;

/**
 * What bales lose before they lie in a place: the field's loss from baling to the end of the first
 * weighing, then that of the place they will go to. Loads that come by themselves lose nothing on
 * the way.
 */
public final class Weighing {
  private static final double[] NO_SHARES = {};

  private final YardPlan yard;
  private final Haulage haulage;
  private final Bales bales;
  private final Arrivals carriers;
  private final HeldAtField fields;
  private final Stacking stacking;
  private final IntakeBooks books;
  private final double[] meanAttribute; // of the load looked at last
  private double meanMoisture;

  Weighing(
      YardPlan yard,
      Haulage haulage,
      Bales bales,
      Arrivals carriers,
      HeldAtField fields,
      Stacking stacking,
      IntakeBooks books) {
    this.yard = yard;
    this.haulage = haulage;
    this.bales = bales;
    this.carriers = carriers;
    this.fields = fields;
    this.stacking = stacking;
    this.books = books;
    meanAttribute = new double[yard.attributes().size()];
  }

  /** All that is on the carrier counts as weighed in now. */
  void weighIn(int carrier, double nowS) {
    carriers.weighedIn[carrier] = true;
    if (carriers.isTruck(carrier)) {
      books.loads.begin(carriers.crop[carrier], carriers.field[carrier], nowS);
    } else {
      books.loads.begin(carriers.crop[carrier], nowS);
    }
    carriers.ticket[carrier] = books.loads.last();
    double unpaid = 1 - factor(carrier, nowS);
    for (int bale = carriers.cargo.first(carrier); bale != Bales.none(); bale = bales.next[bale]) {
      shrinkOutside(carrier, bale, nowS);
      bales.unpaid[bale] = unpaid;
      stacking.weighIn(bale, nowS);
      settle(carrier, bale);
      books.loads.add(bales.massKg[bale], bales.moisture[bale], unpaid, bales.areaM2[bale]);
    }
  }

  /** Books by field what an advance is taken off. */
  private void settle(int carrier, int bale) {
    if (carriers.isTruck(carrier) && haulage.terms().hasAdvance(carriers.crop[carrier])) {
      books.ofFields.add(
          carriers.field[carrier], bales.massKg[bale], bales.moisture[bale], NO_SHARES, 0);
      stacking.pay(bale, carriers.field[carrier], books.ofFields);
    }
  }

  /** Times its price the load is paid. */
  private double factor(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    if (!haulage.terms().isGraded(crop)) {
      return 1;
    }
    sample(carrier, nowS);
    return haulage.terms().factor(crop, meanMoisture, meanAttribute);
  }

  boolean isAccepted(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    if (!haulage.terms().isLimited(crop)) {
      return true;
    }
    sample(carrier, nowS);
    return haulage.terms().accepts(crop, meanMoisture, meanAttribute);
  }

  /** Takes the means of what is on the carrier, by as-is mass. */
  private void sample(int carrier, double nowS) {
    double kg = 0;
    meanMoisture = 0;
    Arrays.fill(meanAttribute, 0);
    for (int bale = carriers.cargo.first(carrier); bale != Bales.none(); bale = bales.next[bale]) {
      shrinkOutside(carrier, bale, nowS);
      kg += bales.massKg[bale];
      meanMoisture += bales.massKg[bale] * bales.moisture[bale];
      for (int a = 0; a < meanAttribute.length; a++) {
        double value = bales.attribute[bale * meanAttribute.length + a];
        meanAttribute[a] += LotAttribute.brings(bales.massKg[bale], value);
      }
    }
    meanMoisture /= kg;
    for (int a = 0; a < meanAttribute.length; a++) {
      meanAttribute[a] /= kg;
    }
  }

  /** What is on the carrier was weighed and is sent away. */
  void reject(int carrier, double nowS) {
    books.rejected(carriers.crop[carrier], carriers.cargo.count(carrier));
    for (int bale = carriers.cargo.first(carrier); bale != Bales.none(); bale = bales.next[bale]) {
      shrinkOutside(carrier, bale, nowS);
      books.rejected.add(
          bales.crop[bale],
          bales.massKg[bale],
          bales.moisture[bale],
          bales.dryShare,
          bale * bales.components);
    }
    sendAway(carrier, nowS);
  }

  /** All that is on the carrier is gone for good, with what it lost until now. */
  void sendAway(int carrier, double nowS) {
    while (carriers.cargo.count(carrier) > 0) {
      int bale = carriers.cargo.takeFirst(carrier);
      shrinkOutside(carrier, bale, nowS);
      bales.free(bale);
    }
  }

  private void shrinkOutside(int carrier, int bale, double nowS) {
    if (carriers.isTruck(carrier)) {
      shrinkAtField(bale, nowS);
    }
  }

  private void shrinkAtField(int bale, double nowS) {
    double lost = bales.shrink(bale, yard.fieldLossPerS(), nowS);
    if (lost > 0) {
      books.lostAtField.add(
          bales.crop[bale], lost, bales.moisture[bale], bales.dryShare, bale * bales.components);
    }
  }

  /**
   * At the end of the horizon: losses up to now at fields and on carriers, and what is weighed in
   * but not unloaded.
   */
  void finish(double endS) {
    bookOpenFields();
    for (int field = 0; field < haulage.fields(); field++) {
      for (int bale = fields.first(field); bale != Bales.none(); bale = bales.next[bale]) {
        shrinkAtField(bale, endS);
      }
    }
    for (int carrier = 0; carrier < carriers.rows(); carrier++) {
      for (int bale = carriers.cargo.first(carrier);
          bale != Bales.none();
          bale = bales.next[bale]) {
        finish(carrier, bale, endS);
      }
    }
  }

  /** What is weighed in and not unloaded at this instant, at the mass that was weighed. */
  public void bookWeighedIn() {
    bookOpenFields();
    for (int carrier = 0; carrier < carriers.rows(); carrier++) {
      for (int bale = carriers.cargo.first(carrier);
          carriers.weighedIn[carrier] && bale != Bales.none();
          bale = bales.next[bale]) {
        bookInTruck(bale);
      }
    }
  }

  private void bookOpenFields() {
    for (int field = 0; field < haulage.fields(); field++) {
      books.isOpen(field, fields.hasMore(field));
    }
    for (int carrier = 0; carrier < carriers.rows(); carrier++) {
      if (carriers.isTruck(carrier)
          && !carriers.weighedIn[carrier]
          && carriers.cargo.count(carrier) > 0) {
        books.isOpen(carriers.field[carrier], true);
      }
    }
  }

  private void bookInTruck(int bale) {
    books.inTrucksAtEnd.add(
        bales.crop[bale],
        bales.massKg[bale],
        bales.moisture[bale],
        bales.dryShare,
        bale * bales.components);
    stacking.pay(bale, books.inTrucksAtEnd);
  }

  private void finish(int carrier, int bale, double endS) {
    if (!carriers.weighedIn[carrier]) {
      shrinkOutside(carrier, bale, endS);
      return;
    }
    int crop = bales.crop[bale];
    stacking.shrink(bale, stacking.takePlace(crop), endS);
    bookInTruck(bale);
  }
}
