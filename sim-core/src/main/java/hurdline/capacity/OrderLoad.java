package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Product;
import hurdline.plant.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What orders take of what can be made.
 *
 * <p>Products of one mill that works to orders share its time, so their orders add up; any other
 * product stands alone, at the line's mean turnout. For a product that a line with expected
 * capacity C, H scheduled hours and the mean crop F makes at y per mass fed, an order of mass m
 * takes m/Σ(y·C·H) of the hours and m/Σ(y·F) of the crop, summed over the lines.
 *
 * @param products whose orders these are
 * @param orderedKg in all
 * @param ofHours share of the hours; infinite where nothing of a product is made
 * @param ofCrop share of the crop
 * @param firstLate due date of the first order that the hours before it do not allow, if any
 */
public record OrderLoad(
    List<String> products,
    double orderedKg,
    double ofHours,
    double ofCrop,
    Optional<LocalDate> firstLate) {

  public OrderLoad {
    products = List.copyOf(products);
  }

  /** What could be made of one product alone, kg: with all hours, with all crop. */
  private record Possible(double byHoursKg, double byCropKg) {}

  /** One entry for each set of products whose orders share a mill, in the file's order. */
  public static List<OrderLoad> of(CapacityPlant plant, List<Line> lines) {
    List<OrderLoad> all = new ArrayList<>();
    Set<String> done = new LinkedHashSet<>();
    for (Product product : plant.layout.plant.products()) {
      if (!product.orders().isEmpty() && done.add(product.name())) {
        List<String> together = together(plant, lines, product.name());
        done.addAll(together);
        all.add(of(plant, lines, together));
      }
    }
    return all;
  }

  private static OrderLoad of(CapacityPlant plant, List<Line> lines, List<String> together) {
    record Due(LocalDate date, double kg, double ofHours) {}
    List<Due> dues = new ArrayList<>();
    double orderedKg = 0;
    double ofHours = 0;
    double ofCrop = 0;
    for (String name : together) {
      Possible possible = possible(plant, lines, name);
      for (Product.Order order : product(plant, name).orders()) {
        dues.add(new Due(order.due(), order.massKg(), order.massKg() / possible.byHoursKg));
        orderedKg += order.massKg();
        ofHours += order.massKg() / possible.byHoursKg;
        ofCrop += order.massKg() / possible.byCropKg;
      }
    }
    dues.sort(Comparator.comparing(Due::date));
    List<Line> makers =
        lines.stream()
            .filter(line -> together.stream().anyMatch(name -> makes(plant, line, name)))
            .toList();
    double sum = 0;
    Optional<LocalDate> firstLate = Optional.empty();
    for (Due due : dues) {
      sum += due.ofHours;
      if (firstLate.isEmpty() && sum > hoursBefore(plant, makers, due.date) * (1 + 1e-9)) {
        firstLate = Optional.of(due.date);
      }
    }
    return new OrderLoad(together, orderedKg, ofHours, ofCrop, firstLate);
  }

  /**
   * Products with orders among those that mills by orders make beside this one; it alone elsewhere.
   */
  private static List<String> together(CapacityPlant plant, List<Line> lines, String product) {
    Set<String> names = new LinkedHashSet<>();
    names.add(product);
    for (Line line : lines) {
      for (Step step : line.steps()) {
        if (isByOrders(step) && step.makes().containsValue(product)) {
          step.makes().values().stream()
              .filter(name -> !product(plant, name).orders().isEmpty())
              .forEach(names::add);
        }
      }
    }
    return List.copyOf(names);
  }

  private static boolean isByOrders(Step step) {
    return step.mix() instanceof Step.ByOrders;
  }

  private static Product product(CapacityPlant plant, String name) {
    return plant.layout.plant.products().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Possible possible(CapacityPlant plant, List<Line> lines, String product) {
    double byHoursKg = 0;
    Map<String, Double> byCropKg = new HashMap<>();
    for (Line line : lines) {
      LineCapacity capacity = madeBy(plant, line, product);
      double perKgFed = capacity.fitKgPerKgFed(product);
      if (perKgFed > 0) {
        byHoursKg += perKgFed * capacity.expected(Freed.nothing()).kgPerS() * capacity.scheduledS();
        byCropKg.merge(
            line.crop(), perKgFed * CropSupply.meanOfFormsKg(plant, line.crop()), Math::max);
      }
    }
    return new Possible(byHoursKg, byCropKg.values().stream().mapToDouble(kg -> kg).sum());
  }

  private static boolean makes(CapacityPlant plant, Line line, String product) {
    return madeBy(plant, line, product).fitKgPerKgFed(product) > 0;
  }

  /** The line with the screen of this product in a mill that works to orders. */
  private static LineCapacity madeBy(CapacityPlant plant, Line line, String product) {
    CompiledLines layout = plant.layout;
    for (Step step : line.steps()) {
      int m = layout.naming.machines.find(step.machine());
      if (isByOrders(step) && m >= 0 && layout.machine[m] instanceof Machine.HammerMill mill) {
        for (int s = 0; s < mill.screens().size(); s++) {
          if (product.equals(step.makes().get(mill.screens().get(s).name()))) {
            return new LineCapacity(plant, line, new ScreenChoices(plant, line).choices(m, s));
          }
        }
      }
    }
    return plant.line(line);
  }

  /** Share of all scheduled hours of the lines that lies before the end of a date. */
  private static double hoursBefore(CapacityPlant plant, List<Line> lines, LocalDate date) {
    double before = 0;
    double all = 0;
    for (Line line : lines) {
      int l = plant.layout.naming.lines.index(line.name());
      before +=
          plant.lineHours(l).lengthBeforeS(plant.roster.midnightS(plant.roster.day(date) + 1));
      all += plant.lineHours(l).lengthS();
    }
    return all > 0 ? before / all : 0;
  }
}
