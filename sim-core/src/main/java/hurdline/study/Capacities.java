package hurdline.study;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Capacity;
import hurdline.answer.LineFlow;
import hurdline.capacity.CapacityPlant;
import hurdline.capacity.Freed;
import hurdline.capacity.Limit;
import hurdline.capacity.LineCapacity;
import hurdline.capacity.OrderLoad;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Cause;
import hurdline.plant.Line;
import hurdline.simulation.CompiledPlant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rated and expected capacity of each line of a season as an answer tells it. */
public final class Capacities {
  private static final double T_PER_H = 3.6;
  private static final double TONNE_KG = 1000;

  private final PlantOutline outlines;
  private final CompiledLines layout;
  private final CapacityPlant plant;
  private final Map<String, LineCapacity> lines = new LinkedHashMap<>();

  public Capacities(CompiledPlant stage, PlantOutline outlines) {
    this.outlines = outlines;
    layout = stage.layout();
    plant = new CapacityPlant(layout, stage.roster(), stage.haulage());
    outlines.lines().forEach(line -> lines.put(line.name(), plant.line(line)));
  }

  /** What is next when what limits a line by expected capacity does not. */
  Capacity byFormula() {
    return capacity(Map.of());
  }

  /** Each line's flows when it is fed what its expected capacity is. */
  List<LineFlow> flows() {
    return new LineFlows(layout, outlines, new ExpectedFlows(layout, lines)).flows();
  }

  /** What is next when what limited each line longest in replications does not. */
  public Capacity after(List<BottleneckRow> holders) {
    Map<String, String> causes = new LinkedHashMap<>();
    lines.forEach((line, capacity) -> causes.put(line, longest(line, holders)));
    return capacity(causes);
  }

  /** A machine of a line and those that are alike and in parallel to it. */
  public List<String> twins(String line, String machine) {
    LineCapacity capacity = lines.get(line);
    return capacity != null && capacity.has(machine) ? capacity.twins(machine) : List.of(machine);
  }

  private Capacity capacity(Map<String, String> causes) {
    List<Capacity.Line> rows = new ArrayList<>();
    for (Line line : outlines.lines()) {
      LineCapacity capacity = lines.get(line.name());
      Limit expected = capacity.expected(Freed.nothing());
      String cause = causes.getOrDefault(line.name(), cause(expected));
      rows.add(line(line, capacity, expected, next(capacity, cause)));
    }
    return new Capacity(
        rows, OrderLoad.of(plant, outlines.lines()).stream().map(this::orders).toList());
  }

  private static String cause(Limit expected) {
    return expected.resource().isEmpty()
        ? expected.machines().stream().findFirst().orElse("")
        : Cause.RESOURCE.of(expected.resource());
  }

  /** The first cause of what limited the line longest, all causes of a machine taken together. */
  private static String longest(String line, List<BottleneckRow> holders) {
    Map<String, Double> hours = new LinkedHashMap<>();
    Map<String, String> first = new LinkedHashMap<>();
    for (BottleneckRow row : holders) {
      if (row.line().equals(line)) {
        String of = Cause.machinesOf(row.cause()).stream().findFirst().orElse(row.cause());
        hours.merge(of, row.hours(), Double::sum);
        first.putIfAbsent(of, row.cause());
      }
    }
    return hours.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(longest -> first.get(longest.getKey()))
        .orElse("");
  }

  private static List<Capacity.Next> next(LineCapacity capacity, String cause) {
    if (cause.isEmpty()) {
      return List.of();
    }
    List<String> named = Cause.machinesOf(cause);
    if (!named.isEmpty() && capacity.has(named.get(0))) {
      List<String> freed = capacity.twins(named.get(0));
      return List.of(next(capacity, cause, freed, Freed.machines(Set.copyOf(freed))));
    }
    return switch (Cause.kindOf(cause)) {
      case RESOURCE -> {
        String resource = Cause.resourceOf(cause);
        yield List.of(next(capacity, cause, List.of(resource), Freed.resource(resource)));
      }
      case LIFT -> List.of(next(capacity, cause, List.of(), Freed.ofLifts()));
      default -> List.of();
    };
  }

  private static Capacity.Next next(
      LineCapacity capacity, String cause, List<String> names, Freed freed) {
    return new Capacity.Next(
        cause, names, limit(capacity.rated(freed)), limit(capacity.expected(freed)));
  }

  private static Capacity.Limit limit(Limit limit) {
    return new Capacity.Limit(tPerH(limit.kgPerS()), limit.machines(), limit.resource());
  }

  private static double tPerH(double kgPerS) {
    return kgPerS < Double.POSITIVE_INFINITY ? T_PER_H * kgPerS : Double.NaN;
  }

  private Capacity.Line line(
      Line line, LineCapacity capacity, Limit expected, List<Capacity.Next> next) {
    double feedRate = tPerH(capacity.ratedKgPerS(line.feed()));
    return new Capacity.Line(
        line.name(),
        line.crop(),
        line.feed(),
        feedRate,
        capacity.scheduledS() / 3600,
        new Capacity.Limits(limit(capacity.rated(Freed.nothing())), limit(expected), next),
        outlines.machines(line).stream().map(name -> machine(capacity, name, feedRate)).toList(),
        capacity.resources().stream().map(name -> resource(capacity, name, feedRate)).toList());
  }

  private Capacity.Machine machine(LineCapacity capacity, String name, double feedRateTPerH) {
    double expected = tPerH(capacity.expectedKgPerS(name));
    return new Capacity.Machine(
        name,
        outlines.kind(name),
        capacity.load(name),
        tPerH(capacity.limitKgPerS(name)),
        tPerH(capacity.ratedKgPerS(name)),
        expected,
        expected / feedRateTPerH - 1);
  }

  private static Capacity.Resource resource(
      LineCapacity capacity, String name, double feedRateTPerH) {
    double expected = tPerH(capacity.resourceKgPerS(name));
    return new Capacity.Resource(name, expected, expected / feedRateTPerH - 1);
  }

  private Capacity.Orders orders(OrderLoad load) {
    return new Capacity.Orders(
        load.products(),
        load.orderedKg() / TONNE_KG,
        load.ofHours(),
        load.ofCrop(),
        load.firstLate().map(Object::toString).orElse(""));
  }
}
