package hurdline.economics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * f(x) = Σ aₖ·x^tₖ over x above 0, powers rising and not necessarily whole.
 *
 * <p>Its roots lie between those of its derivative, where it only rises or only falls, so one look
 * at each such stretch finds them all. Divided by the lowest power, the sum begins with a constant,
 * and its derivative has one term less: the search ends.
 */
final class PowerSum {
  /** Sums this small against their terms are a root that is touched and not crossed. */
  private static final double ROUNDING = 1e-12;

  private static final double LEAST = 1e-9;
  private static final double MOST = 1e9;
  private static final int EVALUATIONS = 1000;

  private final double[] powers;
  private final double[] amounts;

  private PowerSum(double[] powers, double[] amounts) {
    this.powers = powers;
    this.amounts = amounts;
  }

  /** Terms of amount 0 are left out and the lowest power taken out of the rest. */
  static PowerSum of(double[] powers, double[] amounts) {
    int[] kept = IntStream.range(0, amounts.length).filter(k -> amounts[k] != 0).toArray();
    double lowest = kept.length == 0 ? 0 : powers[kept[0]];
    double largest = IntStream.of(kept).mapToDouble(k -> Math.abs(amounts[k])).max().orElse(1);
    return new PowerSum(
        IntStream.of(kept).mapToDouble(k -> powers[k] - lowest).toArray(),
        IntStream.of(kept).mapToDouble(k -> amounts[k] / largest).toArray());
  }

  List<Double> rootsAbove0() {
    List<Double> roots = new ArrayList<>();
    if (signChanges() == 0) {
      return roots;
    }
    List<Double> turns = new ArrayList<>(List.of(LEAST));
    if (signChanges() > 1) {
      turns.addAll(slope().rootsAbove0());
    }
    turns.add(MOST);
    for (int at = 1; at < turns.size(); at++) {
      double low = turns.get(at - 1);
      double high = turns.get(at);
      if (isZero(high)) {
        roots.add(high);
      } else if (!isZero(low) && Math.signum(at(low)) != Math.signum(at(high))) {
        roots.add(new BrentSolver(1e-14, 1e-15).solve(EVALUATIONS, this::at, low, high));
      }
    }
    return roots;
  }

  private int signChanges() {
    return (int)
        IntStream.range(1, amounts.length)
            .filter(k -> Math.signum(amounts[k]) != Math.signum(amounts[k - 1]))
            .count();
  }

  private PowerSum slope() {
    return of(
        IntStream.range(1, powers.length).mapToDouble(k -> powers[k] - 1).toArray(),
        IntStream.range(1, powers.length).mapToDouble(k -> amounts[k] * powers[k]).toArray());
  }

  private double at(double x) {
    double sum = 0;
    for (int k = 0; k < powers.length; k++) {
      sum += amounts[k] * Math.pow(x, powers[k]);
    }
    return sum;
  }

  private boolean isZero(double x) {
    double size = 0;
    for (int k = 0; k < powers.length; k++) {
      size += Math.abs(amounts[k]) * Math.pow(x, powers[k]);
    }
    return Math.abs(at(x)) <= ROUNDING * size;
  }
}
