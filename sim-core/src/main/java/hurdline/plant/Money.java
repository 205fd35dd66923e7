package hurdline.plant;

import java.util.Map;

/**
 * Prices and rates, money in the file's currency.
 *
 * @param energyPerJ electricity
 * @param demandPerWMonth for the highest quarter-hour mean of a calendar month
 * @param cropsPerKg price of each crop
 * @param paidAt moisture to which a crop's mass is brought before it is paid
 * @param discountPerYr share a year
 */
public record Money(
    String currency,
    double energyPerJ,
    double demandPerWMonth,
    double wagePerS,
    Map<String, Double> cropsPerKg,
    Map<String, Double> paidAt,
    double overheadPerS,
    double discountPerYr,
    Growth growth) {
  public Money {
    cropsPerKg = InOrder.copy(cropsPerKg);
    paidAt = InOrder.copy(paidAt);
  }

  /** Shares a year by which later years differ. */
  public record Growth(double products, double crops, double wages, double electricity) {}
}
