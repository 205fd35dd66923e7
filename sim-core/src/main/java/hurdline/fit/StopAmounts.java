package hurdline.fit;

import hurdline.fit.Observations.Seen;
import hurdline.records.Spans;
import hurdline.records.StopRecord;
import hurdline.records.StopRecord.Repair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One stop's log as amounts: from one stop's end to the next one's begin on a count, and how long
 * each repair took.
 *
 * <p>A spell begins at age 0 where a stop has ended or its part was changed, and is cut short at a
 * change, at a day on which work is seen but no shift, and at the end of the records. What was
 * counted before the first stop is set aside, since the age at which the records begin is not
 * known.
 */
final class StopAmounts {
  private final List<StopRecord> stops;
  private final List<Double> changesS;
  private final List<Double> gapsS;
  private final double endS;

  /**
   * Amounts of one period, which two changes bound.
   *
   * @param startS instants at which each whole amount began
   * @param spells how long each spell was counted
   */
  record Every(List<Seen> seen, List<Double> startS, double[] spells) {
    /** Those that ended, in order. */
    double[] whole() {
      return seen.stream()
          .filter(one -> !one.isGoing())
          .mapToDouble(one -> (one.low() + one.high()) / 2)
          .toArray();
    }
  }

  /**
   * @param belowLow repairs that the log should not have, shorter than what was said to be written
   *     down
   */
  record Lasts(List<Seen> seen, int belowLow, boolean inSteps) {}

  /**
   * @param stops of one key, in order
   * @param changesS instants from which on its part is another
   * @param gapsS instants at which something is not known of the hours
   */
  StopAmounts(List<StopRecord> stops, List<Double> changesS, List<Double> gapsS, double endS) {
    this.stops = List.copyOf(stops);
    this.changesS = changesS.stream().sorted().toList();
    this.gapsS = gapsS.stream().sorted().toList();
    this.endS = endS;
  }

  /** A list for each period, earliest first. */
  List<Every> every(Count count, double leastAmount) {
    List<Every> periods = new ArrayList<>();
    double startS = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= changesS.size(); i++) {
      double untilS = i < changesS.size() ? changesS.get(i) : endS;
      periods.add(period(count, leastAmount, startS, untilS));
      startS = untilS;
    }
    return periods;
  }

  private Every period(Count count, double least, double fromS, double untilS) {
    List<Seen> seen = new ArrayList<>();
    List<Double> starts = new ArrayList<>();
    List<Double> spells = new ArrayList<>();
    double renewedS = fromS; // when the count was last at 0; −∞ while that is not known
    double spell = 0;
    for (StopRecord stop : stops) {
      if (stop.beganS() < fromS || stop.beganS() >= untilS) {
        continue;
      }
      double gapS = gap(renewedS, stop.beganS());
      if (renewedS > Double.NEGATIVE_INFINITY && Double.isNaN(gapS)) {
        double amount =
            Math.max(0, count.untilInstant(stop.beganS()) - count.untilInstant(renewedS));
        seen.add(amount < least ? new Seen(0, least, 0) : Seen.whole(amount, 0));
        starts.add(renewedS);
        spell += amount;
      } else if (!Double.isNaN(gapS)) {
        spell = close(count, seen, spells, renewedS, gapS, spell);
      }
      renewedS =
          Double.isNaN(stop.endedS()) || stop.repair() == Repair.NO_END
              ? stop.beganS()
              : stop.endedS();
    }
    double lastGapS = gap(renewedS, untilS);
    boolean isLost =
        !stops.isEmpty()
            && Double.isNaN(stops.get(stops.size() - 1).endedS())
            && stops.get(stops.size() - 1).beganS() == renewedS;
    if (isLost) {
      spells.add(spell);
    } else {
      close(count, seen, spells, renewedS, Double.isNaN(lastGapS) ? untilS : lastGapS, spell);
    }
    return new Every(seen, starts, spells.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** Cuts a spell short; how much the next one has, which is nothing. */
  private static double close(
      Count count,
      List<Seen> seen,
      List<Double> spells,
      double renewedS,
      double atS,
      double spell) {
    if (renewedS > Double.NEGATIVE_INFINITY) {
      double going = Math.max(0, count.untilInstant(atS) - count.untilInstant(renewedS));
      if (going > 0) {
        seen.add(Seen.going(going));
      }
      if (spell + going > 0) {
        spells.add(spell + going);
      }
    }
    return 0;
  }

  private double gap(double fromS, double toS) {
    return gapsS.stream()
        .filter(gap -> gap > fromS && gap < toS && fromS > Double.NEGATIVE_INFINITY)
        .findFirst()
        .orElse(Double.NaN);
  }

  /**
   * How long repairs took.
   *
   * @param hours in which repairs go forward; empty where they do at any time
   * @param lowS shorter ones were never told
   */
  Lasts lasts(Spans hours, boolean anyTime, double lowS) {
    List<double[]> read = new ArrayList<>();
    int below = 0;
    for (StopRecord stop : stops) {
      if (stop.repair() == Repair.NOT_KNOWN
          || Double.isNaN(stop.endedS())
          || !stop.onShift() && !anyTime) {
        continue;
      }
      double length =
          anyTime
              ? stop.endedS() - stop.repairFromS()
              : hours.betweenS(stop.repairFromS(), stop.endedS());
      boolean isOpen = stop.repair() == Repair.NO_END;
      if (length < lowS - stop.stepS() && !isOpen) {
        below++;
      } else if (length > 0 || stop.repair() == Repair.BELOW_A_STEP && lowS == 0) {
        read.add(new double[] {length, stop.stepS(), isOpen ? 1 : 0});
      }
    }
    boolean inSteps = stepsShow(read);
    return new Lasts(
        read.stream()
            .map(one -> seen(one[0], one[1], one[2] == 1, inSteps, lowS))
            .filter(one -> one.high() > lowS)
            .toList(),
        below,
        inSteps);
  }

  private static Seen seen(
      double length, double step, boolean isOpen, boolean inSteps, double low) {
    if (isOpen) {
      return new Seen(low, Math.max(low, length), low);
    }
    if (inSteps || length == 0) {
      return new Seen(Math.max(low, length - step), Math.max(low, length + step), low);
    }
    return Seen.whole(Math.max(low, length), low);
  }

  /**
   * Whether the clock's step is more than a quarter of the lengths' spread, so that rounding shows.
   */
  private static boolean stepsShow(List<double[]> read) {
    double[] lengths =
        read.stream().filter(one -> one[2] == 0).mapToDouble(one -> one[0]).toArray();
    double mean = Arrays.stream(lengths).average().orElse(0);
    double variance =
        Arrays.stream(lengths).map(x -> (x - mean) * (x - mean)).sum()
            / Math.max(1, lengths.length - 1);
    double step = read.stream().mapToDouble(one -> one[1]).max().orElse(0);
    return step > Math.sqrt(variance) / 4;
  }
}
