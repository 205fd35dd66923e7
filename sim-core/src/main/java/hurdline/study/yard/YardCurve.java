package hurdline.study.yard;

import hurdline.answer.YardSizeRow;
import hurdline.measure.Measure;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;

/** The plant with yards of several sizes, each simulated once on the same chance. */
final class YardCurve {
  private static final int SIZES = 12;

  private final YardUnderStudy yard;
  private final YardMoney money;
  private final IntFunction<Optional<ReplicationResults>> simulator;
  private final Map<Integer, ReplicationResults> simulated = new TreeMap<>();

  /**
   * @param simulator simulates the plant whose yard holds so many bales
   */
  YardCurve(
      YardUnderStudy yard, YardMoney money, IntFunction<Optional<ReplicationResults>> simulator) {
    this.yard = yard;
    this.money = money;
    this.simulator = simulator;
  }

  void known(int bales, ReplicationResults figures) {
    simulated.put(bales, figures);
  }

  /** What a size comes to; nothing if it was stopped. */
  Optional<ReplicationResults> at(int bales) {
    if (!simulated.containsKey(bales)) {
      simulator.apply(bales).ifPresent(figures -> simulated.put(bales, figures));
    }
    return Optional.ofNullable(simulated.get(bales));
  }

  /**
   * Simulates some sizes from the smallest possible to one in which nothing ever waits; ends early
   * if it is stopped.
   */
  void simulate(int most) {
    for (int bales : sizes(yard.least(), most)) {
      if (at(bales).isEmpty()) {
        return;
      }
    }
  }

  /** About a dozen sizes at round numbers, both ends among them. */
  static int[] sizes(int least, int most) {
    int step = roundStep((most - least) / (double) SIZES);
    List<Integer> sizes = new ArrayList<>(List.of(least));
    int size = (least / step + 1) * step;
    for (; size < most + step && least < most; size += step) {
      sizes.add(size);
    }
    return sizes.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The least of 1, 2, 5, 10, 20, 50 … that is not below. */
  private static int roundStep(double wanted) {
    int power = 1;
    while (true) {
      for (int digit : new int[] {1, 2, 5}) {
        if (digit * power >= wanted) {
          return digit * power;
        }
      }
      power *= 10;
    }
  }

  /** Seasons in which something found no room. */
  int refused(ReplicationResults figures) {
    double[] refused = figures.series(Measure.YARD_WITHOUT_ROOM.of(yard.crop().name()));
    return (int) Arrays.stream(refused).filter(count -> count > 0).count();
  }

  List<YardSizeRow> rows() {
    Optional<double[]> cheapest = cheapest();
    List<YardSizeRow> rows = new ArrayList<>();
    simulated.forEach((bales, figures) -> rows.add(row(bales, figures, cheapest)));
    return rows;
  }

  private Optional<double[]> cheapest() {
    double[] best = null;
    if (money.isAsked()) {
      for (Map.Entry<Integer, ReplicationResults> size : simulated.entrySet()) {
        double[] sums = money.perYear(size.getKey(), size.getValue());
        best = best == null || Summary.of(sums).mean() < Summary.of(best).mean() ? sums : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private YardSizeRow row(int bales, ReplicationResults figures, Optional<double[]> cheapest) {
    int refused = refused(figures);
    Interval chance = Intervals.chance95(refused, figures.count());
    return new YardSizeRow(
        bales,
        yard.areaM2(bales),
        refused / (double) figures.count(),
        chance.low(),
        chance.high(),
        figures.mean(Measure.INTAKE_HELD_AT_FIELD_PEAK.of(yard.crop().name())),
        Summary.of(money.lostT(figures)).mean(),
        Summary.of(money.waitingD(figures)).mean(),
        cheapest
            .map(best -> money.cost(bales, figures, above(best, bales, figures)))
            .orElse(YardSizeRow.Cost.none()));
  }

  private YardSizeRow.Cost.Above above(double[] cheapest, int bales, ReplicationResults figures) {
    PairedDifference pair =
        PairedDifference.of(
            cheapest, money.perYear(bales, figures), Math.max(1, simulated.size() - 1));
    return new YardSizeRow.Cost.Above(
        pair.difference(), pair.joint().low(), pair.joint().high(), pair.significant());
  }
}
