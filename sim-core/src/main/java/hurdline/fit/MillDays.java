package hurdline.fit;

import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import hurdline.records.MadeRecord;
import hurdline.records.PowerRecord;
import hurdline.records.Records;
import hurdline.records.ShiftRecord;
import hurdline.records.Spans;
import hurdline.records.Spans.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a mill drew on each day and what it milled on each screen. A day goes from its first shift
 * to that of the next; one of whose crewed hours a hundredth was not metered is left out.
 */
final class MillDays {
  private static final double METERED = 0.99;
  private static final double HOUR_S = 3600;

  /** Of hourly readings so many lie below a full load. */
  private static final double FULL = 0.95;

  /** So many of an idle mill's hours are of one that stood and was not logged. */
  private static final double IDLE = 0.02;

  /** Of an hour in which the mill was up all the time, but for the minutes of a log. */
  private static final double WHOLE = 0.95;

  private final Plant plant;
  private final Records records;
  private final StopClocks clocks;
  private final String mill;

  /**
   * @param kWh by the mill's own meter
   * @param t milled on each screen
   * @param hours each reading of its meter
   */
  record Day(LocalDate date, double kWh, double[] t, List<Hour> hours) {
    /**
     * Whether no package was filled from another screen: a single one is of a day on whose evening
     * the screen was changed, and what was milled for it is in the kWh.
     */
    boolean isOf(int screen) {
      return t[screen] > 0 && t[screen] >= java.util.Arrays.stream(t).sum();
    }
  }

  /**
   * One reading.
   *
   * @param upH hours of it in which the mill was crewed and in none of its own stops
   * @param stoodH hours of those in which a logged stop held the line
   */
  record Hour(double kWh, double upH, double stoodH) {}

  /**
   * @param fullKW what it draws fully fed: 95 % of its hours are below
   * @param idleKW what it draws without material, by the plant file; where that does not say, 2 %
   *     of its hours are below
   * @param why what is not in the records; empty where nothing lacks
   */
  record Found(List<Day> days, List<String> screens, double fullKW, double idleKW, String why) {
    private static Found none(String why) {
      return new Found(List.of(), List.of(), Double.NaN, Double.NaN, why);
    }
  }

  MillDays(Plant plant, Records records, StopClocks clocks, String mill) {
    this.plant = plant;
    this.records = records;
    this.clocks = clocks;
    this.mill = mill;
  }

  Found all() {
    if (records.power().stream().noneMatch(row -> row.machineKWh().containsKey(mill))) {
      return Found.none(
          "no column of power.csv is its meter: one headed \"" + mill + " kWh\" would be");
    }
    Map<String, String> products = new LinkedHashMap<>();
    for (Line line : plant.lines()) {
      step(line).ifPresent(step -> products.putAll(products(line, step)));
    }
    Set<String> different = new HashSet<>(products.values());
    if (products.isEmpty() || different.size() < products.size()) {
      return Found.none(
          "no record says which screen was in: screens have no products of their own");
    }
    if (elsewhere(different)) {
      return Found.none("a product of one of its screens is made elsewhere too");
    }
    List<Day> days = days(List.copyOf(products.keySet()), products);
    return days.isEmpty()
        ? Found.none("no day has its meter, its shifts and what was made together")
        : new Found(days, List.copyOf(products.keySet()), fullKW(), idleKW(days), "");
  }

  private double idleKW(List<Day> days) {
    double saidKW = mill().grinding().noLoad() * mill().common().powerW() / 1000;
    double[] kW =
        days.stream()
            .flatMap(day -> day.hours().stream())
            .filter(hour -> hour.upH() >= WHOLE)
            .mapToDouble(hour -> hour.kWh() / hour.upH())
            .sorted()
            .toArray();
    return saidKW > 0 || kW.length == 0 ? saidKW : kW[(int) (IDLE * (kW.length - 1))];
  }

  private double fullKW() {
    double[] kW =
        records.power().stream()
            .filter(row -> row.machineKWh().getOrDefault(mill, 0.0) > 0)
            .mapToDouble(row -> row.machineKWh().get(mill) * HOUR_S / row.lengthS())
            .sorted()
            .toArray();
    return kW.length == 0 ? Double.NaN : kW[(int) (FULL * (kW.length - 1))];
  }

  private Optional<Step> step(Line line) {
    return line.steps().stream().filter(step -> step.machine().equals(mill)).findFirst();
  }

  /** By screen; of a mill of one screen whatever is packed behind it. */
  private Map<String, String> products(Line line, Step step) {
    if (!step.makes().isEmpty()) {
      return step.makes();
    }
    List<Machine.Screen> screens = mill().screens();
    List<String> packed =
        line.steps().stream()
            .filter(of -> clocks.together(line, mill).contains(of.machine()))
            .filter(of -> of.packs().isPresent())
            .flatMap(of -> StopClocks.products(line, of).stream())
            .distinct()
            .toList();
    return screens.size() == 1 && packed.size() == 1
        ? Map.of(screens.get(0).name(), packed.get(0))
        : Map.of();
  }

