package hurdline.plant;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something the plant sells or pays to be rid of.
 *
 * @param pricePerKg money per mass at its moisture basis; below 0 where it costs money
 * @param packaging name of the package it is sold in
 * @param sellsOrdersOnly whether only ordered mass earns
 * @param freight absent where buyers fetch it
 * @param cleanliness what each package's price goes by; absent where all are paid alike
 * @param market absent where all that is made finds a buyer at the price
 * @param storage absent where it is sold as it is made
 * @param purge absent where the first packages after a changeover are like any other
 */
public record Product(
    String name,
    double pricePerKg,
    Optional<String> packaging,
    List<Order> orders,
    boolean sellsOrdersOnly,
    Moisture moisture,
    Optional<Freight> freight,
    Optional<Cleanliness> cleanliness,
    Optional<Market> market,
    Optional<Storage> storage,
    Optional<Purge> purge) {
  public Product {
    orders = List.copyOf(orders);
    Check.finite("pricePerKg", pricePerKg);
  }

  /** The same product without a price and with its haul at no cost. */
  public Product withoutPrices() {
    return new Product(
        name,
        0,
        packaging,
        orders,
        sellsOrdersOnly,
        moisture,
        freight.map(Freight::withoutPrice),
        cleanliness,
        market,
        storage.map(Storage::withoutPrices),
        purge);
  }

  /** The same product with other orders. */
  public Product withOrders(List<Order> others) {
    return with(others, storage, purge);
  }

  /** The same product with so many purge packages of a campaign under way still to come. */
  public Product withPurgeUnderWay(int packages) {
    return with(orders, storage, purge.map(of -> new Purge(of.packages(), of.factor(), packages)));
  }

  /** The same product with so many packages in its store on the first day. */
  public Product withOpening(int packages) {
    return with(orders, storage.map(of -> of.opening(packages)), purge);
  }

  private Product with(List<Order> others, Optional<Storage> stored, Optional<Purge> purged) {
    return new Product(
        name,
        pricePerKg,
        packaging,
        others,
        sellsOrdersOnly,
        moisture,
        freight,
        cleanliness,
        market,
        stored,
        purged);
  }

  /** Its orders in the order in which they are met. */
  public List<Order> ordersByDue() {
    return orders.stream().sorted(Comparator.comparing(Order::due)).toList();
  }

  /** Whether any of it has a price. */
  public boolean isPriced() {
    return pricePerKg != 0 || orders.stream().anyMatch(order -> order.pricePerKg().orElse(0) != 0);
  }

  /**
   * @param massKg at the product's moisture basis
   * @param due the order is due at 24:00 of this date
   * @param latePerDay money for each day begun after it
   * @param pricePerKg in place of the product's own price
   */
  public record Order(double massKg, LocalDate due, double latePerDay, OptionalDouble pricePerKg) {
    public Order {
      Check.above0("massKg", massKg);
      Check.notBelow0("latePerDay", latePerDay);
      pricePerKg.ifPresent(price -> Check.finite("pricePerKg", price));
    }
  }

  /**
   * At which moisture it is sold.
   *
   * @param basis absent where {@link SellingBasis} finds it
   * @param atMost what is wetter fills no order and loses part of its price; absent where all
   *     moistures sell alike
   * @param dock that part, a share; at 1 what is wetter is not sold
   */
  public record Moisture(Optional<Basis> basis, OptionalDouble atMost, double dock) {
    public Moisture {
      atMost.ifPresent(share -> Check.part("atMost", share));
      Check.share("dock", dock);
    }

    /** As nothing is said of it. */
    public static Moisture notSaid() {
      return new Moisture(Optional.empty(), OptionalDouble.empty(), 1);
    }
  }
}
