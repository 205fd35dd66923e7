package hurdline.records;

import hurdline.account.Trace;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.PaidShift;
import hurdline.compiled.ScreenPlan;
import hurdline.measure.EventKind;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Calendar;
import hurdline.plant.Crew;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Step.PacksProduct;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.Draws;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One simulated year of a plant as its people would have written it down: times to the minute,
 * scale readings to 20 lb, a yard that is counted on Mondays. So the truth behind the records is
 * the plant file, whatever it says today.
 *
 * <p>One file because all of it is one event's way into a sheet: what a replication tells, and the
 * nine files that are made of it.
 */
public final class RecordedYear implements Trace {
  private static final double LB_KG = 0.45359237;
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

  private final Plant plant;
  private final CompiledPlant stage;
  private final CompiledLines layout;
  private final RandomStreams streams;
  private final LocalDateTime start;
  private final Map<String, Double> stopBeganS = new HashMap<>();
  private final List<String[]> stops = new ArrayList<>();
  private final Map<String, ArrayDeque<double[]>> atGate =
      new HashMap<>(); // [since, bales, weighed in]
  private final List<Load> loads = new ArrayList<>();
  private final Map<String, Map<String, Full>> packages = new TreeMap<>(); // by shift
  private final ArrayDeque<String> forms = new ArrayDeque<>(); // of what was lifted
  private final Map<String, Map<String, Integer>> fed = new TreeMap<>(); // by shift and form
  private final List<String> changes = new ArrayList<>();
  private final Map<String, Integer> filled = new HashMap<>(); // by machine and product
  private final List<String> counts = new ArrayList<>();
  private final Map<String, Draws> watch = new HashMap<>(); // by package
  private final double[] millKWh;
  private final double[] weight; // of an hour's energy
  private int[] state;
  private double[] rates;
  private double lastS;
  private int screen;
  private int countedDay = -1;

  private record Full(String product, Packaging kind, int count) {
    private Full and(Full other) {
      return new Full(product, kind, count + other.count);
    }
  }

  private record Load(String crop, double inS, double weighedS, double outS, int bales) {}

  private RecordedYear(Plant plant, long seed) {
    this.plant = plant;
    stage = CompiledPlant.of(plant);
    layout = stage.layout();
    streams = new RandomStreams(seed);
    start = plant.calendar().from().atStartOfDay();
    int hours = (int) (stage.roster().horizonS() / HOUR_S);
    millKWh = new double[hours];
    weight = new double[hours];
    state = new int[layout.machine.length];
    rates = new double[layout.heads];
    screen = firstScreen();
  }

  /** A mill begins with the screen of the greatest share, not with the first that it has. */
  private int firstScreen() {
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .filter(step -> !step.makes().isEmpty())
        .map(step -> ScreenPlan.of(plant, mill().orElseThrow(), step))
        .mapToInt(plan -> plan.furthestBehind(new double[mill().orElseThrow().screens().size()]))
        .findFirst()
        .orElse(0);
  }

  /**
   * Writes a year's records into a folder, which must be there, and tells what the year came to.
   */
  public static Outcome write(Plant plant, long seed, Path folder) throws IOException {
    RecordedYear year = new RecordedYear(plant, seed);
    Outcome outcome = year.stage.replication().run(year.streams, 1, year);
    year.stops(folder);
    year.shifts(folder);
    year.tickets(folder);
    year.made(folder, outcome);
    year.power(folder, outcome);
    year.rain(folder);
    Collections.sort(year.changes);
    lines(folder.resolve("changes.csv"), "what,began,ended", year.changes);
    Collections.sort(year.counts);
    lines(folder.resolve("yard.csv"), "date,crop,count", year.counts);
    return outcome;
  }

  /** The example's year: {@code RecordedYear PLANT FOLDER}. */
  public static void main(String... args) throws IOException {
    write(PlantFile.read(Path.of(args[0])).plant(), 20270104, Path.of(args[1]));
  }

