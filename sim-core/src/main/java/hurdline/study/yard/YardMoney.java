package hurdline.study.yard;

import hurdline.answer.YardSizeRow.Cost;
import hurdline.measure.Measure;
import hurdline.plant.Delivery;
import hurdline.plant.Money;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a yard of a size costs in a year: its ground, what waits for room, and what the plant's
 * margin lies below that of the same plant with a yard without limit, season by season.
 *
 * <p>The margin has everything of a yard that differs by size: crop lost in it, wages of receiving
 * on more or fewer days, bales that come late or not at all. So two sizes differ by their margins,
 * ground and waits, and by nothing else. Waits are at the file's price, which is not in the margin;
 * ground is spread evenly over its life.
 */
final class YardMoney {
  private static final double DAY_S = 86_400;
  private static final double HOUR_S = 3_600;
  private static final double ROUNDING = 1e-9;

  private final YardUnderStudy yard;
  private final Optional<Money> money;
  private final ReplicationResults unlimited;

  /**
   * @param unlimited the plant with a yard without limit, in the same seasons as all sizes
   */
  YardMoney(YardUnderStudy yard, ReplicationResults unlimited) {
    this.yard = yard;
    this.unlimited = unlimited;
    money = yard.plant().money();
  }

  boolean isAsked() {
    return money.isPresent();
  }

  /** Dry matter lost in each season, t. */
  double[] lostT(ReplicationResults figures) {
    double[] atField = figures.series(Measure.MASS_LOST_AT_FIELD.dryOf(yard.crop().name()));
    double[] inYard = figures.series(Measure.MASS_LOST_IN_YARD.dryOf(yard.crop().name()));
    double[] lost = new double[atField.length];
    for (int at = 0; at < lost.length; at++) {
      lost[at] = atField[at] + inYard[at];
    }
    return lost;
  }

  /**
   * Days that trucks and loads waited for room in each season, added up; 0 where nothing is
   * delivered.
   */
  double[] waitingD(ReplicationResults figures) {
    String measure = Measure.TRUCKS_WAITED_FOR_ROOM.of(yard.crop().name());
    return figures.has(measure) ? figures.series(measure) : new double[figures.count()];
  }

  /** Money of each season in a yard of so many bales. */
  double[] perYear(int bales, ReplicationResults figures) {
    double[] waiting = waitingD(figures);
    double[] below = belowNoLimit(figures);
    double ground = groundPerYear(bales);
    double[] sums = new double[below.length];
    for (int at = 0; at < sums.length; at++) {
      sums[at] = ground + perWaitingD() * waiting[at] + below[at];
    }
    return sums;
  }

  private double[] belowNoLimit(ReplicationResults figures) {
    double[] margin = figures.series(Measure.MONEY_MARGIN.of());
    double[] most = unlimited.series(Measure.MONEY_MARGIN.of());
    return IntStream.range(0, margin.length)
        .mapToDouble(at -> below(most[at], margin[at]))
        .toArray();
  }

  /** Two sums over the same events in another order differ by rounding, and that is no money. */
  private static double below(double most, double margin) {
    double below = most - margin;
    return Math.abs(below) <= ROUNDING * Math.max(Math.abs(most), Math.abs(margin)) ? 0 : below;
  }

  /** The same as means with what they are made of. */
  Cost cost(int bales, ReplicationResults figures, Cost.Above above) {
    Summary sums = Summary.of(perYear(bales, figures));
    double ground = groundPerYear(bales);
    double waiting = perWaitingD() * Summary.of(waitingD(figures)).mean();
    double receivingH = figures.mean(Measure.CREW_RECEIVING.of(yard.crop().name()));
    return new Cost(
        sums.mean(),
        sums.low95(),
        sums.high95(),
        ground,
        waiting,
        Summary.of(belowNoLimit(figures)).mean(),
        receivingH * HOUR_S * money.orElseThrow().wagePerS(),
        above);
  }

  private double groundPerYear(int bales) {
    return yard.groundPerYear(bales, money.orElseThrow().discountPerYr());
  }

  private double perWaitingD() {
    return DAY_S
        * yard.plant().deliveries().stream()
            .filter(delivery -> delivery.crop().equals(yard.crop().name()))
            .mapToDouble(Delivery::waitingPerS)
            .sum();
  }
}
