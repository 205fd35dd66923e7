package hurdline.simulation.activity;

import hurdline.account.IntakeBooks;
import hurdline.compiled.BinHours;
import hurdline.compiled.ChangeoverHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.PaidShift;
import hurdline.plant.Crew;
import hurdline.plant.Delivery;
import hurdline.plant.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whose hours are paid: shifts that were worked, changeovers, and receiving on days with an
 * arrival.
 *
 * <p>Which shifts there can be is settled with the roster; a replication only says which of them
 * were worked.
 */
public final class Crewing {
  private static final int OWN_HOURS = -1;
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Haulage haulage;
  private final Rostering rostering;
  private final IntakeBooks intake;
  private final List<Hired> reasons; // in order of their start
  private final Hired[][] ofCampaign; // [campaign][shift]
  private final boolean[] taken; // by Hired.number
  private final int[] crewWeek; // by Hired.crew, the week that it is in
  private final double[] crewWorkedS; // likewise, what it has worked in that week
  private final double[] limitS; // [line]
  private final int[] receivers; // [crop] hands

  /**
   * A shift with one reason to work it.
   *
   * @param number the same for the same shift
   * @param crew the same for the same shift of the calendar on the same line
   * @param campaign the reason, with the place of the shift in it; {@link #OWN_HOURS} where it is
   *     always worked
   */
  private record Hired(
      PaidShift shift,
      int number,
      int crew,
      int line,
      int hands,
      int week,
      int campaign,
      int place) {
    double lengthS() {
      return shift.toS() - shift.fromS();
    }
  }

  public Crewing(
      ReplicationState present, Haulage haulage, Rostering rostering, IntakeBooks intake) {
    this.present = present;
    this.haulage = haulage;
    this.rostering = rostering;
    this.intake = intake;
    layout = present.layout;
    Map<PaidShift, Integer> numbers = new HashMap<>();
    Map<String, Integer> crews = new HashMap<>();
    reasons = new ArrayList<>();
    ofCampaign = new Hired[rostering.campaigns()][];
    for (int c = 0; c < ofCampaign.length; c++) {
      List<PaidShift> shifts = rostering.campaign(c).shifts();
      ofCampaign[c] = new Hired[shifts.size()];
      for (int k = 0; k < shifts.size(); k++) {
        ofCampaign[c][k] = hired(shifts.get(k), numbers, crews, c, k);
      }
      reasons.addAll(Arrays.asList(ofCampaign[c]));
    }
    for (BinHours own : present.roster.ownHours()) {
      own.shifts().forEach(shift -> reasons.add(hired(shift, numbers, crews, OWN_HOURS, 0)));
    }
    reasons.sort(Comparator.comparingDouble(hired -> hired.shift().fromS()));
    taken = new boolean[numbers.size()];
    crewWeek = new int[crews.size()];
    crewWorkedS = new double[crews.size()];
    limitS =
        IntStream.range(0, layout.lines)
            .mapToObj(layout.naming.lines::name)
            .mapToDouble(line -> overtime(line).map(Money.Overtime::afterS).orElse(NO_LIMIT))
            .toArray();
    receivers =
        IntStream.range(0, layout.naming.crops.count())
            .map(crop -> haulage.delivery(crop).map(Delivery::hands).orElse(0))
            .toArray();
  }

  private Hired hired(
      PaidShift shift,
      Map<PaidShift, Integer> numbers,
      Map<String, Integer> crews,
      int campaign,
      int place) {
    return new Hired(
        shift,
        numbered(numbers, shift),
        numbered(crews, shift.line() + "." + shift.shift()),
        layout.naming.lines.index(shift.line()),
        hands(shift),
        present.roster.weeks().at(present.roster.midnightS(shift.day())),
        campaign,
        place);
  }

  private Optional<Money.Overtime> overtime(String line) {
    return layout.plant.money().flatMap(Money::overtime).filter(rule -> rule.isFor(line));
  }

  private static <T> int numbered(Map<T, Integer> numbers, T what) {
    return numbers.computeIfAbsent(what, first -> numbers.size());
  }

