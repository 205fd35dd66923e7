package hurdline.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many years each of k plans needs, so that the greatest mean is that of the best, where each
 * plan is simulated on draws of its own: Rinott's selection in two stages.
 *
 * <p>n₀ first years give each plan's variance Sᵢ². With Nᵢ = max(n₀, ⌈h²·Sᵢ²/δ²⌉) years in all the
 * plan of the greatest mean is the best with a chance of at least P* if the best leads by δ or
 * more, and less than δ below it with that chance whatever the means are. The constant h solves
 *
 * <pre>∫₀^∞ [∫₀^∞ Φ(h/√((n₀ − 1)·(1/x + 1/y))) f(x) dx]^(k − 1) f(y) dy = P*,</pre>
 *
 * <p>f the density of χ² with n₀ − 1 degrees. Years are normal and independent, from year to year
 * and from plan to plan; variances may differ.
 *
 * <p>Both integrals are sums in equal steps of the logarithm, which converge faster than any power
 * of the step for such integrands; {@code TwoStageSelectionTest} holds h against the printed table.
 *
 * @see "Rinott, On two-stage selection procedures and related probability-inequalities,
 *     Communications in Statistics A7 (1978), 799-811; the formulas from memory"
 */
public final class TwoStageSelection {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int STEPS = 300;
  private static final double TAIL = 1e-15;
  private static final double PRECISION = 1e-9;

  private final int firstYears;
  private final double constant;

  /**
   * @param plans k, at least 1
   * @param firstYears n₀, at least 3
   * @param chance P*, above 1/k and below 1
   */
  public TwoStageSelection(int plans, int firstYears, double chance) {
    if (!(plans >= 1)) {
      throw new IllegalArgumentException("plans are " + plans + "; expected at least 1");
    }
    if (!(firstYears >= 3)) {
      throw new IllegalArgumentException("first years are " + firstYears + "; expected 3 or more");
    }
    if (!(chance > 0 && chance < 1 && (plans == 1 || chance * plans > 1))) {
      throw new IllegalArgumentException(
          "chance is " + chance + "; expected above 1/" + plans + " and below 1");
    }
    this.firstYears = firstYears;
    constant = plans == 1 ? 0 : solved(plans, chance);
  }

  /** Rinott's h; 0 for one plan, which needs no second stage. */
  public double constant() {
    return constant;
  }

  /**
   * Nᵢ, the years that a plan needs in all.
   *
   * @param first its first years, as many as were said; read only
   * @param band δ, above 0, in the unit of the years
   */
  public long years(double[] first, double band) {
    if (first.length != firstYears) {
      throw new IllegalArgumentException(
          "first years are " + first.length + "; expected " + firstYears);
    }
    if (!(band > 0)) {
      throw new IllegalArgumentException("band is " + band + "; expected above 0");
    }
    double reach = constant / band;
    return Math.max(
        firstYears, (long) Math.ceil(reach * reach * Moments.of(first).variance() - PRECISION));
  }

  private double solved(int plans, double chance) {
    Density density = new Density(firstYears - 1);
    double low = 0;
    double high = 1;
    while (density.chance(high, plans) < chance) {
      low = high;
      high *= 2;
    }
    while (high - low > PRECISION) {
      double middle = (low + high) / 2;
      if (density.chance(middle, plans) < chance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** χ² at equal steps of its logarithm, with the weight of each. */
  private static final class Density {
    private final int degrees;
    private final double[] inverse = new double[STEPS + 1]; // 1/x
    private final double[] weight = new double[STEPS + 1]; // f(x)·x·step, summing to 1

    Density(int degrees) {
      this.degrees = degrees;
      ChiSquaredDistribution of = ChiSquaredDistribution.of(degrees);
      double from = Math.log(of.inverseCumulativeProbability(TAIL));
      double step = (Math.log(of.inverseSurvivalProbability(TAIL)) - from) / STEPS;
      for (int at = 0; at <= STEPS; at++) {
        double x = Math.exp(from + at * step);
        inverse[at] = 1 / x;
        weight[at] = of.density(x) * x * step;
      }
      double sum = Arrays.stream(weight).sum();
      Arrays.setAll(weight, at -> weight[at] / sum);
    }

    /** The left side of the equation for h. */
    double chance(double h, int plans) {
      double sum = 0;
      for (int y = 0; y <= STEPS; y++) {
        double below = 0; // one less the inner integral, without cancelling
        for (int x = 0; x <= STEPS; x++) {
          double spread = Math.sqrt(degrees * (inverse[x] + inverse[y]));
          below += weight[x] * NORMAL.survivalProbability(h / spread);
        }
        sum += weight[y] * Math.exp((plans - 1) * Math.log1p(-below));
      }
      return sum;
    }
  }
}
