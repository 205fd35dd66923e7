package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.compiled.Haulage;
import java.util.Arrays;

/** What lies baled at the fields, and which of it a truck that waits to be loaded has claimed. */
public final class HeldAtField {
  private final Haulage haulage;
  private final Baling baling;
  private final Bales bales;
  private final BaleList lying;
  private final int[] claimed;
  private final IntakeBooks books;

  HeldAtField(Haulage haulage, Baling baling, Bales bales, IntakeBooks books) {
    this.haulage = haulage;
    this.baling = baling;
    this.bales = bales;
    this.books = books;
    lying = new BaleList(bales, haulage.fields());
    claimed = new int[haulage.fields()];
  }

  /**
   * Time zero, for which the balers have been reset: books what each field was drawn to bear, all
   * of it unbaled.
   */
  void reset() {
    lying.reset();
    Arrays.fill(claimed, 0);
    for (int field = 0; field < haulage.fields(); field++) {
      books.drawn(haulage.field(field).crop(), baling.leftKg(field));
    }
  }

  /** A bale is made; tells at which field its baler makes the next. */
  int bale(int field, double nowS) {
    lies(field, baling.make(field, bales, nowS));
    return baling.goesOnTo(field);
  }

  /** A bale lies at the field from now on, behind the others. */
  public void lies(int field, int bale) {
    lying.append(field, bale);
    books.heldAtField(haulage.field(field).crop(), 1);
  }

  /**
   * The field that a free truck goes to: the one that became ready first, then by name, of those
   * with a truck's worth, or all in bales and some left; −1 if there is none.
   */
  int forTruck(int crop, int worth) {
    for (int at = haulage.firstField(crop); at < haulage.endField(crop); at++) {
      int field = baling.inTurn(at);
      if (forTruckAt(field, worth) > 0) {
        return field;
      }
    }
    return -1;
  }

  /** What a truck would get there; 0 where it would not go. */
  int forTruckAt(int field, int worth) {
    int there = lying.count(field) - claimed[field];
    return there >= worth ? worth : baling.done(field) ? there : 0;
  }

  /** Loads of the crop that trucks could fetch, {@code most} at most. */
  int loads(int crop, int worth, int most) {
    int loads = 0;
    for (int field = haulage.firstField(crop);
        field < haulage.endField(crop) && loads < most;
        field++) {
      int there = lying.count(field) - claimed[field];
      loads += there / worth + (baling.done(field) && there % worth > 0 ? 1 : 0);
    }
    return Math.min(loads, most);
  }

  void claim(int field, int count) {
    claimed[field] += count;
  }

  /** The claimed bales, first in first out, go on a truck. */
  void load(int field, int count, BaleList cargo, int truck) {
    claimed[field] -= count;
    for (int k = 0; k < count; k++) {
      cargo.append(truck, lying.takeFirst(field));
    }
    books.heldAtField(haulage.field(field).crop(), -count);
  }

  /** Whether bales lie at a field or are still to be made there. */
  boolean hasMore(int field) {
    return !baling.done(field) || lying.count(field) > 0;
  }

  /** First of the bales at a field, in the table's {@code next}. */
  public int first(int field) {
    return lying.first(field);
  }
}
