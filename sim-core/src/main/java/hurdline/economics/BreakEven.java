package hurdline.economics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The factor nearest to 1 at which a value crosses zero.
 *
 * <p>From 1 outward, in steps of half as much again, up and down in turn, until the value has
 * changed its sign over a step; then by Brent's method within it. A value that jumps over zero has
 * its crossing where it jumps.
 *
 * @param factor where it crosses; none if the value kept its sign over the whole range
 * @param from least factor at which the value was looked at
 * @param to greatest factor
 * @param at1 the value at 1
 * @see "Brent, Algorithms for Minimization without Derivatives (1973), ch. 4"
 */
public record BreakEven(OptionalDouble factor, double from, double to, double at1) {
  /** The factor is known to this share of itself. */
  public static double tolerance() {
    return 1e-3;
  }

  /**
   * How many values a search tries, about: linear, bent and jumping values with crossings from 0.07
   * to 14 took 10 to 15 on average, and 25 at most.
   */
  public static int usualTries() {
    return 12;
  }

  /** How many it tries at most in the same cases. */
  public static int mostTries() {
    return 25;
  }

  private static final double STEP = 1.5;
  private static final int STEPS = 7;
  private static final int EVALUATIONS = 60;

  /**
   * Searches.
   *
   * @param value of a factor above 0; NaN where there is none, beyond which nothing is looked at
   */
  public static BreakEven of(DoubleUnaryOperator value) {
    double at1 = value.applyAsDouble(1);
    if (at1 == 0) {
      return new BreakEven(OptionalDouble.of(1), 1, 1, at1);
    }
    Side down = new Side(value, 1 / STEP, at1);
    Side up = new Side(value, STEP, at1);
    OptionalDouble found = OptionalDouble.empty();
    for (int step = 0; step < STEPS && found.isEmpty() && !Double.isNaN(at1); step++) {
      found = down.next();
      if (found.isEmpty()) {
        found = up.next();
      }
    }
    return new BreakEven(found, down.last, up.last, at1);
  }

  /** One way away from 1. */
  private static final class Side {
    private final DoubleUnaryOperator value;
    private final double step;
    private double last = 1;
    private double atLast;
    private boolean ended;

    Side(DoubleUnaryOperator value, double step, double at1) {
      this.value = value;
      this.step = step;
      atLast = at1;
    }

    /** A step further; the crossing if there is one within it. */
    OptionalDouble next() {
      if (ended) {
        return OptionalDouble.empty();
      }
      double factor = last * step;
      double there = value.applyAsDouble(factor);
      if (Double.isNaN(there)) {
        ended = true;
        return OptionalDouble.empty();
      }
      double before = last;
      last = factor;
      if (there == 0) {
        return OptionalDouble.of(factor);
      }
      if (Math.signum(there) != Math.signum(atLast)) {
        return OptionalDouble.of(within(Math.min(before, factor), Math.max(before, factor)));
      }
      atLast = there;
      return OptionalDouble.empty();
    }

    private double within(double low, double high) {
      return new BrentSolver(tolerance(), tolerance() * low)
          .solve(EVALUATIONS, value::applyAsDouble, low, high);
    }
  }
}
