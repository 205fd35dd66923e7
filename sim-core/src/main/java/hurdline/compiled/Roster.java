package hurdline.compiled;

import hurdline.plant.Calendar;
import hurdline.plant.Plant;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Who works when: the plant's calendar, season, own hours and receiving hours in seconds of the
 * horizon.
 *
 * <p>Made once from a plant whose rules hold; all that the horizon does not reach is cut off. It
 * knows what the dates say and not what happens: a campaign may end before its last date because
 * its crop has run out, and that is for the replication to find. Lists are in the season's or the
 * file's order.
 */
public final class Roster {
  private final RosterBasis basis;
  private final Horizon horizon;
  private final List<CampaignHours> campaigns;
  private final List<ChangeoverHours> changeovers;
  private final List<BinHours> ownHours;
  private final Map<String, TimeWindows> receiving = new HashMap<>();
  private final Map<String, ReceivingDays> receivingDays = new HashMap<>();
  private final Map<String, TimeWindows> loads = new HashMap<>();
  private final Periods months;
  private final Periods weeks;
  private final Periods years;
  private final MeterSchedule meter;

  private Roster(RosterBasis basis) {
    this.basis = basis;
    Calendar calendar = basis.calendar();
    horizon = Horizon.of(calendar);
    ShiftPlan shifts = new ShiftPlan(horizon, calendar.shifts());
    SeasonPlan season = new SeasonPlan(horizon, shifts, basis.season());
    campaigns = List.copyOf(season.campaigns());
    changeovers = List.copyOf(season.changeovers());
    OwnHoursPlan own = new OwnHoursPlan(horizon, shifts, basis.campaigns(), season);
    ownHours = basis.own().stream().map(own::of).toList();
    ReceivingPlan plan = new ReceivingPlan(horizon);
    for (RosterBasis.Receiving delivery : basis.deliveries()) {
      TimeWindows open = plan.receiving(delivery);
      receiving.put(delivery.crop(), open);
      receivingDays.put(delivery.crop(), ReceivingDays.of(horizon, delivery.hours(), open));
      loads.put(delivery.crop(), plan.loads(delivery));
    }
    months = periods(date -> date.getDayOfMonth() == 1);
    weeks = periods(date -> date.getDayOfWeek() == DayOfWeek.MONDAY);
    years = periods(Set.copyOf(calendar.years())::contains);
    meter = MeterSchedule.of(basis.periods(), basis.baseLoads(), horizon);
  }

  public static Roster of(Plant plant) {
    return new Roster(RosterBasis.of(plant));
  }

  /** The roster of a changed plant: this one where nothing that it is made of has changed. */
  public Roster changedTo(Plant plant) {
    RosterBasis now = RosterBasis.of(plant);
    return now.equals(basis) ? this : new Roster(now);
  }

  private Periods periods(Predicate<LocalDate> startsOne) {
    int[] firstDays =
        IntStream.range(0, horizon.days())
            .filter(day -> day == 0 || startsOne.test(horizon.date(day)))
            .toArray();
    return new Periods(horizon, firstDays);
  }

  /** Length of the horizon, from 00:00 of its first date to 24:00 of its last. */
  public double horizonS() {
    return horizon.lengthS();
  }

  public int days() {
    return horizon.days();
  }

  /** Midnight at the start of a day; that of {@link #days} is the end of the horizon. */
  public double midnightS(int day) {
    return day * Horizon.DAY_S;
  }

  /** The day that holds the instant; the end of the horizon belongs to the last. */
  public int dayAt(double atS) {
    return Math.min((int) (atS / Horizon.DAY_S), horizon.days() - 1);
  }

  public LocalDate date(int day) {
    return horizon.date(day);
  }

  /** Days from the first of the horizon; outside it below 0 or from {@link #days} on. */
  public int day(LocalDate date) {
    return horizon.day(date);
  }

  public List<CampaignHours> campaigns() {
    return campaigns;
  }

  public List<ChangeoverHours> changeovers() {
    return changeovers;
  }

  /** All heads that keep hours of their own. */
  public List<BinHours> ownHours() {
    return ownHours;
  }

  /** Hours of the head that draws from this bin in this line, if it keeps its own. */
  public Optional<BinHours> ownHours(String line, String bin) {
    return ownHours.stream()
        .filter(own -> own.line().equals(line) && own.bin().equals(bin))
        .findFirst();
  }

  /** Receiving hours of a crop; none for one that is not delivered. */
  public TimeWindows receiving(String crop) {
    return receiving.getOrDefault(crop, TimeWindows.NONE);
  }

  /** The same day by day. */
  ReceivingDays receivingDays(String crop) {
    ReceivingDays known = receivingDays.get(crop);
    return known == null ? ReceivingDays.none(days()) : known;
  }

  /**
   * Hours between its dates in which a crop's stream of loads runs; none for one that has no
   * stream.
   */
  public TimeWindows loadsHours(String crop) {
    return loads.getOrDefault(crop, TimeWindows.NONE);
  }

  /** Calendar months that the horizon touches. */
  public Periods months() {
    return months;
  }

  /** Weeks from Monday to Sunday that the horizon touches. */
  public Periods weeks() {
    return weeks;
  }

  /** Years counted from the first day of the horizon, the last cut by its end. */
  public Periods years() {
    return years;
  }

  /** What the electricity meter goes by. */
  public MeterSchedule meter() {
    return meter;
  }
}
