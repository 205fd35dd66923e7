package hurdline.fit;

import java.util.Optional;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * The parameters that make what was seen most likely: the simplex of Nelder and Mead, then Newton's
 * steps, whose second derivatives also give the covariance (the inverse of the observed
 * information).
 *
 * <p>Agrees with R's survreg and optim to 1e-6 in log-likelihood on the sets of {@code
 * LawOracleTest}.
 */
final class MaximumLikelihood {
  private static final int MOST_EVALUATIONS = 5_000;
  private static final int MOST_STEPS = 20;
  private static final double SIMPLEX_SIDE = 0.2;
  private static final double SLOPE_STEP = 1e-4;
  private static final double CURVE_STEP = 1e-3;
  private static final double STILL = 1e-8;

  /** Parameters are logarithms of amounts near 1; a search that runs so far has no maximum. */
  private static final double FARTHEST = 40;

  private static final double REFUSED = 10;
  private static final double NEVER = -1e100;

  private final Law law;
  private final Observations seen;

  private MaximumLikelihood(Law law, Observations seen) {
    this.law = law;
    this.seen = seen;
  }

  /** The fit; nothing where too little was seen or the likelihood has no maximum. */
  static Optional<LawFit> fit(Law law, Observations seen, double low) {
    boolean enough = law == Law.EXPONENTIAL ? seen.ended() >= 1 : seen.vary();
    return enough ? new MaximumLikelihood(law, seen).fit(low) : Optional.empty();
  }

  private Optional<LawFit> fit(double low) {
    double[] t = law.start(new Law.Start(seen));
    try {
      t = climbed(isStraight() ? t : simplex(t));
    } catch (TooManyEvaluationsException e) {
      return Optional.empty();
    }
    double[][] covariance = inverse(negated(curvature(t)));
    boolean runsAway = java.util.Arrays.stream(t).anyMatch(x -> Math.abs(x) > REFUSED);
    if (runsAway || covariance.length == 0) {
      return Optional.empty();
    }
    double logLikelihood = at(t) - seen.whole.length * Math.log(seen.unit);
    return Optional.of(new LawFit(law, t, covariance, logLikelihood, seen.ended(), seen.unit, low));
  }

  /** Whether the start is the answer but for rounding: an exponential law without intervals. */
  private boolean isStraight() {
    return law == Law.EXPONENTIAL
        && seen.low.length == 0
        && seen.cutHigh == Double.POSITIVE_INFINITY;
  }

  private double at(double[] t) {
    for (double x : t) {
      if (!(Math.abs(x) < FARTHEST)) {
        return NEVER;
      }
    }
    double value = law.logLikelihood(seen, t);
    return value < Double.POSITIVE_INFINITY ? Math.max(value, NEVER) : NEVER;
  }

  private double[] simplex(double[] start) {
    return new SimplexOptimizer(new SimpleValueChecker(1e-10, 1e-8))
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            GoalType.MAXIMIZE,
            new ObjectiveFunction(this::at),
            new InitialGuess(start),
            new NelderMeadSimplex(start.length, SIMPLEX_SIDE))
        .getPoint();
  }

  /** Newton's steps, each halved until it does not lead down. */
  private double[] climbed(double[] start) {
    double[] t = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[][] inverse = inverse(negated(curvature(t)));
      if (inverse.length == 0) {
        return t;
      }
      double[] way = times(inverse, slope(t));
      double share = 1;
      double here = at(t);
      while (share > 1e-6 && at(along(t, way, share)) < here - 1e-12 * Math.abs(here)) {
        share /= 2;
      }
      if (share <= 1e-6) {
        return t;
      }
      t = along(t, way, share);
      if (largest(way) * share < STILL) {
        return t;
      }
    }
    return t;
  }

  private double[] slope(double[] t) {
    double[] slope = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      slope[i] =
          (at(moved(t, i, SLOPE_STEP, i, 0)) - at(moved(t, i, -SLOPE_STEP, i, 0)))
              / (2 * SLOPE_STEP);
    }
    return slope;
  }

  /** Second derivatives, those along an axis by five points. */
  private double[][] curvature(double[] t) {
    double h = CURVE_STEP;
    double here = at(t);
    double[][] second = new double[t.length][t.length];
    for (int i = 0; i < t.length; i++) {
      double near = at(moved(t, i, h, i, 0)) + at(moved(t, i, -h, i, 0));
      double far = at(moved(t, i, 2 * h, i, 0)) + at(moved(t, i, -2 * h, i, 0));
      second[i][i] = (16 * near - far - 30 * here) / (12 * h * h);
      for (int j = 0; j < i; j++) {
        double same = at(moved(t, i, h, j, h)) + at(moved(t, i, -h, j, -h));
        double other = at(moved(t, i, h, j, -h)) + at(moved(t, i, -h, j, h));
        second[i][j] = (same - other) / (4 * h * h);
        second[j][i] = second[i][j];
      }
    }
    return second;
  }

  private static double[] moved(double[] t, int i, double a, int j, double b) {
    double[] other = t.clone();
    other[i] += a;
    other[j] += b;
    return other;
  }

  private static double[] along(double[] t, double[] way, double share) {
    double[] other = t.clone();
    for (int i = 0; i < t.length; i++) {
      other[i] += share * way[i];
    }
    return other;
  }

  private static double[][] negated(double[][] matrix) {
    double[][] other = new double[matrix.length][matrix.length];
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j < matrix.length; j++) {
        other[i][j] = -matrix[i][j];
      }
    }
    return other;
  }

  private static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[vector.length];
    for (int i = 0; i < vector.length; i++) {
      for (int j = 0; j < vector.length; j++) {
        product[i] += matrix[i][j] * vector[j];
      }
    }
    return product;
  }

  private static double largest(double[] vector) {
    return java.util.Arrays.stream(vector).map(Math::abs).max().orElse(0);
  }

  /** Of a matrix of one or two rows; empty where it is not positive definite. */
  private static double[][] inverse(double[][] a) {
    if (a.length == 1) {
      return a[0][0] > 0 ? new double[][] {{1 / a[0][0]}} : new double[0][0];
    }
    double determinant = a[0][0] * a[1][1] - a[0][1] * a[1][0];
    return a[0][0] > 0 && determinant > 0
        ? new double[][] {
          {a[1][1] / determinant, -a[0][1] / determinant},
          {-a[1][0] / determinant, a[0][0] / determinant}
        }
        : new double[0][0];
  }
}
