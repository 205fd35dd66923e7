package hurdline.study.backtest;

import hurdline.plant.Calendar;
import hurdline.plant.Crew;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Hands;
import hurdline.plant.Plant;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Yard;
import hurdline.random.Constant;
import hurdline.records.Records;
import hurdline.records.ShiftRecord;
import hurdline.records.Spans.Span;
import hurdline.records.TicketRecord;
import hurdline.records.WallClock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A plant over a season that has been: its shifts as they were worked, the stock on hand as it was
 * first counted, loads as they came over the scale. All else is the plant's: rates, stops, shares.
 *
 * <p>Shifts of a sheet become campaigns: one for each row of days on which a line worked the same
 * hours. Changeovers are in the sheet as days without a shift. Money, options and plans are left
 * out.
 */
public final class PastSeason {
  private static final double DAY_S = 86_400;
  private static final int WEEK_D = 7;

  private final Records records;
  private final WallClock clock;
  private final LocalDate from;
  private final LocalDate to;

  /** A shift's hours on the wall. */
  private record Hours(int fromS, int toS, List<Calendar.Rest> rests) {}

  /**
   * @param records with at least one shift
   */
  public PastSeason(Records records) {
    this.records = records;
    clock = new WallClock(records.map().zone());
    TreeSet<LocalDate> worked = new TreeSet<>();
    records.shifts().forEach(shift -> worked.add(shift.date()));
    from = records.map().from().orElse(worked.first());
    to = records.map().to().orElse(worked.last());
  }

  public LocalDate from() {
    return from;
  }

  public LocalDate to() {
    return to;
  }

  WallClock clock() {
    return clock;
  }

  /** Seconds of the season's clock, which never changes, at an instant. */
  double seasonS(double epochS) {
    LocalDateTime wall = clock.wall(epochS);
    return ChronoUnit.SECONDS.between(from.atStartOfDay(), wall);
  }

  /** Seconds since 1970 at a second of the season's clock. */
  double epochS(double seasonS) {
    return clock.epochS(from.atStartOfDay().plusSeconds(Math.round(seasonS)));
  }

