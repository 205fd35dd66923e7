package hurdline.fit;

import hurdline.random.Distribution;
import hurdline.random.Exponential;
import hurdline.random.Gamma;
import hurdline.random.Lognormal;
import hurdline.random.Weibull;
import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.Erfcx;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * The laws of amounts above 0 that are fitted. Each has parameters t that may be any number, so
 * that a search needs no bounds; x is an amount, S the share of amounts above it, F the share at or
 * below it.
 */
public enum Law {
  /** S = exp(−x/m); t₀ = ln m. */
  EXPONENTIAL(1) {
    @Override
    double logSurvival(double x, double[] t) {
      return -x * Math.exp(-t[0]);
    }

    @Override
    double share(double x, double[] t) {
      return -Math.expm1(-x * Math.exp(-t[0]));
    }

    @Override
    double logDensities(Observations seen, double[] t) {
      return -seen.whole.length * t[0] - seen.sum * Math.exp(-t[0]);
    }

    @Override
    double[] start(Start from) {
      return new double[] {Math.log(from.exposed)};
    }

    @Override
    public Distribution distribution(double[] t, double unit, double low) {
      return new Exponential(Math.exp(t[0]) * unit, low, Double.POSITIVE_INFINITY);
    }
  },

  /** S = exp(−(x/λ)ᵏ); t₀ = ln k, t₁ = ln λ. */
  WEIBULL(2) {
    @Override
    double logSurvival(double x, double[] t) {
      return -Math.exp(Math.exp(t[0]) * (Math.log(x) - t[1]));
    }

    @Override
    double share(double x, double[] t) {
      return x > 0 ? -Math.expm1(logSurvival(x, t)) : 0;
    }

    @Override
    double logDensities(Observations seen, double[] t) {
      double k = Math.exp(t[0]);
      double powers = 0;
      for (double log : seen.logWhole) {
        powers += Math.exp(k * (log - t[1]));
      }
      return seen.whole.length * (t[0] - k * t[1]) + (k - 1) * seen.sumLog - powers;
    }

    /** The logarithm has a deviation of π/(k√6) and a mean of ln λ − γ/k. */
    @Override
    double[] start(Start from) {
      double k = Math.min(50, Math.max(0.2, Math.PI / Math.sqrt(6) / from.sdLog));
      return new double[] {Math.log(k), from.meanLog + 0.5772156649015329 / k};
    }

    @Override
    public Distribution distribution(double[] t, double unit, double low) {
      return new Weibull(Math.exp(t[0]), Math.exp(t[1]) * unit, low, Double.POSITIVE_INFINITY);
    }
  },

  /** Gamma of shape a and mean m; t₀ = ln a, t₁ = ln m, whose estimates are nearly independent. */
  GAMMA(2) {
    @Override
    double logSurvival(double x, double[] t) {
      double a = Math.exp(t[0]);
      double y = x * a * Math.exp(-t[1]);
      double q = RegularizedGamma.Q.value(a, y);
      // Far out Q is y^(a−1)·e^(−y)/Γ(a)·(1 + (a − 1)/y + …), Abramowitz and Stegun 6.5.32, from
      // memory.
      return q > 1e-300
          ? Math.log(q)
          : (a - 1) * Math.log(y) - y - LogGamma.value(a) - Math.log1p(-(a - 1) / y);
    }

    @Override
    double share(double x, double[] t) {
      double a = Math.exp(t[0]);
      return x > 0 ? RegularizedGamma.P.value(a, x * a * Math.exp(-t[1])) : 0;
    }

    @Override
    double logDensities(Observations seen, double[] t) {
      double a = Math.exp(t[0]);
      double perScale = a * Math.exp(-t[1]);
      return (a - 1) * seen.sumLog
          - perScale * seen.sum
          + seen.whole.length * (a * (t[0] - t[1]) - LogGamma.value(a));
    }

    @Override
    double[] start(Start from) {
      return new double[] {2 * Math.log(from.mean / from.sd), Math.log(from.mean)};
    }

    @Override
    public Distribution distribution(double[] t, double unit, double low) {
      double mean = Math.exp(t[1]) * unit;
      return new Gamma(mean, mean * Math.exp(-t[0] / 2), low, Double.POSITIVE_INFINITY);
    }
  },