  private Machine.HammerMill mill() {
    return plant.machines().stream()
        .filter(machine -> machine.name().equals(mill))
        .map(Machine.HammerMill.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** Whether another machine's way leads to one of the products. */
  private boolean elsewhere(Set<String> products) {
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        boolean isBehind =
            step(line).isPresent() && clocks.together(line, mill).contains(step.machine());
        boolean packs =
            step.packs().isPresent()
                && StopClocks.products(line, step).stream().anyMatch(products::contains);
        boolean flows = step.outlets().stream().anyMatch(of -> products.contains(of.to()));
        if (!isBehind && (packs || flows)) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Day> days(List<String> screens, Map<String, String> products) {
    TreeMap<Double, LocalDate> begins = new TreeMap<>();
    Map<LocalDate, List<Span>> worked = new TreeMap<>();
    for (ShiftRecord shift : records.shifts()) {
      if (shift.lines().stream().anyMatch(this::uses)) {
        begins.put(shift.fromS(), shift.date());
        worked.computeIfAbsent(shift.date(), date -> new ArrayList<>()).addAll(shift.worked());
      }
    }
    Map<LocalDate, List<PowerRecord>> metered = metered(begins, worked);
    Map<LocalDate, double[]> milled = milled(screens, products);
    Spans stood = stood();
    Spans own = Spans.of(clocks.stops(Set.of(mill)));
    List<Day> days = new ArrayList<>();
    worked.forEach(
        (date, spans) -> {
          Spans crewed = Spans.of(spans);
          List<PowerRecord> rows = metered.getOrDefault(date, List.of());
          double[] t = milled.getOrDefault(date, new double[screens.size()]);
          if (inS(rows, crewed) >= METERED * crewed.totalS()
              && java.util.Arrays.stream(t).sum() > 0) {
            Spans up = crewed.less(own);
            List<Hour> hours =
                rows.stream().map(row -> hour(row, up, up.less(up.less(stood)))).toList();
            days.add(new Day(date, hours.stream().mapToDouble(Hour::kWh).sum(), t, hours));
          }
        });
    days.sort(Comparator.comparing(Day::date));
    return days;
  }

  private boolean uses(String line) {
    return plant.lines().stream().anyMatch(of -> of.name().equals(line) && step(of).isPresent());
  }

  private static double inS(List<PowerRecord> rows, Spans hours) {
    return rows.stream()
        .mapToDouble(row -> hours.betweenS(row.fromS(), row.fromS() + row.lengthS()))
        .sum();
  }

  private Hour hour(PowerRecord row, Spans up, Spans stood) {
    double endS = row.fromS() + row.lengthS();
    return new Hour(
        row.machineKWh().get(mill),
        up.betweenS(row.fromS(), endS) / HOUR_S,
        stood.betweenS(row.fromS(), endS) / HOUR_S);
  }

  /**
   * Readings of each day up to an hour after its last shift: a day whose shift nobody wrote down is
   * not the day before.
   */
  private Map<LocalDate, List<PowerRecord>> metered(
      TreeMap<Double, LocalDate> begins, Map<LocalDate, List<Span>> worked) {
    Map<LocalDate, Spans> hours = new HashMap<>();
    worked.forEach((date, spans) -> hours.put(date, Spans.of(spans)));
    Map<LocalDate, List<PowerRecord>> metered = new HashMap<>();
    for (PowerRecord row : records.power()) {
      Map.Entry<Double, LocalDate> last = begins.floorEntry(row.middleS());
      boolean isRead = row.machineKWh().containsKey(mill);
      if (last != null && isRead && row.middleS() < endS(hours.get(last.getValue()))) {
        metered.computeIfAbsent(last.getValue(), date -> new ArrayList<>()).add(row);
      }
    }
    return metered;
  }

  private static double endS(Spans hours) {
    return hours.all().get(hours.all().size() - 1).toS() + HOUR_S;
  }

  private Map<LocalDate, double[]> milled(List<String> screens, Map<String, String> products) {
    Map<LocalDate, double[]> milled = new HashMap<>();
    for (MadeRecord row : records.made()) {
      for (int s = 0; s < screens.size(); s++) {
        if (!row.isFed() && row.what().equals(products.get(screens.get(s)))) {
          milled.computeIfAbsent(row.date(), date -> new double[screens.size()])[s] +=
              clocks.massKg(row) / 1000;
        }
      }
    }
    return milled;
  }

  /** When a logged stop held machines of its lines while the mill itself was not down. */
  private Spans stood() {
    Set<String> others = new HashSet<>();
    for (Line line : plant.lines()) {
      if (step(line).isPresent()) {
        others.addAll(clocks.together(line, line.feed()));
        others.addAll(clocks.together(line, mill));
      }
    }
    others.remove(mill);
    return Spans.of(clocks.stops(others)).less(Spans.of(clocks.stops(Set.of(mill))));
  }
}
