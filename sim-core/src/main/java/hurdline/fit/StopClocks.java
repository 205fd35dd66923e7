package hurdline.fit;

import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop.Counted;
import hurdline.records.MadeRecord;
import hurdline.records.Records;
import hurdline.records.ShiftRecord;
import hurdline.records.Spans;
import hurdline.records.Spans.Span;
import hurdline.records.StopRecord;
import hurdline.records.StopRecord.Repair;
import hurdline.records.TicketRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The engine's four counts as the records have them. Running hours are crewed hours less the logged
 * stops of all machines that stand together and shifts in which nothing was fed; mass is what was
 * fed, as it was when it was fed, times the share that reaches the machine, spread over its running
 * hours of each shift.
 */
final class StopClocks {
  private final Plant plant;
  private final Records records;
  private final LineLoads loads;
  private final Stretches stretches;
  private final Map<String, Double> baleKg = new HashMap<>();
  private final YardLedger yard;
  private final Map<String, Spans> running = new HashMap<>();

  StopClocks(Plant plant, Records records, LineLoads loads) {
    this.plant = plant;
    this.records = records;
    this.loads = loads;
    stretches = new Stretches(plant);
    plant.crops().forEach(crop -> baleKg.put(crop.name(), baleKg(crop)));
    yard = new YardLedger(plant, records, baleKg);
  }

  /** Mean mass of a bale by the tickets, else by the plant file. */
  private double baleKg(Crop crop) {
    double kg = 0;
    double bales = 0;
    for (TicketRecord ticket : records.tickets()) {
      if (ticket.crop().equals(crop.name()) && ticket.bales() > 0) {
        kg += ticket.netKg();
        bales += ticket.bales();
      }
    }
    return bales > 0 ? kg / bales : crop.bale().massKg().mean();
  }

  Spans crewed(String machine) {
    return records.crewed().getOrDefault(machine, Spans.of(List.of()));
  }

  boolean isBehindABin(String machine) {
    return plant.lines().stream().anyMatch(line -> stretches.isBehindABin(line.name(), machine));
  }

  /**
   * The count; nothing where the records do not have it.
   *
   * @param only lines whose work alone is counted; empty for all
   */
  Optional<Count> count(Counted counted, String machine, Set<String> only) {
    return switch (counted) {
      case CALENDAR -> Optional.of(new Count.Calendar());
      case CREWED -> hours(only.isEmpty() ? crewed(machine) : crewed(machine, only));
      case RUNNING -> hours(running(machine, only));
      case MASS -> mass(machine, only).filter(mass -> mass.totalKg() > 0).map(mass -> mass);
    };
  }

  private static Optional<Count> hours(Spans spans) {
    return spans.isEmpty() ? Optional.empty() : Optional.of(new Count.Hours(spans));
  }

  private List<Line> lines(String machine, Set<String> only) {
    return plant.lines().stream()
        .filter(line -> only.isEmpty() || only.contains(line.name()))
        .filter(line -> !stretches.of(line.name(), machine).isEmpty())
        .toList();
  }

  private Spans crewed(String machine, Set<String> only) {
    return Spans.of(
        lines(machine, only).stream().flatMap(line -> hours(line).all().stream()).toList());
  }

  private Spans running(String machine, Set<String> only) {
    return running.computeIfAbsent(machine + only, key -> runningHours(machine, only));
  }

  private Spans runningHours(String machine, Set<String> only) {
    List<Span> all = new ArrayList<>();
    for (Line line : lines(machine, only)) {
      List<Span> idle = new ArrayList<>(stops(stretches.of(line.name(), machine)));
      idle.addAll(withoutFeed(line));
      all.addAll(hours(line).less(Spans.of(idle)).all());
    }
    return Spans.of(all);
  }

  private Spans hours(Line line) {
    return Spans.of(shifts(line).stream().flatMap(shift -> shift.worked().stream()).toList());
  }

  private List<ShiftRecord> shifts(Line line) {
    return records.shifts().stream().filter(shift -> shift.lines().contains(line.name())).toList();
  }

  /** A machine that fills several packages at once goes on while one is changed. */
  private boolean goesOn(StopRecord stop) {
    return stop.isPackageChange()
        && plant.machines().stream()
            .anyMatch(
                machine ->
                    machine.name().equals(stop.machine())
                        && machine instanceof Machine.Packer packer
                        && packer.spouts() > 1);
  }

  /** All machines of a line that stand with one. */
  Set<String> together(Line line, String machine) {
    return stretches.of(line.name(), machine);
  }

  /** When logged stops held one of these machines. */
  List<Span> stops(Set<String> machines) {
    List<Span> spans = new ArrayList<>();
    for (StopRecord stop : records.stops()) {
      boolean isKnown = stop.repair() == Repair.WHOLE || stop.repair() == Repair.NOT_KNOWN;
      if (isKnown
          && !goesOn(stop)
          && machines.contains(stop.machine())
          && stop.endedS() > stop.beganS()) {
        spans.add(new Span(stop.beganS(), stop.endedS()));
      }
    }
    return spans;
  }

  /** Shifts for which the records say what was fed and it is nothing; none where they never say. */
  private List<Span> withoutFeed(Line line) {
    Map<ShiftRecord, Double> fed = fedKg(line);
    boolean isTold = fed.values().stream().anyMatch(kg -> kg > 0);
    return fed.entrySet().stream()
        .filter(entry -> isTold && !(entry.getValue() > 0))
        .map(entry -> new Span(entry.getKey().fromS(), entry.getKey().toS()))
        .toList();
  }

  /** Whether a row says what a line was fed, in whichever of its crop's forms. */
  boolean feeds(MadeRecord row, Line line) {
    return row.isFed() && plant.baseOf(row.what()).equals(line.crop());
  }