  private static void lines(Path file, String head, List<String> rows) throws IOException {
    Files.writeString(file, head + "\n" + String.join("\n", rows) + "\n");
  }

  private RandomStream chance(String of) {
    return streams.of(1, "recorded " + of);
  }

  @Override
  public void note(double clockS, String where, EventKind what, double amount) {
    switch (what) {
      case STOPS -> stopBeganS.put(where, clockS);
      case IS_UP_AGAIN -> ended(where, clockS);
      case AT_THE_GATE ->
          atGate
              .computeIfAbsent(where, crop -> new ArrayDeque<>())
              .add(new double[] {clockS, amount, Double.NaN});
      case WEIGHED_IN -> weighedIn(where, clockS);
      case LEAVES_GATE -> left(where, clockS);
      case LEAVES_FOR_TABLE -> forms.addLast(form(where));
      case PUT_BACK -> forms.removeLastOccurrence(form(where));
      case SET_ON_TABLE -> setOnTable((int) amount, clockS);
      case PACKAGE_FULL -> full(where, (int) amount, clockS);
      case SCREEN_CHANGE_ENDS -> screen = (int) amount;
      default -> {}
    }
  }

  /** What a place holds where it says so. */
  private String form(String place) {
    return plant.yard().places().stream()
        .filter(of -> of.name().equals(place))
        .flatMap(of -> plant.crops().stream().map(Crop::name).filter(of::takes))
        .findFirst()
        .orElseThrow();
  }

  private void setOnTable(int pieces, double clockS) {
    Map<String, Integer> of =
        fed.computeIfAbsent(shift(clockS, feeding(clockS)), key -> new TreeMap<>());
    for (int i = 0; i < pieces; i++) {
      of.merge(forms.removeFirst(), 1, Integer::sum);
    }
  }

  private void ended(String stop, double clockS) {
    Double beganS = stopBeganS.remove(stop);
    if (beganS != null) {
      int dot = stop.indexOf('.');
      stops.add(
          new String[] {
            stop.substring(0, dot), time(beganS), time(clockS), stop.substring(dot + 1)
          });
    }
  }

  /** The first that is not yet; a load that no scale weighs has no such time. */
  private void weighedIn(String crop, double clockS) {
    if (plant.deliveries().stream()
        .anyMatch(of -> of.crop().equals(crop) && of.weigh().isPresent())) {
      atGate.get(crop).stream()
          .filter(load -> Double.isNaN(load[2]))
          .findFirst()
          .ifPresent(load -> load[2] = clockS);
    }
  }

  private void left(String crop, double clockS) {
    double[] came = atGate.getOrDefault(crop, new ArrayDeque<>()).poll();
    if (came != null && came[1] > 0) {
      loads.add(new Load(crop, came[0], came[2], clockS, (int) came[1]));
    }
  }

  /** The machine's product whose count goes on; of several that of the screen that is in. */
  private void full(String machine, int count, double clockS) {
    List<String> products = products(machine);
    List<String> next =
        products.stream().filter(of -> filled.getOrDefault(machine + of, 0) == count - 1).toList();
    String product =
        next.stream().filter(of -> of.equals(ofScreen())).findFirst().orElse(next.get(0));
    filled.put(machine + product, count);
    Packaging kind = packaging(machine, product);
    timed(kind, clockS);
    packages
        .computeIfAbsent(shift(clockS, lineOf(machine, clockS)), key -> new LinkedHashMap<>())
        .merge(product + "," + kind.name(), new Full(product, kind, 1), Full::and);
  }

  /**
   * On one Wednesday a month somebody times the changes from eight to ten; how long they take is as
   * the file says.
   */
  private void timed(Packaging packaging, double clockS) {
    LocalDate date = stage.roster().date((int) (clockS / DAY_S));
    int hour = (int) (clockS % DAY_S / HOUR_S);
    if (date.getDayOfWeek().getValue() != 3 || date.getDayOfMonth() > 7 || hour / 2 != 4) {
      return;
    }
    double lastsS =
        watch
            .computeIfAbsent(
                packaging.name(), name -> new Draws(packaging.changeS(), chance("change " + name)))
            .next();
    changes.add(packaging.name() + "," + second(clockS) + "," + second(clockS + lastsS));
  }

