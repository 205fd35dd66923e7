package hurdline.plant;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Prices and rates, money in the file's currency.
 *
 * @param tariff what electricity costs
 * @param drierFuelPerKg for each mass of water that driers send to the air
 * @param cropsPerKg price of each crop
 * @param terms what growers are paid besides a crop's price
 * @param grades by what a crop's price changes from load to load
 * @param paidAt how a crop's mass is brought to the one that is paid; as weighed where absent
 * @param discount share a year; absent where the file does not say
 * @param overtime absent where all hours are paid alike and none after a shift
 * @param rent absent where one owner runs all lines
 * @param cash how plant and purchases are paid for and taxed
 */
public record Money(
    String currency,
    Tariff tariff,
    double wagePerS,
    double drierFuelPerKg,
    Map<String, Double> cropsPerKg,
    Map<String, CropTerms> terms,
    Map<String, List<Grade>> grades,
    Map<String, Basis> paidAt,
    double overheadPerS,
    OptionalDouble discount,
    Growth growth,
    Optional<Overtime> overtime,
    Optional<Rent> rent,
    CashTerms cash) {
  public Money {
    cropsPerKg = InOrder.copy(cropsPerKg);
    terms = InOrder.copy(terms);
    grades = InOrder.copy(grades);
    paidAt = InOrder.copy(paidAt);
    Check.notBelow0("wagePerS", wagePerS);
    Check.notBelow0("drierFuelPerKg", drierFuelPerKg);
    cropsPerKg.forEach((crop, price) -> Check.finite("cropsPerKg of " + crop, price));
    Check.notBelow0("overheadPerS", overheadPerS);
    discount.ifPresent(share -> Check.notBelow0("discount", share));
  }

  /** Share a year by which later money counts less; 0 where the file does not say. */
  public double discountPerYr() {
    return discount.orElse(0);
  }

  /** Paid for an area of a crop's fields, on top of its price. */
  public double perM2(String crop) {
    CropTerms known = terms.get(crop);
    return known == null ? 0 : known.perM2();
  }

  /** Mass of a crop that is paid for. */
  public double paidKg(String crop, double kg, double dryKg) {
    Basis basis = paidAt.get(crop);
    return basis == null ? kg : basis.paidKg(kg, dryKg);
  }

  /**
   * What hands are paid beyond a week's usual hours, and after a shift.
   *
   * @param afterS hours of a hand of one crew from Monday to Sunday that are paid as usual
   * @param pays times the wage
   * @param lines whose crews are paid so; those of all lines where empty
   */
  public record Overtime(double afterS, double pays, List<String> lines) {
    public Overtime {
      lines = List.copyOf(lines);
      Check.notBelow0("afterS", afterS);
      Check.atLeast(1, "pays", pays);
    }

    public boolean isFor(String line) {
      return lines.isEmpty() || lines.contains(line);
    }
  }

  /**
   * What a tenant who runs one of the lines pays the owner.
   *
   * @param fixedPerS over the whole horizon
   * @param perKg of what the line is fed
   */
  public record Rent(String line, double fixedPerS, double perKg) {
    public Rent {
      Check.notBelow0("fixedPerS", fixedPerS);
      Check.notBelow0("perKg", perKg);
    }
  }

  /** Shares a year by which later years differ. */
  public record Growth(double products, double crops, double wages, double electricity) {
    public Growth {
      Check.above(-1, "products", products);
      Check.above(-1, "crops", crops);
      Check.above(-1, "wages", wages);
      Check.above(-1, "electricity", electricity);
    }
  }
}
