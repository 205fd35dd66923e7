package hurdline.study;

import hurdline.measure.Measure;
import hurdline.plant.Delivery;
import hurdline.plant.Money;
import java.util.Optional;

/**
 * What a yard costs in a year: what wastes away, what waits, and the ground.
 *
 * <p>Loss is dry matter lost at field and in the yard at the crop's price, per dry mass as it is paid; waits and ground
 * are at the file's prices, the ground spread evenly over its life.
 */
final class YardMoney {
  private static final double DAY_S = 86_400;

  private final CropYard yard;
  private final Optional<Money> money;

  YardMoney(CropYard yard) {
    this.yard = yard;
    money = yard.plant().money();
  }

  boolean isAsked() {
    return money.isPresent();
  }

  /** Dry matter lost in each season, t. */
  double[] lostT(Figures figures) {
    double[] atField = figures.series(Measure.MASS_LOST_AT_FIELD.dryOf(yard.crop().name()));
    double[] inYard = figures.series(Measure.MASS_LOST_IN_YARD.dryOf(yard.crop().name()));
    double[] lost = new double[atField.length];
    for (int at = 0; at < lost.length; at++) {
      lost[at] = atField[at] + inYard[at];
    }
    return lost;
  }

  /** Days that trucks and loads waited for room in each season, added up; 0 where nothing is delivered. */
  double[] waitingD(Figures figures) {
    String measure = Measure.TRUCKS_WAITED_FOR_ROOM.of(yard.crop().name());
    return figures.has(measure) ? figures.series(measure) : new double[figures.count()];
  }

  /** Money of each season in a yard of so many bales. */
  double[] perYear(int bales, Figures figures) {
    double perDryT = 1000 * perDryKg();
    double[] lost = lostT(figures);
    double perWaitingD = DAY_S * waitingPerS();
    double[] waiting = waitingD(figures);
    double ground = yard.groundPerYear(bales, money.orElseThrow().discountPerYr());
    double[] sums = new double[lost.length];
    for (int at = 0; at < sums.length; at++) {
      sums[at] = perDryT * lost[at] + perWaitingD * waiting[at] + ground;
    }
    return sums;
  }

  private double waitingPerS() {
    return yard.plant().deliveries().stream()
        .filter(delivery -> delivery.crop().equals(yard.crop().name()))
        .mapToDouble(Delivery::waitingPerS)
        .sum();
  }

  /** The crop's price per dry mass: that of a mass at the moisture that is paid for, over its dry share. */
  private double perDryKg() {
    String crop = yard.crop().name();
    Money prices = money.orElseThrow();
    double dryShare = 1 - yard.crop().bale().moisture().mean();
    return prices.cropsPerKg().getOrDefault(crop, 0.0) * prices.paidKg(crop, 1, dryShare) / dryShare;
  }
}
