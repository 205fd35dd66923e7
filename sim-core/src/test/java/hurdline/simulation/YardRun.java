package hurdline.simulation;

import hurdline.account.IntakeBooks;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.TimeWindows;
import hurdline.compiled.YardPlan;
import hurdline.event.FutureEvents;
import hurdline.event.Resources;
import hurdline.plant.Plant;
import hurdline.plant.Resource;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.yard.Bales;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;

/**
 * A yard and its deliveries without a line: the smallest loop that simulates them, with scripted
 * lifts.
 */
final class YardRun {
  static final double MIN = 60;
  static final double H = 3600;
  static final double D = 86_400;
  private static final int JOBS = 100;

  final YardPlan plan;
  final Roster roster;
  final IntakeBooks books;
  final Bales bales;
  final Stacking stacking;
  final Hauling hauling;
  final Resources resources;
  final List<String> resourceNames;
  final List<String> notes = new ArrayList<>();

  /** Allocated while the last replication's events were simulated. */
  long loopBytes;

  private final FutureEvents pending = new FutureEvents(2);
  private final TreeMap<Double, DoubleConsumer> script = new TreeMap<>();
  private final TimeWindows[] receiving;

  YardRun(Plant plant) {
    plan = YardPlan.of(plant);
    roster = Roster.of(plant);
    Haulage haulage = Haulage.of(plant, plan, roster);
    List<Resource> byName =
        plant.resources().stream().sorted(Comparator.comparing(Resource::name)).toList();
    resourceNames = byName.stream().map(Resource::name).toList();
    resources =
        new Resources(byName.stream().mapToInt(Resource::count).toArray(), 1 + plan.crops());
    books = new IntakeBooks(plan, haulage.fields());
    bales = new Bales(plan.components(), plan.attributes().size());
    stacking = new Stacking(plan, bales, books);
    hauling = new Hauling(plan, haulage, bales, stacking, resources, pending, 0, 1, JOBS, 0, books);
    receiving = new TimeWindows[plan.crops()];
    for (int crop = 0; crop < plan.crops(); crop++) {
      receiving[crop] = roster.receiving(plan.crop(crop));
    }
  }

  static YardRun of(String yaml) {
    return new YardRun(PlantFile.of("test", yaml).plant());
  }

  /** A small plant with a known answer. */
  static YardRun exact(String name) {
    String path = "/line-configs/exact/" + name + ".yaml";
    try (InputStream in = YardRun.class.getResourceAsStream(path)) {
      return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Something that is done at an instant, after what else ends then. */
  YardRun at(double atS, DoubleConsumer what) {
    script.merge(atS, what, DoubleConsumer::andThen);
    return this;
  }

  YardRun traced() {
    hauling.trace(
        (clockS, where, what, amount) ->
            notes.add(clockS + " " + where + " " + what.word() + " " + amount));
    return this;
  }

  YardRun run() {
    return run(1, 1);
  }

  YardRun run(long seed, int replication) {
    bales.reset();
    books.reset();
    resources.reset();
    RandomStreams streams = new RandomStreams(seed);
    stacking.reset(streams, replication);
    hauling.reset(streams, replication);
    double endS = roster.horizonS();
    long before = allocatedBytes();
    for (double nowS = 0; nowS <= endS; nowS = nextS(nowS)) {
      instant(nowS);
    }
    loopBytes = allocatedBytes() - before;
    resources.finish(endS);
    hauling.finish(endS);
    stacking.finish(endS);
    books.finish(endS);
    return this;
  }

  private static long allocatedBytes() {
    return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
        .getThreadAllocatedBytes(Thread.currentThread().getId());
  }

  private double nextS(double nowS) {
    double nextS = pending.nextS();
    for (TimeWindows hours : receiving) {
      nextS = Math.min(nextS, hours.nextChangeS(nowS));
    }
    Double scripted = script.isEmpty() ? null : script.higherKey(nowS);
    return scripted == null ? nextS : Math.min(nextS, scripted);
  }

  private void instant(double nowS) {
    DoubleConsumer scripted = script.isEmpty() ? null : script.get(nowS);
    do {
      hauling.endsDue(nowS);
      if (scripted != null) {
        scripted.accept(nowS);
        scripted = null;
      }
      for (int crop = 0; crop < receiving.length; crop++) {
        resources.open(1 + crop, receiving[crop].in(nowS), nowS);
      }
      hauling.arrivalsDue(nowS);
      hauling.startTrips(nowS);
      for (int job = resources.nextToBegin(nowS); job >= 0; job = resources.nextToBegin(nowS)) {
        hauling.jobBegins(job - JOBS, nowS);
      }
    } while (pending.nextS() <= nowS + FutureEvents.instantS());
  }

  /** Lifts a bale at once. */
  int lift(int crop, double nowS) {
    int bale = stacking.pick(crop);
    stacking.leave(bale, nowS);
    return bale;
  }

  int resource(String name) {
    return resourceNames.indexOf(name);
  }

  double busyShare(String resource) {
    int r = resource(resource);
    return resources.books().busyS(r) / (resources.books().hoursS(r) * resources.count(r));
  }

  double waitMeanS(String resource) {
    int r = resource(resource);
    return resources.books().waitsS(r) / resources.books().requests(r);
  }
}