  /** What each shift of a line fed. */
  private Map<ShiftRecord, Double> fedKg(Line line) {
    Map<String, Double> byShift = new HashMap<>();
    for (MadeRecord row : records.made()) {
      if (feeds(row, line)) {
        byShift.merge(row.date() + "|" + row.shift(), fedKg(row), Double::sum);
      }
    }
    Map<ShiftRecord, Double> fed = new LinkedHashMap<>();
    for (ShiftRecord shift : shifts(line)) {
      fed.put(shift, byShift.getOrDefault(shift.date() + "|" + shift.shift(), 0.0));
    }
    return fed;
  }

  private List<FedPart> fed(Line line) {
    List<MadeRecord> rows = records.made().stream().filter(row -> feeds(row, line)).toList();
    return FedPart.of(fedKg(line), rows, this::fedKg);
  }

  /** As weighed at the table, else by count: a bale as it was weighed in, less the yard's loss. */
  double fedKg(MadeRecord row) {
    return Double.isNaN(row.massKg())
        ? row.count() * baleKg.get(row.what()) * yard.kept(row.what(), row.date(), row.shift())
        : row.massKg();
  }

  /**
   * What each shift of a line fed over the hours in which its feeder was crewed and no logged stop
   * held it, in kg and seconds.
   */
  List<double[]> fedByRunning(Line line) {
    Spans running = running(line.feed(), Set.of(line.name()));
    return fedKg(line).entrySet().stream()
        .map(
            entry ->
                new double[] {
                  entry.getValue(), within(running, FedPart.whole(entry.getKey())).totalS()
                })
        .filter(pair -> pair[0] > 0 && pair[1] > 0)
        .toList();
  }

  double fedKg() {
    return plant.lines().stream()
        .flatMap(line -> fedKg(line).values().stream())
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  /** Nothing where a line that uses the machine does not say what it fed. */
  private Optional<Count.Mass> mass(String machine, Set<String> only) {
    List<double[]> points = new ArrayList<>();
    List<FedPart> through = new ArrayList<>();
    for (Line line : lines(machine, only)) {
      if (!shifts(line).isEmpty() && fedKg(line).values().stream().noneMatch(kg -> kg > 0)) {
        return Optional.empty();
      }
      double load = loads.of(line.name(), machine) * weighed(line, machine);
      if (load > 0) {
        fed(line).forEach(fed -> through.add(fed.times(load)));
      }
    }
    through.sort(java.util.Comparator.comparingDouble(fed -> fed.of().fromS()));
    double total = 0;
    for (FedPart fed : through) {
      total = spread(points, running(machine, only), fed, total);
    }
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Count.Mass(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray()));
  }

  /**
   * What was weighed behind a machine that a bin feeds, over what the plant file's shares make of
   * what was fed.
   */
  private double weighed(Line line, String machine) {
    if (!stretches.isBehindABin(line.name(), machine)) {
      return 1;
    }
    Set<String> together = stretches.of(line.name(), machine);
    Set<String> products = new java.util.HashSet<>();
    double planned = 0;
    for (hurdline.plant.Step step : line.steps()) {
      if (together.contains(step.machine()) && step.packs().isPresent()) {
        planned +=
            loads.of(line.name(), step.machine())
                * fedKg(line).values().stream().mapToDouble(Double::doubleValue).sum();
        products.addAll(products(line, step));
      }
    }
    double made =
        records.made().stream()
            .filter(row -> !row.isFed() && products.contains(row.what()))
            .mapToDouble(this::massKg)
            .sum();
    return planned > 0 && made > 0 ? made / planned : 1;
  }

  static Set<String> products(Line line, hurdline.plant.Step step) {
    if (step.packs().orElseThrow() instanceof hurdline.plant.Step.PacksProduct one) {
      return Set.of(one.product());
    }
    String mill = ((hurdline.plant.Step.PacksFromMill) step.packs().orElseThrow()).mill();
    return line.steps().stream()
        .filter(at -> at.machine().equals(mill))
        .flatMap(at -> at.makes().values().stream())
        .collect(java.util.stream.Collectors.toSet());
  }

  /** As weighed, else by count and the package's mass. */
  double massKg(MadeRecord row) {
    if (!Double.isNaN(row.massKg())) {
      return row.massKg();
    }
    return plant.products().stream()
        .filter(product -> product.name().equals(row.what()))
        .flatMap(product -> plant.packagings(product).stream())
        .mapToDouble(packaging -> packaging.massKg() * row.count())
        .findFirst()
        .orElse(0);
  }

  /**
   * Adds a mass evenly over those of its hours in which the machine ran, or over all of them where
   * it never did.
   */
  private static double spread(List<double[]> points, Spans running, FedPart fed, double before) {
    Spans ran = within(running, fed.of());
    Spans over = ran.isEmpty() ? Spans.of(fed.worked()) : ran;
    double total = before;
    for (Span span : over.all()) {
      double lastS = points.isEmpty() ? Double.NEGATIVE_INFINITY : points.get(points.size() - 1)[0];
      if (span.fromS() > lastS) {
        points.add(new double[] {span.fromS(), total});
      }
      total += fed.kg() * (span.toS() - span.fromS()) / over.totalS();
      if (span.toS() > lastS) {
        points.add(new double[] {span.toS(), total});
      }
    }
    return total;
  }

  private static Spans within(Spans spans, Span of) {
    return Spans.of(
        spans.all().stream()
            .filter(span -> span.toS() > of.fromS() && span.fromS() < of.toS())
            .map(
                span ->
                    new Span(Math.max(span.fromS(), of.fromS()), Math.min(span.toS(), of.toS())))
            .toList());
  }
}
