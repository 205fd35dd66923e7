package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Counted;
import hurdline.unit.Dimension;
import hurdline.unit.Level;
import hurdline.unit.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what the values of a choice cost: one amount for each, or a price for each unit of the
 * value beyond what is there already, with a part that is paid at any size.
 */
final class ChoicePrice {
  private ChoicePrice() {}

  /**
   * The cost of each value; none where something is wrong, which is then said.
   *
   * @param texts of the values
   */
  static List<Double> costs(NodeReader at, List<String> texts) {
    if (at.isMap()) {
      return byAmount(at.fields(MapKeys.CHOICE_COST), texts);
    }
    if (at.tree().filter(Items.class::isInstance).isEmpty()) {
      at.wrong(
          at.shown() + " is neither a list nor a price for each unit",
          "a cost for each value, such as [0 USD, 9000 USD], or a price such as {per: 14 USD/bale}");
      return List.of();
    }
    List<NodeReader> costs = at.items("costs, one for each value");
    if (!texts.isEmpty() && costs.size() != texts.size()) {
      at.wrong(
          "it has "
              + Counted.of(costs.size(), "cost")
              + " and "
              + Counted.of(texts.size(), "value"),
          "one for each");
      return List.of();
    }
    return costs.stream()
        .map(cost -> Quantities.of(cost, Dimension.MONEY, Range.NOT_BELOW_0, 0))
        .toList();
  }

  private static List<Double> byAmount(Fields f, List<String> texts) {
    double fixed = Quantities.of(f.at("fixed"), Dimension.MONEY, Range.NOT_BELOW_0, 0);
    Optional<Level> above = SteppedValues.level(f.at("above"));
    Optional<Price> price = f.isWhole() ? price(f.at("per")) : Optional.empty();
    if (price.isEmpty() || f.has("above") && above.isEmpty()) {
      return List.of();
    }
    List<Double> costs = new ArrayList<>();
    for (String text : texts) {
      OptionalDouble cost =
          cost(text, above.map(Level::text).orElse(texts.get(0)), fixed, price.get());
      if (cost.isEmpty()) {
        f.at("per")
            .wrong(
                f.at("per").shown() + " cannot price the value \"" + text + "\"",
                "values, \"above\" and what the price is per of one kind, such as bales and \"14 USD/bale\"");
        return List.of();
      }
      costs.add(cost.getAsDouble());
    }
    return costs;
  }

  /** Empty where the amounts are not of one kind. */
  private static OptionalDouble cost(String text, String above, double fixed, Price price) {
    try {
      OptionalDouble more = price.units(Level.read(text), Level.read(above));
      if (more.isEmpty()) {
        return more;
      }
      double units = more.getAsDouble();
      return OptionalDouble.of(units > 0 ? fixed + price.money() * units : 0);
    } catch (QuantityException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * Money and what it is for.
   *
   * @param unit empty for each 1 of a factor or of a bare number
   */
  private record Price(double money, String unit) {
    /** How many units a value has beyond another; empty where they are not of one kind. */
    OptionalDouble units(Level value, Level start) {
      if (unit.isEmpty() != isPlain(value) || over(value, start).isEmpty()) {
        return OptionalDouble.empty();
      }
      return unit.isEmpty()
          ? over(value, start)
          : OptionalDouble.of(value.amount().in(unit) - start.amount().in(unit));
    }
  }

  /** {@code 14 USD/bale}, taken apart at its slash. */
  private static Optional<Price> price(NodeReader at) {
    if (at.scalar().isEmpty()) {
      at.wrong(at.shown() + " is no price", "one such as \"14 USD/bale\"");
      return Optional.empty();
    }
    String text = at.scalar().get().text();
    int slash = text.indexOf('/');
    Scalar money =
        new Scalar(slash < 0 ? text : text.substring(0, slash), true, at.scalar().get().place());
    OptionalDouble read = Quantities.read(at, money, Dimension.MONEY, Range.NOT_BELOW_0);
    return read.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Price(read.getAsDouble(), slash < 0 ? "" : text.substring(slash + 1).strip()));
  }

  private static boolean isPlain(Level level) {
    return level.isFactor() || level.amount().isBare();
  }

  /** What a value has beyond another, in the other's unit; empty where they are not of one kind. */
  static OptionalDouble over(Level value, Level other) {
    if (value.isFactor() != other.isFactor()
        || value.amount().isBare() != other.amount().isBare()) {
      return OptionalDouble.empty();
    }
    if (isPlain(value) || value.unit().equals(other.unit())) {
      return OptionalDouble.of(value.number().subtract(other.number()).doubleValue());
    }
    try {
      return OptionalDouble.of(value.amount().in(other.unit()) - other.amount().value());
    } catch (QuantityException otherKind) {
      return OptionalDouble.empty();
    }
  }
}