  /** What the machine's step says, else the product's own. */
  private Packaging packaging(String machine, String product) {
    List<Packaging> kinds =
        plant.products().stream()
            .filter(of -> of.name().equals(product))
            .flatMap(of -> plant.packagings(of).stream())
            .toList();
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .filter(step -> step.machine().equals(machine))
        .flatMap(step -> step.packs().stream())
        .flatMap(
            packs -> packs instanceof PacksProduct one ? one.packaging().stream() : Stream.empty())
        .flatMap(name -> kinds.stream().filter(kind -> kind.name().equals(name)))
        .findFirst()
        .orElse(kinds.get(0));
  }

  private String second(double clockS) {
    return SECOND.format(start.plusSeconds(Math.round(clockS)));
  }

  private List<String> products(String machine) {
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .filter(step -> step.machine().equals(machine) && step.packs().isPresent())
        .flatMap(
            step ->
                step.packs().get() instanceof PacksProduct one
                    ? Stream.of(one.product())
                    : makes().values().stream())
        .distinct()
        .toList();
  }

  private Map<String, String> makes() {
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .map(step -> step.makes())
        .filter(of -> !of.isEmpty())
        .findFirst()
        .orElse(Map.of());
  }

  private Optional<Machine.HammerMill> mill() {
    return plant.machines().stream()
        .filter(Machine.HammerMill.class::isInstance)
        .map(Machine.HammerMill.class::cast)
        .findFirst();
  }

  private String ofScreen() {
    return mill().map(of -> makes().getOrDefault(of.screens().get(screen).name(), "")).orElse("");
  }

  /** The line whose campaign it is. */
  private String feeding(double clockS) {
    return stage.roster().campaigns().stream()
        .filter(of -> of.beginS() <= clockS)
        .max(Comparator.comparingDouble(of -> of.beginS()))
        .map(of -> of.line())
        .orElseThrow();
  }

  private String lineOf(String machine, double clockS) {
    return plant.lines().stream()
        .filter(line -> line.steps().stream().anyMatch(step -> step.machine().equals(machine)))
        .map(line -> line.name())
        .findFirst()
        .orElseGet(() -> feeding(clockS));
  }

  /** {@code date,shift,line} of the shift that had last begun. */
  private String shift(double clockS, String line) {
    return stage.roster().campaigns().stream()
        .flatMap(of -> of.shifts().stream())
        .filter(of -> of.line().equals(line) && of.fromS() <= clockS)
        .max(Comparator.comparingDouble(PaidShift::fromS))
        .map(of -> stage.roster().date(of.day()) + "," + of.shift() + "," + line)
        .orElseThrow();
  }

  @Override
  public void flows(double clockS, double[] rateKgPerS, double[] levelKg) {
    goOn(clockS);
    rates = rateKgPerS.clone();
  }

  @Override
  public void standing(double clockS, int[] nowState, int[] inYard) {
    goOn(clockS);
    state = nowState.clone();
    count(clockS, inYard);
  }

  /** Each Monday before work, with the error of those who walk the stacks. */
  private void count(double clockS, int[] inYard) {
    int day = (int) (clockS / DAY_S);
    if (day == countedDay || stage.roster().date(day).getDayOfWeek().getValue() != 1) {
      return;
    }
    countedDay = day;
    for (int crop = 0; crop < inYard.length; crop++) {
      String name = stage.yard().crop(crop);
      RandomStream error = chance("count " + name + day);
      double counted = inYard[crop] * (1 + (day == 0 ? 0 : 0.004 * error.nextNormal()));
      if (inYard[crop] > 0 || day == 0) {
        counts.add(stage.roster().date(day) + "," + name + "," + Math.round(counted));
      }
    }
  }

