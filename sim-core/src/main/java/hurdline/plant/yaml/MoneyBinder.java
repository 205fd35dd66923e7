package hurdline.plant.yaml;

import hurdline.plant.Basis;
import hurdline.plant.Crop;
import hurdline.plant.CropTerms;
import hurdline.plant.Grade;
import hurdline.plant.Money;
import hurdline.plant.Money.Growth;
import hurdline.plant.Option;
import hurdline.plant.Plan;
import hurdline.plant.yaml.tree.Tree;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads money, and what options and plans say of themselves. */
final class MoneyBinder {
  private MoneyBinder() {}

  /** Keeps the file to the currency that it names, before any price is read. */
  static void keepCurrency(NodeReader money) {
    if (money.isMap()) {
      String code = money.child("currency").scalar().map(Tree.Scalar::text).orElse("");
      if (code.matches("[A-Z]{3}")) {
        money.binding().keepTo(code);
      }
    }
  }

  /**
   * @param crops of which a form is paid as its crop where the section does not say otherwise
   */
  static Optional<Money> money(NodeReader at, List<Crop> crops) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.MONEY);
    return Optional.of(
        new Money(
            currency(f.at("currency")),
            TariffBinder.tariff(f.at("electricity")),
            Quantities.of(f.at("wage"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0),
            Quantities.of(f.at("drier_fuel"), Dimension.PRICE, Range.NOT_BELOW_0, 0),
            ofForms(prices(f.at("crop_prices")), crops),
            terms(f.at("crop_terms")),
            ofForms(grades(f.at("crop_grades")), crops),
            ofForms(moistures(f.at("moisture_basis")), crops),
            Quantities.of(f.at("overhead"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0),
            discount(f.at("discount_rate")),
            growth(f.at("escalation")),
            overtime(f.at("overtime")),
            rent(f.at("rent")),
            CashBinder.terms(f)));
  }

  private static <T> Map<String, T> ofForms(Map<String, T> given, List<Crop> crops) {
    Map<String, T> all = new LinkedHashMap<>(given);
    for (Crop crop : crops) {
      if (given.containsKey(crop.base())) {
        all.putIfAbsent(crop.name(), given.get(crop.base()));
      }
    }
    return all;
  }

  private static Optional<Money.Overtime> overtime(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.OVERTIME);
    return Optional.of(
        new Money.Overtime(
            Quantities.of(f.at("after"), Dimension.TIME, Range.NOT_BELOW_0, 0),
            Numbers.number(f.at("pays"), 1, false).orElse(1),
            Words.names(f.at("for"), "a line")));
  }

  private static Optional<Money.Rent> rent(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.RENT);
    return Optional.of(
        new Money.Rent(
            Words.name(f.at("line"), "a line"),
            Quantities.of(f.at("fixed"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0),
            Quantities.of(f.at("fed"), Dimension.PRICE, Range.NOT_BELOW_0, 0)));
  }

  private static String currency(NodeReader at) {
    String code = Words.name(at, "a currency");
    if (at.isGiven() && !code.matches("[A-Z]{3}")) {
      at.wrong(at.shown() + " is no currency code", "three capital letters such as USD");
    }
    return code;
  }

  private static Map<String, Double> prices(NodeReader at) {
    Map<String, Double> prices = new LinkedHashMap<>();
    at.named("crop")
        .forEach(
            (crop, price) -> prices.put(crop, Quantities.of(price, Dimension.PRICE, Range.ANY, 0)));
    return prices;
  }

  private static Map<String, CropTerms> terms(NodeReader at) {
    Map<String, CropTerms> terms = new LinkedHashMap<>();
    at.named("crop").forEach((crop, entry) -> terms.put(crop, termsOf(entry)));
    return terms;
  }

  private static CropTerms termsOf(NodeReader at) {
    Fields f = at.fields(MapKeys.CROP_TERMS);
    return new CropTerms(
        Quantities.of(f.at("per_area"), Dimension.AREA_PRICE, Range.NOT_BELOW_0, 0),
        advance(f.at("advance")));
  }

  private static Optional<CropTerms.Advance> advance(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.ADVANCE);
    if (at.isMap() && f.has("per_area") == f.has("per_mass")) {
      at.wrong(
          f.has("per_area")
              ? "both \"per_area\" and \"per_mass\""
              : "neither \"per_area\" nor \"per_mass\"",
          "one of them, such as \"per_area: 40 USD/acre\"");
    }
    return Optional.of(
        new CropTerms.Advance(
            Quantities.of(f.at("per_area"), Dimension.AREA_PRICE, Range.NOT_BELOW_0, 0),
            Quantities.of(f.at("per_mass"), Dimension.PRICE, Range.NOT_BELOW_0, 0),
            Words.choice(f.at("if_short"), Map.of("owed", false, "kept", true), false),
            Dates.date(f.at("paid")),
            Quantities.of(f.at("interest"), Dimension.SHARE_RATE, Range.NOT_BELOW_0, 0)));
  }

  private static Map<String, List<Grade>> grades(NodeReader at) {
    Map<String, List<Grade>> grades = new LinkedHashMap<>();
    at.named("crop")
        .forEach((crop, entry) -> grades.put(crop, entry.list("grades", MoneyBinder::grade)));
    return grades;
  }

  private static Grade grade(NodeReader at) {
    Fields f = at.fields(MapKeys.GRADE);
    boolean inSteps = Curves.isInSteps(at, f, "[[15 %, 1], [19 %, 0.8]]");
    return new Grade(
        Words.name(f.at("by"), "moisture or an attribute"),
        inSteps,
        Curves.onPrice(f.at(inSteps ? "steps" : "line")));
  }

  private static Map<String, Basis> moistures(NodeReader at) {
    Map<String, Basis> moistures = new LinkedHashMap<>();
    at.named("crop")
        .forEach(
            (crop, entry) ->
                ProductBinder.basis(entry).ifPresent(basis -> moistures.put(crop, basis)));
    return moistures;
  }

  private static Growth growth(NodeReader at) {
    Fields f = at.fields(MapKeys.ESCALATION);
    return new Growth(
        growth(f, "products"), growth(f, "crops"), growth(f, "wages"), growth(f, "electricity"));
  }

  private static double growth(Fields f, String key) {
    double perYear = perYear(f.at(key), Range.ANY);
    if (!(perYear > -1)) {
      f.at(key)
          .wrong(
              f.at(key).shown() + " would leave nothing after a year",
              "a share a year above -100 %");
      return 0;
    }
    return perYear;
  }

  private static OptionalDouble discount(NodeReader at) {
    return at.isGiven()
        ? OptionalDouble.of(perYear(at, Range.NOT_BELOW_0))
        : OptionalDouble.empty();
  }

  private static double perYear(NodeReader at, Range range) {
    return Quantities.of(at, Dimension.SHARE_RATE, range, 0) * FileUnit.YEAR.inSi();
  }

  static Option option(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.OPTION);
    patch(f);
    OptionalDouble lifeS = Quantities.optional(f.at("life"), Dimension.TIME, Range.ABOVE_0);
    return new Option(
        name,
        Words.text(f.at("description")),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0),
        lifeS.isPresent() ? lifeS.getAsDouble() / FileUnit.YEAR.inSi() : 10,
        Quantities.of(f.at("salvage"), Dimension.MONEY, Range.ANY, 0),
        CashBinder.ofPurchase(f));
  }

  static Plan plan(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.PLAN);
    patch(f);
    return new Plan(name, Words.text(f.at("description")));
  }

  private static void patch(Fields f) {
    if (f.has("with") && !f.at("with").isMap()) {
      f.at("with")
          .wrong(
              f.at("with").shown() + " is not a map",
              "a patch on this file: the keys to change with their new values");
    }
  }
}
