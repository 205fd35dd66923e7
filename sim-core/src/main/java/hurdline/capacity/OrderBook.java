package hurdline.capacity;

import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Product;
import hurdline.plant.Step;
import java.time.LocalDate;
import java.util.List;

/**
 * The orders of one mill of one line, by screen, and what the line can be fed while a screen is in.
 */
final class OrderBook {
  private final CapacityPlant plant;
  private final int mill;
  private final Step step;
  private final List<String> screens;
  private final LineCapacity[] capacity; // by screen, worked out when asked for
  private final Line line;

  OrderBook(CapacityPlant plant, Line line, int mill, Step step) {
    this.plant = plant;
    this.line = line;
    this.mill = mill;
    this.step = step;
    screens =
        ((Machine.HammerMill) plant.layout.machine[mill])
            .screens().stream().map(Machine.Screen::name).toList();
    capacity = new LineCapacity[screens.size()];
  }

  /** What the line can be fed with this screen in. */
  double kgPerS(int screen) {
    return with(screen).expected(Freed.nothing()).kgPerS();
  }

  private LineCapacity with(int screen) {
    if (capacity[screen] == null) {
      capacity[screen] =
          new LineCapacity(plant, line, new ScreenChoices(plant, line).choices(mill, screen));
    }
    return capacity[screen];
  }

  /** What must be fed for all orders of a screen's product; 0 without an order. */
  double fedForOrdersKg(int screen) {
    String product = step.makes().get(screens.get(screen));
    double orderedKg = orders(product).stream().mapToDouble(Product.Order::massKg).sum();
    return orderedKg > 0 ? orderedKg / with(screen).fitKgPerKgFed(product) : 0;
  }

  private List<Product.Order> orders(String product) {
    return plant.layout.plant.products().stream()
        .filter(one -> one.name().equals(product))
        .flatMap(one -> one.orders().stream())
        .toList();
  }

  /**
   * The screen of the order that is due first, of several the first in the file; 0 without an
   * order.
   */
  int firstScreen() {
    int first = 0;
    LocalDate due = LocalDate.MAX;
    for (int s = 0; s < screens.size(); s++) {
      for (Product.Order order : orders(step.makes().get(screens.get(s)))) {
        if (order.due().isBefore(due)) {
          due = order.due();
          first = s;
        }
      }
    }
    return first;
  }
}
