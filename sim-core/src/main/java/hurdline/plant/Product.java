package hurdline.plant;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something the plant sells or pays to be rid of.
 *
 * @param pricePerKg money per as-is mass; below 0 where it costs money
 * @param packaging name of the package it is sold in
 * @param sellsOrdersOnly whether only ordered mass earns
 */
public record Product(
    String name,
    double pricePerKg,
    Optional<String> packaging,
    List<Order> orders,
    boolean sellsOrdersOnly) {
  public Product {
    orders = List.copyOf(orders);
  }

  /**
   * @param due the order is due at 24:00 of this date
   * @param latePerDay money for each day begun after it
   * @param pricePerKg in place of the product's own price
   */
  public record Order(double massKg, LocalDate due, double latePerDay, OptionalDouble pricePerKg) {}
}