  /** Energy from the last instant to this one, hour by hour. */
  private void goOn(double clockS) {
    double fromS = lastS;
    lastS = Math.max(lastS, clockS);
    while (fromS < clockS) {
      int hour = (int) (fromS / HOUR_S);
      if (hour >= weight.length) {
        return;
      }
      double toS = Math.min(clockS, (hour + 1) * HOUR_S);
      double h = (toS - fromS) / HOUR_S;
      for (int m = 0; m < state.length; m++) {
        double kW = draw(m) / 1000;
        weight[hour] += kW * h;
        if (layout.machine[m] instanceof Machine.HammerMill) {
          millKWh[hour] += kW * h;
        }
      }
      fromS = toS;
    }
  }

  /** W; a mill the greater of its no-load draw and that of its inflow. */
  private double draw(int m) {
    State now = State.values()[state[m]];
    if (now.ordinal() <= State.DOWN.ordinal()) {
      return 0;
    }
    Machine machine = layout.machine[m];
    double powerW = machine.common().powerW();
    if (machine instanceof Machine.HammerMill mill) {
      if (now == State.CHANGING) {
        return 0; // it stands open for its screen
      }
      double kgPerS = rates[millHead()];
      double share = kgPerS / mill.kgPerS(mill.screens().get(screen));
      return powerW
          * Math.max(mill.grinding().noLoad(), mill.grinding().motorLoad() * Math.min(1, share));
    }
    return powerW;
  }

  private int millHead() {
    for (int h = 0; h < layout.heads; h++) {
      for (int m : layout.stretch[h].machine) {
        if (m >= 0 && layout.machine[m] instanceof Machine.HammerMill) {
          return h;
        }
      }
    }
    throw new IllegalStateException("no mill");
  }

  private String time(double clockS) {
    return MINUTE.format(start.plusSeconds(60 * Math.round(clockS / 60)));
  }

  private void stops(Path folder) throws IOException {
    stops.sort(Comparator.comparing((String[] row) -> row[1]));
    lines(
        folder.resolve("stops.csv"),
        "machine,began,ended,reason,note",
        stops.stream().map(row -> String.join(",", row) + ",").toList());
  }

  private void shifts(Path folder) throws IOException {
    List<String> rows = new ArrayList<>();
    stage.roster().campaigns().stream()
        .flatMap(of -> of.shifts().stream())
        .sorted(Comparator.comparingDouble(PaidShift::fromS))
        .forEach(of -> rows.add(row(of)));
    lines(
        folder.resolve("shifts.csv"),
        "date,shift,from,to,rest from,rest to,line,hands,hours paid",
        rows);
  }

  private String row(PaidShift of) {
    Calendar.Shift shift =
        plant.calendar().shifts().stream()
            .filter(one -> one.name().equals(of.shift()))
            .findFirst()
            .orElseThrow();
    int hands =
        plant.crews().stream()
            .filter(crew -> crew.line().equals(of.line()) && crew.shift().equals(of.shift()))
            .mapToInt(Crew::hands)
            .sum();
    String rest =
        shift.rests().isEmpty()
            ? ","
            : clock(shift.rests().get(0).atS())
                + ","
                + clock(shift.rests().get(0).atS() + shift.rests().get(0).lastsS());
    return String.format(
        Locale.ROOT,
        "%s,%s,%s,%s,%s,%s,%d,%.1f",
        stage.roster().date(of.day()),
        of.shift(),
        clock(of.fromS()),
        clock(of.toS()),
        rest,
        of.line(),
        hands,
        hands * shift.lengthS() / HOUR_S);
  }

  private static String clock(double atS) {
    long minutes = Math.round(atS / 60) % 1440;
    return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
  }