  /** ln x is normal; t₀ its mean, t₁ the logarithm of its deviation. */
  LOGNORMAL(2) {
    @Override
    double logSurvival(double x, double[] t) {
      double y = z(x, t) / Math.sqrt(2);
      return y > 0 ? -y * y + Math.log(Erfcx.value(y) / 2) : Math.log(Erfc.value(y) / 2);
    }

    @Override
    double share(double x, double[] t) {
      return x > 0 ? Erfc.value(-z(x, t) / Math.sqrt(2)) / 2 : 0;
    }

    private double z(double x, double[] t) {
      return (Math.log(x) - t[0]) * Math.exp(-t[1]);
    }

    @Override
    double logDensities(Observations seen, double[] t) {
      int n = seen.whole.length;
      double squares = seen.sumLog2 - 2 * t[0] * seen.sumLog + n * t[0] * t[0];
      return -seen.sumLog
          - n * (t[1] + Math.log(2 * Math.PI) / 2)
          - Math.exp(-2 * t[1]) * squares / 2;
    }

    @Override
    double[] start(Start from) {
      return new double[] {from.meanLog, Math.log(from.sdLog)};
    }

    @Override
    public Distribution distribution(double[] t, double unit, double low) {
      double variance = Math.exp(2 * t[1]);
      double mean = Math.exp(t[0] + variance / 2) * unit;
      return new Lognormal(
          mean, mean * Math.sqrt(Math.expm1(variance)), low, Double.POSITIVE_INFINITY);
    }
  };

  private final int parameters;

  Law(int parameters) {
    this.parameters = parameters;
  }

  public int parameters() {
    return parameters;
  }

  /** As a plant file calls it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** ln S. */
  abstract double logSurvival(double x, double[] t);

  /** F. */
  abstract double share(double x, double[] t);

  /** Σ ln f over what was seen whole. */
  abstract double logDensities(Observations seen, double[] t);

  abstract double[] start(Start from);

  /**
   * As the engine draws it.
   *
   * @param unit what an amount of 1 stands for
   * @param low drawn only above it; 0 for all
   */
  public abstract Distribution distribution(double[] t, double unit, double low);

  /** F among what could be seen from an age on. */
  double shareSeen(double x, double[] t, double entry, double cutHigh) {
    if (cutHigh < Double.POSITIVE_INFINITY) {
      double below = entry > 0 ? share(entry, t) : 0;
      return (share(x, t) - below) / (share(cutHigh, t) - below);
    }
    return entry > 0 ? -Math.expm1(logSurvival(x, t) - logSurvival(entry, t)) : share(x, t);
  }

  /**
   * ℓ = Σ ln f(x) over what was seen whole + Σ ln S(c) over what had not ended + Σ ln(F(b) − F(a))
   * over intervals − Σ ln S(e) over ages from which it was seen, or − Σ ln(F(h) − F(e)) where
   * nothing above h was told.
   */
  double logLikelihood(Observations seen, double[] t) {
    double sum = logDensities(seen, t);
    for (double amount : seen.going) {
      sum += logSurvival(amount, t);
    }
    for (int i = 0; i < seen.low.length; i++) {
      sum += seen.between[i] * Math.log(share(seen.high[i], t) - share(seen.low[i], t));
    }
    boolean isCut = seen.cutHigh < Double.POSITIVE_INFINITY;
    for (int i = 0; i < seen.entry.length; i++) {
      double visible =
          isCut
              ? Math.log(share(seen.cutHigh, t) - share(seen.entry[i], t))
              : logSurvival(seen.entry[i], t);
      sum -= seen.entries[i] * visible;
    }
    return sum;
  }

  /** Moments from which a search starts; what had not ended counts as if it had. */
  static final class Start {
    final double mean;
    final double sd;
    final double meanLog;
    final double sdLog;

    /** All that was counted for each end. */
    final double exposed;

    Start(Observations seen) {
      double[] x = seen.middles();
      double sum = 0;
      double squares = 0;
      double logs = 0;
      double logSquares = 0;
      for (double amount : x) {
        double log = Math.log(Math.max(amount, 1e-12));
        sum += amount;
        squares += amount * amount;
        logs += log;
        logSquares += log * log;
      }
      mean = sum / x.length;
      sd = Math.sqrt(Math.max(squares / x.length - mean * mean, 1e-8 * mean * mean));
      meanLog = logs / x.length;
      sdLog = Math.sqrt(Math.max(logSquares / x.length - meanLog * meanLog, 1e-8));
      exposed = Math.max(seen.exposure(), 1e-12) / Math.max(1, seen.ended());
    }
  }
}
