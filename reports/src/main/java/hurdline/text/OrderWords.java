package hurdline.text;

import hurdline.answer.Capacity;
import java.util.List;
import java.util.function.UnaryOperator;

/** Orders against what the crop and the hours can make. */
public final class OrderWords {
  private final Capacity capacity;
  private final Wording wording;

  public OrderWords(Capacity capacity, Wording wording) {
    this.capacity = capacity;
    this.wording = wording;
  }

  /** One sentence for each set of orders. */
  public List<String> all() {
    return capacity.orders().stream()
        .map(orders -> told(orders, wording.titles()::product))
        .toList();
  }

  /** Those that cannot be met, or not in time. */
  public List<String> warnings() {
    return capacity.orders().stream()
        .filter(orders -> !(orders.share() <= 1) || !orders.firstLate().isEmpty())
        .map(orders -> "orders for " + told(orders, wording.titles()::productInText))
        .toList();
  }

  private String told(Capacity.Orders orders, UnaryOperator<String> named) {
    String of =
        CapacityWords.and(orders.products().stream().map(named).toList())
            + ", "
            + wording.amount(orders.orderedT(), "t");
    if (Double.isInfinite(orders.share())) {
      return of + ": cannot be met, since none is made";
    }
    String takes =
        ": take "
            + percent(orders.ofCrop())
            + " of what the mean crop can make and "
            + percent(orders.ofHours())
            + " of what the scheduled hours can";
    return of + takes + verdict(orders);
  }

  private String verdict(Capacity.Orders orders) {
    if (orders.share() > 1) {
      double leftT = orders.orderedT() * (1 - 1 / orders.share());
      return "; they cannot all be met, some " + wording.rough(leftT, "t") + " will be missing";
    }
    return orders.firstLate().isEmpty()
        ? ""
        : "; what is due by " + orders.firstLate() + " cannot be met in time";
  }

  private String percent(double share) {
    return wording.roughly(share, "share") + " %";
  }
}