  private void tickets(Path folder) throws IOException {
    loads.sort(Comparator.comparingDouble(Load::inS));
    List<String> rows = new ArrayList<>();
    Map<String, Draws> mass = new HashMap<>();
    RandomStream tare = chance("tare");
    RandomStream meter = chance("moisture");
    int number = 51200;
    for (Load load : loads) {
      Crop crop =
          plant.crops().stream()
              .filter(of -> of.name().equals(load.crop()))
              .findFirst()
              .orElseThrow();
      Draws bales =
          mass.computeIfAbsent(
              crop.name(), name -> new Draws(crop.bale().massKg(), chance("mass " + name)));
      double netKg = 0;
      for (int bale = 0; bale < load.bales(); bale++) {
        netKg += bales.next();
      }
      double moisture =
          crop.bale().moisture().mean() + 0.018 / Math.sqrt(load.bales()) * meter.nextNormal();
      double tareLb = (crop.modules() ? 26_800 : 15_600) + 180 * tare.nextNormal();
      long tareTold = 20 * Math.round(tareLb / 20);
      long grossTold = 20 * Math.round((tareLb + netKg / LB_KG) / 20);
      rows.add(
          String.format(
              Locale.ROOT,
              "%d,%s,%s,%s,%s,%s,%d,%d,%d,lb,%d,%.1f",
              ++number,
              crop.name(),
              field(crop, load),
              time(load.inS()),
              Double.isNaN(load.weighedS()) ? "" : time(load.weighedS()),
              time(load.outS()),
              grossTold,
              tareTold,
              grossTold - tareTold,
              load.bales(),
              100 * moisture));
    }
    lines(
        folder.resolve("tickets.csv"),
        "ticket,crop,field,gate in,weighed in,gate out,gross,tare,net,unit,bales,moisture",
        rows);
  }

  /** Fields come in turn as they are ready; a load is of the first until its mean crop is in. */
  private String field(Crop crop, Load load) {
    List<Delivery.Field> fields =
        plant.deliveries().stream()
            .filter(of -> of.crop().equals(crop.name()))
            .flatMap(of -> of.fields().stream())
            .sorted(Comparator.comparing(Delivery.Field::ready))
            .toList();
    double beforeKg =
        loads.stream()
                .filter(of -> of.crop().equals(crop.name()) && of.inS() < load.inS())
                .mapToDouble(Load::bales)
                .sum()
            * crop.bale().massKg().mean();
    for (Delivery.Field field : fields) {
      beforeKg -= field.areaM2() * field.yieldKgPerM2().mean();
      if (beforeKg < 0) {
        return field.name();
      }
    }
    return fields.isEmpty() ? "growers" : fields.get(fields.size() - 1).name();
  }

  private void made(Path folder, Outcome outcome) throws IOException {
    List<String> rows = new ArrayList<>();
    RandomStream scale = chance("packages");
    TreeMap<String, Map<String, Integer>> shifts = new TreeMap<>(fed);
    packages.keySet().forEach(key -> shifts.putIfAbsent(key, Map.of()));
    for (String key : shifts.keySet()) {
      String[] of = key.split(",");
      String crop =
          plant.lines().stream()
              .filter(line -> line.name().equals(of[2]))
              .findFirst()
              .orElseThrow()
              .crop();
      for (Crop form : plant.forms(crop)) {
        int pieces = shifts.get(key).getOrDefault(form.name(), 0);
        if (pieces > 0 || form.name().equals(crop)) {
          rows.add(of[0] + "," + of[1] + "," + form.name() + " fed," + pieces + ",,");
        }
      }
      packages.getOrDefault(key, Map.of()).values().stream()
          .collect(Collectors.groupingBy(Full::product, LinkedHashMap::new, Collectors.toList()))
          .forEach((product, kinds) -> rows.add(row(of, product, kinds, scale)));
    }
    plant.products().stream()
        .filter(product -> plant.packagings(product).isEmpty())
        .forEach(product -> rows.addAll(loose(product, outcome)));
    rows.sort(Comparator.comparing((String row) -> row.split(",")[0]));
    lines(folder.resolve("made.csv"), "date,shift,what,count,mass,unit", rows);
  }

