package hurdline.plant.yaml;

import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.plant.Product.Order;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.LocalDate;
import java.util.Map;

/** Reads products, their orders and packages. */
final class ProductBinder {
  private static final Map<String, Boolean> SELLS = Map.of("all", false, "orders", true);

  private ProductBinder() {}

  static Product product(String name, At at) {
    Fields f = at.fields(Shape.PRODUCT);
    return new Product(
        name,
        Quantities.of(f.at("price"), Dimension.PRICE, Range.ANY, 0),
        Words.optionalName(f.at("package"), "a package"),
        f.at("orders").list("orders", ProductBinder::order),
        Words.choice(f.at("sells"), SELLS, false));
  }

  private static Order order(At at) {
    Fields f = at.fields(Shape.ORDER);
    return new Order(
        Quantities.of(f.at("mass"), Dimension.MASS, Range.ABOVE_0, 1),
        Dates.date(f.at("due")).orElse(LocalDate.EPOCH),
        Quantities.of(f.at("late"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0)
            * FileUnit.DAY.inSi(),
        Quantities.optional(f.at("price"), Dimension.PRICE, Range.ANY));
  }

  static Packaging packaging(String name, At at) {
    Fields f = at.fields(Shape.PACKAGE);
    return new Packaging(
        name,
        Quantities.of(f.at("mass"), Dimension.MASS, Range.ABOVE_0, 1),
        Amounts.of(f.at("change"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0),
        Words.optionalName(f.at("needs"), "a resource"));
  }
}
