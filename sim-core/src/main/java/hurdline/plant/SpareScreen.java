package hurdline.plant;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a mill that works to orders makes while none is open, where the file does not say: the
 * screen whose product sells without an order, best price first, then in the order of the mill's
 * screens.
 *
 * <p>A product sells without an order if it is not sold on orders only and its price is not below
 * 0.
 */
public final class SpareScreen {
  private SpareScreen() {}

  /**
   * Shares of the screens that are milled while no order is open; empty where the mill stands
   * still.
   *
   * @param step of the mill, with a mix by orders
   */
  public static Optional<Step.Shares> of(Plant plant, Machine.HammerMill mill, Step step) {
    Optional<Step.WithoutOrder> then =
        step.mix() instanceof Step.ByOrders mix ? mix.then() : Optional.empty();
    if (then.isPresent()) {
      return then.filter(Step.Shares.class::isInstance).map(Step.Shares.class::cast);
    }
    return mill.screens().stream()
        .map(Machine.Screen::name)
        .filter(screen -> made(plant, step, screen).filter(SpareScreen::sells).isPresent())
        .max(inFileOrder(plant, mill, step))
        .map(screen -> new Step.Shares(List.of(new Step.MixShare(screen, 1))));
  }

  /** What every mill of the plant that works to orders makes while none is open, line by line. */
  public static List<Optional<Step.Shares>> ofAll(Plant plant) {
    Names names = new Names(plant);
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .filter(step -> step.mix() instanceof Step.ByOrders)
        .map(step -> names.mill(step.machine()).flatMap(mill -> of(plant, mill, step)))
        .toList();
  }

  private static Comparator<String> inFileOrder(Plant plant, Machine.HammerMill mill, Step step) {
    List<String> screens = mill.screens().stream().map(Machine.Screen::name).toList();
    return Comparator.<String>comparingDouble(
            screen -> made(plant, step, screen).orElseThrow().pricePerKg())
        .thenComparing(Comparator.<String>comparingInt(screens::indexOf).reversed());
  }

  private static boolean sells(Product product) {
    return !product.sellsOrdersOnly() && product.pricePerKg() >= 0;
  }

  private static Optional<Product> made(Plant plant, Step step, String screen) {
    return plant.products().stream()
        .filter(product -> product.name().equals(step.makes().get(screen)))
        .findFirst();
  }
}
