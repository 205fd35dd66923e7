package hurdline.plant.yaml;

import hurdline.plant.Basis;
import hurdline.plant.Cleanliness;
import hurdline.plant.Freight;
import hurdline.plant.Market;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.plant.Product.Moisture;
import hurdline.plant.Product.Order;
import hurdline.plant.Purge;
import hurdline.plant.Storage;
import hurdline.plant.Store;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads products, their orders and packages. */
final class ProductBinder {
  private static final String AS_IS = "as is";
  private static final Map<String, Market.Per> PERIODS =
      Map.of("month", Market.Per.MONTH, "year", Market.Per.YEAR);
  private static final Map<String, Boolean> SELLS = Map.of("all", false, "orders", true);

  private ProductBinder() {}

  static Product product(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.PRODUCT);
    return new Product(
        name,
        Quantities.of(f.at("price"), Dimension.PRICE, Range.ANY, 0),
        Words.optionalName(f.at("package"), "a package"),
        f.at("orders").list("orders", ProductBinder::order),
        Words.choice(f.at("sells"), SELLS, false),
        moisture(f.at("moisture")),
        freight(f.at("freight")),
        cleanliness(f.at("cleanliness")),
        market(f.at("market")),
        storage(f),
        purge(f.at("purge")));
  }

  private static Optional<Freight> freight(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    if (!at.isMap()) {
      return Optional.of(
          new Freight.PerMass(Quantities.of(at, Dimension.PRICE, Range.NOT_BELOW_0, 0)));
    }
    Fields f = at.fields(MapKeys.FREIGHT);
    return Optional.of(
        new Freight.PerLoad(
            Quantities.of(f.at("load"), Dimension.MASS, Range.ABOVE_0, 1),
            f.has("packages")
                ? OptionalInt.of(Numbers.whole(f.at("packages"), 1, 1))
                : OptionalInt.empty(),
            Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0)));
  }

  static Store store(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.STORE);
    return new Store(name, Quantities.of(f.at("holds"), Dimension.MASS, Range.ABOVE_0, 1));
  }

  private static Optional<Storage> storage(Fields f) {
    Optional<String> store = Words.optionalName(f.at("store"), "a store");
    Optional<Storage.PickUps> pickUps = pickUps(f.at("pick_ups"));
    OptionalDouble worth = Quantities.optional(f.at("worth"), Dimension.PRICE, Range.ANY);
    for (String key : List.of("pick_ups", "worth")) {
      if (f.has(key) && !f.has("store")) {
        f.at(key)
            .wrong(
                "\"" + key + "\" of a product that has no store",
                "a \"store\" beside it, such as \"store: shed\"");
      }
    }
    return store.map(name -> new Storage(name, pickUps, worth, 0));
  }

  private static Optional<Storage.PickUps> pickUps(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.PICK_UPS);
    return Optional.of(
        new Storage.PickUps(
            Dates.weekdays(f.at("days")),
            Dates.clock(f.at("at")).orElse(0),
            Quantities.of(f.at("load"), Dimension.MASS, Range.ABOVE_0, 1),
            f.has("at_most") ? Numbers.whole(f.at("at_most"), 1, 1) : Integer.MAX_VALUE));
  }

  private static Optional<Cleanliness> cleanliness(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.CLEANLINESS);
    boolean inSteps = Curves.isInSteps(at, f, "[[2 %, 1.05], [10 %, 0.8]]");
    return Optional.of(
        new Cleanliness(
            Words.name(f.at("component"), "a component"),
            inSteps,
            Curves.onPrice(f.at(inSteps ? "steps" : "line"))));
  }

  private static Optional<Market> market(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.MARKET);
    return Optional.of(
        new Market(
            Words.choice(f.at("per"), PERIODS, Market.Per.MONTH), Curves.onMarket(f.at("beyond"))));
  }

  private static Optional<Purge> purge(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.PURGE);
    return Optional.of(
        new Purge(
            Numbers.whole(f.at("packages"), 1, 1),
            Quantities.of(f.at("factor"), Dimension.SHARE, Range.SHARE, 0)));
  }

  private static Moisture moisture(NodeReader at) {
    if (!at.isMap()) {
      return new Moisture(basis(at), OptionalDouble.empty(), 1);
    }
    Fields f = at.fields(MapKeys.PRODUCT_MOISTURE);
    if (f.has("dock") && !f.has("at_most")) {
      f.at("dock")
          .wrong(
              "a \"dock\" without the moisture above which it is taken off",
              "\"at_most\" beside it, such as \"at_most: 15 %\"");
    }
    return new Moisture(
        basis(f.at("basis")),
        Quantities.optional(f.at("at_most"), Dimension.SHARE, Range.PART),
        Quantities.of(f.at("dock"), Dimension.SHARE, Range.SHARE, 1));
  }

  /** A moisture, or the words for none; empty where nothing is said. */
  static Optional<Basis> basis(NodeReader at) {
    if (at.scalar().filter(scalar -> scalar.text().equals(AS_IS)).isPresent()) {
      return Optional.of(new Basis.AsIs());
    }
    if (at.isGiven()
        && at.scalar().filter(scalar -> scalar.text().matches(".*[0-9].*")).isEmpty()) {
      at.wrong(
          at.shown() + " is no moisture to be paid at", "a share such as \"12 %\", or \"as is\"");
      return Optional.empty();
    }
    OptionalDouble share = Quantities.optional(at, Dimension.SHARE, Range.PART);
    return share.isPresent() ? Optional.of(new Basis.At(share.getAsDouble())) : Optional.empty();
  }

  private static Order order(NodeReader at) {
    Fields f = at.fields(MapKeys.ORDER);
    return new Order(
        Quantities.of(f.at("mass"), Dimension.MASS, Range.ABOVE_0, 1),
        Dates.date(f.at("due")).orElse(LocalDate.EPOCH),
        Quantities.of(f.at("late_penalty"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0)
            * FileUnit.DAY.inSi(),
        Quantities.optional(f.at("price"), Dimension.PRICE, Range.ANY));
  }

  static Packaging packaging(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.PACKAGE);
    return new Packaging(
        name,
        Quantities.of(f.at("mass"), Dimension.MASS, Range.ABOVE_0, 1),
        RandomQuantityReader.of(f.at("change"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0),
        Words.needs(f.at("needs")));
  }
}