  private static String row(String[] shift, String product, List<Full> kinds, RandomStream scale) {
    int count = kinds.stream().mapToInt(Full::count).sum();
    double nominalKg = kinds.stream().mapToDouble(of -> of.count() * of.kind().massKg()).sum();
    double kg = nominalKg * (1 + 0.005 / Math.sqrt(count) * scale.nextNormal());
    return String.format(
        Locale.ROOT, "%s,%s,%s,%d,%.0f,lb", shift[0], shift[1], product, count, kg / LB_KG);
  }

  /** Hauled away at the end of each week. */
  private List<String> loose(Product product, Outcome outcome) {
    int column =
        outcome.weekColumns().stream()
            .map(Outcome.Column::name)
            .toList()
            .indexOf(Measure.PRODUCT_MASS.of(product.name()));
    List<String> rows = new ArrayList<>();
    for (int week = 0; week < outcome.weeks().length; week++) {
      double t = outcome.weeks()[week][column];
      LocalDate last = stage.roster().weeks().firstDate(week).plusDays(4);
      if (t > 0) {
        rows.add(
            String.format(Locale.ROOT, "%s,,%s,,%.0f,lb", last, product.name(), 1000 * t / LB_KG));
      }
    }
    return rows;
  }

  /** Hours by what stood and ran in them; months come to what was simulated. */
  private void power(Path folder, Outcome outcome) throws IOException {
    int column =
        outcome.monthColumns().stream()
            .map(Outcome.Column::name)
            .toList()
            .indexOf(Measure.ENERGY_TOTAL.of());
    double[] byMonth = new double[outcome.months().length];
    for (int hour = 0; hour < weight.length; hour++) {
      weight[hour] += 9; // lamps and the office
      byMonth[stage.roster().months().at(hour * HOUR_S)] += weight[hour];
    }
    List<String> rows = new ArrayList<>();
    List<String> bills = new ArrayList<>();
    double[] highest = new double[byMonth.length];
    for (int hour = 0; hour < weight.length; hour++) {
      int month = stage.roster().months().at(hour * HOUR_S);
      double kWh = weight[hour] * outcome.months()[month][column] / byMonth[month];
      highest[month] = Math.max(highest[month], kWh);
      rows.add(
          String.format(
              Locale.ROOT,
              "%s,%.1f%s",
              time(hour * HOUR_S),
              kWh,
              mill().isEmpty()
                  ? ""
                  : millKWh[hour] > 0 ? String.format(Locale.ROOT, ",%.2f", millKWh[hour]) : ","));
    }
    for (int month = 0; month < byMonth.length; month++) {
      bills.add(
          String.format(
              Locale.ROOT,
              "%s,%.0f,%.0f",
              stage.roster().months().firstDate(month).toString().substring(0, 7),
              outcome.months()[month][column],
              highest[month]));
    }
    lines(
        folder.resolve("power.csv"),
        mill().map(of -> "hour from,kWh,mill kWh").orElse("hour from,kWh"),
        rows);
    lines(folder.resolve("bills.csv"), "month,kWh,highest hour kW", bills);
  }

  /** A year by the file's own chances; what is wet has 2 mm and more. */
  private void rain(Path folder) throws IOException {
    Delivery.WetChain chain =
        plant.deliveries().stream()
            .map(Delivery::weather)
            .filter(of -> of instanceof Delivery.WetChain wet && wet.usual().wetDay() > 0)
            .map(Delivery.WetChain.class::cast)
            .findFirst()
            .orElseThrow();
    RandomStream sky = chance("rain");
    List<String> rows = new ArrayList<>();
    boolean wet = false;
    for (int day = 0; day < stage.roster().days(); day++) {
      wet = sky.next() < chain.usual().after(wet);
      double mm = wet ? 2 - 8 * Math.log(sky.next()) : sky.next() < 0.2 ? 1.5 * sky.next() : 0;
      rows.add(String.format(Locale.ROOT, "%s,%.1f", stage.roster().date(day), mm));
    }
    lines(folder.resolve("rain.csv"), "date,rain_mm", rows);
  }
}
