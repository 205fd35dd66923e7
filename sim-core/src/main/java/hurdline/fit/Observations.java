package hurdline.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was seen of an amount, sorted into what a likelihood asks for and divided by its middle
 * size, so that searches begin near 1.
 *
 * <p>Four kinds: seen whole; not ended at some amount (right-censored); between two marks; and each
 * of them perhaps seen only from an age on (left-truncated). Equal intervals and equal ages are
 * kept once with their number.
 */
public final class Observations {
  /**
   * One amount.
   *
   * @param low what it is at least, or is where {@code high} is the same
   * @param high what it is at most; infinite where it had not ended
   * @param entry from which age on it was seen; shorter ones were never told
   */
  public record Seen(double low, double high, double entry) {
    public Seen {
      if (!(low >= 0 && high >= low && entry >= 0)) {
        throw new IllegalArgumentException(
            "seen from "
                + low
                + " to "
                + high
                + ", entry "
                + entry
                + "; expected 0 <= low <= high and entry >= 0");
      }
    }

    public static Seen whole(double amount, double entry) {
      return new Seen(amount, amount, entry);
    }

    public static Seen going(double amount) {
      return new Seen(amount, Double.POSITIVE_INFINITY, 0);
    }

    boolean isWhole() {
      return low == high;
    }

    boolean isGoing() {
      return high == Double.POSITIVE_INFINITY;
    }
  }

  final double unit;
  final double[] whole;
  final double[] logWhole;
  final double sum;
  final double sumLog;
  final double sumLog2;
  final double[] going;
  final double[] low;
  final double[] high;
  final int[] between;
  final double[] entry;
  final int[] entries;

  /** Above this nothing was told; infinite where all was. */
  final double cutHigh;

  private final List<Seen> all;
  private final int inIntervals;

  private Observations(List<Seen> all, double cutHigh) {
    this.all = List.copyOf(all);
    unit = middle(all);
    this.cutHigh = cutHigh / unit;
    whole =
        all.stream().filter(Seen::isWhole).mapToDouble(one -> one.low() / unit).sorted().toArray();
    logWhole = Arrays.stream(whole).map(Math::log).toArray();
    sum = Arrays.stream(whole).sum();
    sumLog = Arrays.stream(logWhole).sum();
    sumLog2 = Arrays.stream(logWhole).map(l -> l * l).sum();
    going =
        all.stream().filter(Seen::isGoing).mapToDouble(one -> one.low() / unit).sorted().toArray();
    Map<List<Double>, Integer> intervals =
        new TreeMap<>(
            java.util.Comparator.comparing((List<Double> i) -> i.get(0))
                .thenComparing(i -> i.get(1)));
    all.stream()
        .filter(one -> !one.isWhole() && !one.isGoing())
        .forEach(
            one -> intervals.merge(List.of(one.low() / unit, one.high() / unit), 1, Integer::sum));
    low = intervals.keySet().stream().mapToDouble(i -> i.get(0)).toArray();
    high = intervals.keySet().stream().mapToDouble(i -> i.get(1)).toArray();
    between = intervals.values().stream().mapToInt(Integer::intValue).toArray();
    inIntervals = Arrays.stream(between).sum();
    Map<Double, Integer> ages = new TreeMap<>();
    all.stream()
        .filter(one -> one.entry() > 0)
        .forEach(one -> ages.merge(one.entry() / unit, 1, Integer::sum));
    entry = ages.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    entries = ages.values().stream().mapToInt(Integer::intValue).toArray();
  }

  public static Observations of(List<Seen> all) {
    return of(all, Double.POSITIVE_INFINITY);
  }

  /**
   * @param cutHigh amounts above it were never told
   */
  public static Observations of(List<Seen> all, double cutHigh) {
    if (all.isEmpty()) {
      throw new IllegalArgumentException("nothing was seen; expected at least one amount");
    }
    return new Observations(all, cutHigh);
  }

  private static double middle(List<Seen> all) {
    double sum = 0;
    for (Seen one : all) {
      sum += one.isGoing() ? one.low() : (one.low() + one.high()) / 2;
    }
    return sum > 0 ? sum / all.size() : 1;
  }

  public List<Seen> all() {
    return all;
  }

  /** How many ended, whole or between two marks. */
  public int ended() {
    return whole.length + inIntervals;
  }

  int count() {
    return all.size();
  }

  /** Whether there are at least two different amounts that ended. */
  boolean vary() {
    return (whole.length == 0 ? 0 : whole[whole.length - 1] > whole[0] ? 2 : 1) + low.length >= 2;
  }

  /** Middles of all, those not ended at where they were left, in units. */
  double[] middles() {
    List<Double> middles = new ArrayList<>();
    all.forEach(
        one -> middles.add((one.isGoing() ? one.low() : (one.low() + one.high()) / 2) / unit));
    return middles.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** All that was counted, ages before being seen taken off, in units. */
  double exposure() {
    double sum = Arrays.stream(middles()).sum();
    for (int i = 0; i < entry.length; i++) {
      sum -= entries[i] * entry[i];
    }
    return sum;
  }
}
