package hurdline.work;

import hurdline.account.IntakeBooks;
import hurdline.line.BinHours;
import hurdline.line.ChangeoverHours;
import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.PaidShift;
import hurdline.plant.Crew;
import hurdline.plant.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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

  /** Told of hands that are paid for a span, and what of it is beyond their week's usual hours. */
  interface Paid {
    void hands(int line, double handSeconds, double overtimeHandSeconds, double fromS);
  }

  /** Shifts that were worked, in order of their start, a shift worked for two reasons once. */
  void shifts(Paid paid) {
    double limitS =
        layout.plant.money().flatMap(Money::overtime).map(Money.Overtime::afterS)
            .orElse(Double.POSITIVE_INFINITY);
    Map<String, CrewWeek> crews = new HashMap<>();
    List<PaidShift> inOrder = new ArrayList<>(worked());
    inOrder.sort(Comparator.comparingDouble(PaidShift::fromS));
    for (PaidShift shift : inOrder) {
      double lengthS = shift.toS() - shift.fromS();
      int week = present.roster.weeks().at(present.roster.midnightS(shift.day()));
      CrewWeek crew =
          crews.computeIfAbsent(shift.line() + "." + shift.shift(), name -> new CrewWeek());
      double overS = crew.beyond(week, lengthS, limitS);
      int hands = hands(shift);
      paid.hands(
          layout.naming.lines.index(shift.line()), hands * lengthS, hands * overS, shift.fromS());
    }
  }

  /** What a crew has worked in the week that it is in. */
  private static final class CrewWeek {
    private int week = -1;
    private double workedS;

    /** Adds a shift; what of it lies beyond the limit. */
    double beyond(int of, double lengthS, double limitS) {
      workedS = of == week ? workedS : 0;
      week = of;
      workedS += lengthS;
      return Math.max(0, Math.min(lengthS, workedS - limitS));
    }
  }

  /** Hand-seconds of shifts of a line that were not worked because the yard was empty. */
  double sentHomeS(int line) {
    Set<PaidShift> worked = worked();
    double sum = 0;
    for (int c = 0; c < rostering.campaigns(); c++) {
      List<PaidShift> shifts = rostering.campaign(c).shifts();
      for (int k = 0; k < shifts.size() && rostering.lineOf(c) == line; k++) {
        PaidShift shift = shifts.get(k);
        boolean home = rostering.isSentHome(c, k) && !worked.contains(shift);
        sum += home ? hands(shift) * (shift.toS() - shift.fromS()) : 0;
      }
    }
    return sum;
  }

  /** What is paid after a shift: the time of one hand; none where overtime says nothing. */
  double afterShiftS(int line, int month) {
    boolean paid = layout.plant.money().flatMap(Money::overtime).isPresent();
    return paid ? present.afterShift.seconds(line, month) : 0;
  }

  /** Changeovers, told of the line before each. */
  void changeovers(Paid paid) {
    for (ChangeoverHours changeover : present.roster.changeovers()) {
      paid.hands(rostering.lineOf(changeover.before()), changeover.paidS(), 0, changeover.fromS());
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
      List<PaidShift> shifts = rostering.campaign(c).shifts();
      for (int k = 0; k < shifts.size(); k++) {
        if (rostering.isWorked(c, k)) {
          worked.add(shifts.get(k));
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