  private int hands(PaidShift shift) {
    return layout.plant.crews().stream()
        .filter(c -> c.line().equals(shift.line()) && c.shift().equals(shift.shift()))
        .mapToInt(Crew::hands)
        .sum();
  }

  /** Told of hands that are paid for a span, and what of it is beyond their week's usual hours. */
  public interface Paid {
    void hands(int line, double handSeconds, double overtimeHandSeconds, double fromS);
  }

  /** Shifts that were worked, in order of their start, a shift worked for two reasons once. */
  public void shifts(Paid paid) {
    Arrays.fill(taken, false);
    Arrays.fill(crewWeek, -1);
    for (Hired one : reasons) {
      if (isWorked(one) && !taken[one.number()]) {
        taken[one.number()] = true;
        double lengthS = one.lengthS();
        double overS = beyondLimitS(one, lengthS);
        int hands = there(one);
        paid.hands(one.line(), hands * lengthS, hands * overS, one.shift().fromS());
      }
    }
  }

  /** Hands that came to a shift. */
  private int there(Hired one) {
    return one.campaign() == OWN_HOURS
        ? one.hands()
        : rostering.attendance().there(one.campaign(), one.place(), one.hands());
  }

  /** Hand-seconds of those who did not come to shifts of a line that were worked. */
  public double absentS(int line) {
    double sum = 0;
    for (Hired one : reasons) {
      sum += one.line() == line && isWorked(one) ? (one.hands() - there(one)) * one.lengthS() : 0;
    }
    return sum;
  }

  /** Seconds of shifts in which a line was not run since too few came. */
  public double shortS(int line) {
    double sum = 0;
    for (Hired one : reasons) {
      boolean isShort =
          one.line() == line
              && one.campaign() != OWN_HOURS
              && rostering.attendance().isShort(one.campaign(), one.place());
      sum += isShort ? one.lengthS() : 0;
    }
    return sum;
  }

  private boolean isWorked(Hired one) {
    return one.campaign() == OWN_HOURS || rostering.isWorked(one.campaign(), one.place());
  }

  /** What of a crew's next shift lies beyond its usual hours of the week. */
  private double beyondLimitS(Hired one, double lengthS) {
    int crew = one.crew();
    crewWorkedS[crew] = lengthS + (one.week() == crewWeek[crew] ? crewWorkedS[crew] : 0);
    crewWeek[crew] = one.week();
    return Math.max(0, Math.min(lengthS, crewWorkedS[crew] - limitS[one.line()]));
  }

  /** Hand-seconds of shifts of a line that were not worked because the yard was empty. */
  public double sentHomeS(int line) {
    Arrays.fill(taken, false);
    for (Hired one : reasons) {
      taken[one.number()] |= isWorked(one);
    }
    double sum = 0;
    for (int c = 0; c < ofCampaign.length; c++) {
      for (int k = 0; k < ofCampaign[c].length && rostering.lineOf(c) == line; k++) {
        Hired one = ofCampaign[c][k];
        boolean home = rostering.isSentHome(c, k) && !taken[one.number()];
        sum += home ? one.hands() * one.lengthS() : 0;
      }
    }
    return sum;
  }

  /** What is paid after a shift: the time of one hand; none where overtime says nothing. */
  public double afterShiftS(int line, int month) {
    return limitS[line] < NO_LIMIT ? present.afterShift.seconds(line, month) : 0;
  }

  /** Changeovers, told of the line before each. */
  public void changeovers(Paid paid) {
    for (ChangeoverHours changeover : present.roster.changeovers()) {
      paid.hands(rostering.lineOf(changeover.before()), changeover.paidS(), 0, changeover.fromS());
    }
  }

  /** Hand-seconds of receiving a crop on a day; 0 where nothing arrived. */
  public double receivingS(int crop, int day) {
    return receivers[crop] > 0 && intake.trips.arrivedOn(crop, day)
        ? receivers[crop] * haulage.receivingS(crop, day)
        : 0;
  }
}