  /** The plant over this season. */
  public Plant of(Plant plant) {
    Map<Hours, String> names = new LinkedHashMap<>();
    List<SeasonEntry> season = new ArrayList<>();
    List<Crew> crews = new ArrayList<>();
    plant.lines().forEach(line -> season.addAll(campaigns(line.name(), names)));
    season.sort(Comparator.comparing(entry -> ((SeasonEntry.Campaign) entry).from()));
    List<Calendar.Shift> shifts = new ArrayList<>(plant.calendar().shifts());
    names.forEach(
        (hours, name) ->
            shifts.add(
                new Calendar.Shift(
                    name,
                    EnumSet.allOf(DayOfWeek.class),
                    hours.fromS(),
                    hours.toS(),
                    hours.rests())));
    plant
        .lines()
        .forEach(
            line ->
                names
                    .values()
                    .forEach(
                        name -> crews.add(new Crew(line.name(), name, hands(plant, line.name())))));
    return new Plant(
        plant.name(),
        new Calendar(from, to, shifts, java.util.Set.of(), Optional.empty()),
        plant.components(),
        plant.crops(),
        plant.machines(),
        plant.products(),
        plant.packages(),
        plant.stores(),
        plant.lines(),
        season,
        crews,
        Hands.allCome(),
        plant.resources(),
        yard(plant),
        plant.crops().stream().flatMap(crop -> delivery(plant, crop).stream()).toList(),
        plant.baseLoads(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        plant.titles());
  }

  private static int hands(Plant plant, String line) {
    return plant.crews().stream()
        .filter(crew -> crew.line().equals(line))
        .mapToInt(Crew::hands)
        .max()
        .orElse(0);
  }

  private List<SeasonEntry> campaigns(String line, Map<Hours, String> names) {
    TreeMap<LocalDate, List<String>> days = new TreeMap<>();
    double freeS = Double.NEGATIVE_INFINITY;
    List<ShiftRecord> worked =
        records.shifts().stream()
            .filter(shift -> shift.lines().contains(line) && !shift.worked().isEmpty())
            .filter(shift -> !shift.date().isBefore(from) && !shift.date().isAfter(to))
            .sorted(Comparator.comparingDouble(shift -> shift.worked().get(0).fromS()))
            .toList();
    for (ShiftRecord shift : worked) {
      List<Span> spans = shift.worked();
      if (spans.get(0).fromS() >= freeS) { // the same hours twice are one shift
        freeS = spans.get(spans.size() - 1).toS();
        String name =
            names.computeIfAbsent(hours(spans), hours -> "recorded_" + (names.size() + 1));
        LocalDate date = clock.wall(spans.get(0).fromS()).toLocalDate();
        days.computeIfAbsent(date, day -> new ArrayList<>()).add(name);
      }
    }
    List<SeasonEntry> campaigns = new ArrayList<>();
    LocalDate first = null;
    for (LocalDate date : days.keySet()) {
      first = first == null ? date : first;
      List<String> next = days.get(date.plusDays(1));
      if (!days.get(date).equals(next)) {
        campaigns.add(new SeasonEntry.Campaign(line, first, date, days.get(date)));
        first = null;
      }
    }
    return campaigns;
  }

  private Hours hours(List<Span> spans) {
    List<Calendar.Rest> rests = new ArrayList<>();
    for (int at = 1; at < spans.size(); at++) {
      double beganS = spans.get(at - 1).toS();
      rests.add(new Calendar.Rest(ofDayS(beganS), spans.get(at).fromS() - beganS));
    }
    return new Hours(
        ofDayS(spans.get(0).fromS()), ofDayS(spans.get(spans.size() - 1).toS()), rests);
  }

  private int ofDayS(double epochS) {
    LocalTime wall = clock.wall(epochS).toLocalTime();
    return wall.toSecondOfDay();
  }

  /** Stock as it was first counted in the first week, in places that hold it. */
  private Yard yard(Plant plant) {
    Map<String, Integer> onHand = new LinkedHashMap<>();
    for (Crop crop : plant.crops()) {
      counts(plant, crop.name()).entrySet().stream()
          .filter(count -> count.getKey().isBefore(from.plusDays(WEEK_D)))
          .findFirst()
          .ifPresent(count -> onHand.put(crop.name(), (int) Math.round(count.getValue())));
    }
    return YardCounts.holding(onHand, plant.yard());
  }

  /** Bales of a crop in all places, by date of the season. */
  TreeMap<LocalDate, Double> counts(Plant plant, String crop) {
    return YardCounts.of(records, plant, crop, from, to);
  }

  /** Loads of a crop as they came; one that has none in the records does not come. */
  private Optional<Delivery> delivery(Plant plant, Crop crop) {
    List<Delivery.Recorded> loads = new ArrayList<>();
    double bale = crop.bale().massKg().mean();
    for (TicketRecord ticket : records.tickets()) {
      double atS = Double.isNaN(ticket.inS()) ? -1 : seasonS(ticket.inS());
      double bales = Double.isNaN(ticket.bales()) ? ticket.netKg() / bale : ticket.bales();
      if (ticket.crop().equals(crop.name())
          && atS >= 0
          && atS < DAY_S * (ChronoUnit.DAYS.between(from, to) + 1)
          && bales >= 0.5) {
        loads.add(new Delivery.Recorded(atS, (int) Math.round(bales)));
      }
    }
    loads.sort(Comparator.comparingDouble(Delivery.Recorded::atS));
    Optional<Delivery> usual =
        plant.deliveries().stream().filter(of -> of.crop().equals(crop.name())).findFirst();
    Delivery.DayHours always =
        new Delivery.DayHours(0, (int) DAY_S, EnumSet.allOf(DayOfWeek.class));
    return usual
        .filter(of -> !loads.isEmpty())
        .map(
            of ->
                new Delivery(
                    of.crop(),
                    List.of(),
                    of.balers(),
                    of.seasonFactor(),
                    of.weather(),
                    always,
                    Optional.empty(),
                    Optional.of(
                        new Delivery.Loads(new Constant(DAY_S), 1, from, to, always, loads)),
                    of.weigh(),
                    List.of(), // what is in the records was taken
                    of.release(),
                    of.unload(),
                    of.hands(),
                    of.waitingPerS()));
  }
}
