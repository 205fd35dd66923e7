package hurdline.work;

import hurdline.account.IntakeBooks;
import hurdline.line.BinHours;
import hurdline.line.ChangeoverHours;
import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.PaidShift;
import hurdline.plant.Crew;
import java.util.LinkedHashSet;
import java.util.Set;

/** Whose hours are paid: shifts that were worked, changeovers, and receiving on days with an arrival. */
final class Crewing {
  private final Present present;
  private final Layout layout;
  private final Haulage haulage;
  private final Rostering rostering;
  private final IntakeBooks intake;

  Crewing(Present present, Haulage haulage, Rostering rostering, IntakeBooks intake) {
    this.present = present;
    this.haulage = haulage;
    this.rostering = rostering;
    this.intake = intake;
    layout = present.layout;
  }

  /** Told of hands that are paid for a span. */
  interface Paid {
    void hands(int line, double handSeconds, double fromS);
  }

  /** Shifts that were worked, a shift worked for two reasons once. */
  void shifts(Paid paid) {
    for (PaidShift shift : worked()) {
      int line = layout.naming.lines.index(shift.line());
      paid.hands(line, hands(shift) * (shift.toS() - shift.fromS()), shift.fromS());
    }
  }

  /** Changeovers, told of the line before each. */
  void changeovers(Paid paid) {
    for (ChangeoverHours changeover : present.roster.changeovers()) {
      paid.hands(rostering.lineOf(changeover.before()), changeover.paidS(), changeover.fromS());
    }
  }

  /** Hand-seconds of receiving a crop on a day; 0 where nothing arrived. */
  double receivingS(int crop, int day) {
    int hands = haulage.delivery(crop).map(d -> d.hands()).orElse(0);
    return hands > 0 && intake.trips.arrivedOn(crop, day)
        ? hands * haulage.receivingS(crop, day)
        : 0;
  }

  private Set<PaidShift> worked() {
    Set<PaidShift> worked = new LinkedHashSet<>();
    for (int c = 0; c < rostering.campaigns(); c++) {
      for (PaidShift shift : rostering.campaign(c).shifts()) {
        if (rostering.isWorked(c, shift)) {
          worked.add(shift);
        }
      }
    }
    for (BinHours own : present.roster.ownHours()) {
      worked.addAll(own.shifts());
    }
    return worked;
  }

  private int hands(PaidShift shift) {
    return layout.plant.crews().stream()
        .filter(c -> c.line().equals(shift.line()) && c.shift().equals(shift.shift()))
        .mapToInt(Crew::hands)
        .sum();
  }
}
