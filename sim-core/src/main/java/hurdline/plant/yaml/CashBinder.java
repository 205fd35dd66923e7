package hurdline.plant.yaml;

import hurdline.plant.CashTerms;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what the plant cost, its loan and its tax. */
final class CashBinder {
  private static final int MOST_YEARS = 100;
  private static final double ROUNDING = 1e-9;
  private static final double USUAL_FACTOR = 2;

  private CashBinder() {}

  /**
   * @param f the keys of money
   */
  static CashTerms terms(Fields f) {
    CashTerms terms =
        new CashTerms(
            f.has("assets") ? Optional.of(assets(f.at("assets"))) : Optional.empty(),
            f.has("loan") ? Optional.of(loan(f.at("loan"), Range.SOME_SHARE)) : Optional.empty(),
            f.has("tax") ? Optional.of(tax(f.at("tax"))) : Optional.empty());
    if (terms.assets().isPresent() && !terms.isGiven()) {
      f.at("assets")
          .idle(
              "without a loan and a tax nothing is made of what the plant cost",
              "\"loan\" or \"tax\" beside it");
    }
    return terms;
  }

  private static CashTerms.Assets assets(NodeReader at) {
    Fields f = at.fields(MapKeys.ASSETS);
    return new CashTerms.Assets(
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.ABOVE_0, 1), years(f.at("age"), 0, 0));
  }

  /**
   * The loan of an option's own.
   *
   * @param f the keys of the option
   */
  static Optional<CashTerms.Borrowing> ofPurchase(Fields f) {
    if (!f.has("loan")) {
      return Optional.empty();
    }
    if (!f.has("cost")) {
      f.at("loan").idle("what costs nothing is financed by no loan", "\"cost\" beside it");
    }
    return Optional.of(loan(f.at("loan"), Range.SHARE));
  }

  private static CashTerms.Borrowing loan(NodeReader at, Range shares) {
    Fields f = at.fields(MapKeys.LOAN);
    return new CashTerms.Borrowing(
        Quantities.of(f.at("share"), Dimension.SHARE, shares, 1),
        Quantities.of(f.at("rate"), Dimension.SHARE_RATE, Range.NOT_BELOW_0, 0)
            * FileUnit.YEAR.inSi(),
        years(f.at("term"), 1, 1));
  }

  private static CashTerms.Tax tax(NodeReader at) {
    Fields f = at.fields(MapKeys.TAX);
    return new CashTerms.Tax(
        Quantities.of(f.at("rate"), Dimension.SHARE, Range.PART, 0),
        f.has("depreciation") ? Optional.of(writeOff(f.at("depreciation"))) : Optional.empty());
  }

  private static CashTerms.WriteOff writeOff(NodeReader at) {
    Fields f = at.fields(MapKeys.DEPRECIATION);
    int years = years(f.at("over"), 1, 1);
    boolean declining =
        Words.choice(
            f.at("method"), Map.of("straight-line", false, "declining-balance", true), false);
    if (f.has("factor") && !declining) {
      f.at("factor")
          .wrong("straight line has no factor", "\"method: declining-balance\" beside it, or none");
    }
    OptionalDouble factor = Numbers.number(f.at("factor"), 0, true);
    if (declining && factor.orElse(USUAL_FACTOR) > years && f.at("over").isGiven()) {
      f.at(f.has("factor") ? "factor" : "over")
          .wrong(
              "a factor of "
                  + factor.orElse(USUAL_FACTOR)
                  + " over "
                  + years
                  + " yr writes off more than all in a year",
              "a factor of at most the years");
      return new CashTerms.WriteOff(years, 0, false);
    }
    return new CashTerms.WriteOff(
        years,
        declining ? factor.orElse(USUAL_FACTOR) : 0,
        Words.choice(f.at("first_year"), Map.of("whole", false, "half", true), false));
  }

  private static int years(NodeReader at, int least, int standIn) {
    OptionalDouble si = Quantities.optional(at, Dimension.TIME, Range.NOT_BELOW_0);
    if (si.isEmpty()) {
      return standIn;
    }
    double count = si.getAsDouble() / FileUnit.YEAR.inSi();
    if (!(Math.abs(count - Math.rint(count)) < ROUNDING && count > least - ROUNDING)
        || count > MOST_YEARS) {
      at.wrong(
          at.shown() + " is no whole number of years here",
          "whole years from " + least + " to " + MOST_YEARS + ", such as \"7 yr\"");
      return standIn;
    }
    return (int) Math.rint(count);
  }
}
