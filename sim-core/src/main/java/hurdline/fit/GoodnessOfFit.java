package hurdline.fit;

import hurdline.fit.Observations.Seen;
import hurdline.random.RandomStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;

/**
 * Whether a law whose parameters were fitted to the same amounts fits them: Anderson and Darling's
 * distance set beside those of amounts drawn from the fitted law, seen through the same windows and
 * fitted again (parametric bootstrap).
 *
 * <p>Drawing ends once 20 are at least as far (Besag and Clifford 1991), at most after 999, or
 * after 299 of which none is. A law that is right is then called wrong at 5 % in about 5 % of
 * samples, {@code FitCoverageProofTest}.
 *
 * @param a2 the distance
 * @param p the share of draws at least as far
 */
record GoodnessOfFit(double a2, double p, int drawn) {
  private static final int ENOUGH = 20;
  private static final int MOST = 999;

  /**
   * As many draws of which none is as far leave a p below 1 in 300, and no verdict depends on more.
   */
  private static final int CLEAR = 299;

  /** Draws amounts as the seen ones came about. */
  interface Window {
    /**
     * @param amounts one after another from the fitted law
     */
    Observations again(DoubleSupplier amounts);
  }

  static GoodnessOfFit of(LawFit fit, Observations seen, Window window, RandomStream stream) {
    double found = AndersonDarling.of(fit, seen);
    DoubleUnaryOperator curve = fit.distribution().curve();
    int far = 0;
    int drawn = 0;
    for (int asked = 0;
        asked < 2 * MOST && drawn < MOST && !(drawn == CLEAR && far == 0);
        asked++) {
      Observations again = window.again(() -> curve.applyAsDouble(stream.next()));
      Optional<LawFit> other = MaximumLikelihood.fit(fit.law(), again, fit.low());
      if (other.isEmpty()) {
        continue;
      }
      drawn++;
      far += AndersonDarling.of(other.get(), again) >= found ? 1 : 0;
      if (far == ENOUGH) {
        return new GoodnessOfFit(found, (double) far / drawn, drawn);
      }
    }
    return new GoodnessOfFit(found, (far + 1.0) / (drawn + 1.0), drawn);
  }

  /**
   * Spells that each begin at age 0 and end after a length, with a stop whenever an amount is over.
   */
  static Window spells(double[] lengths) {
    return amounts -> {
      List<Seen> seen = new ArrayList<>();
      for (double length : lengths) {
        double left = length;
        double amount = amounts.getAsDouble();
        while (amount <= left) {
          seen.add(Seen.whole(amount, 0));
          left -= amount;
          amount = amounts.getAsDouble();
        }
        seen.add(Seen.going(Math.max(left, 0)));
      }
      return Observations.of(seen);
    };
  }

  /** As many amounts as were seen, told by the same steps of a clock. */
  static Window amounts(Observations seen, double low) {
    return amounts -> {
      List<Seen> again = new ArrayList<>();
      for (Seen one : seen.all()) {
        double half = (one.high() - one.low()) / 2;
        double amount = amounts.getAsDouble();
        again.add(half == 0 ? Seen.whole(amount, one.entry()) : told(amount, half, low));
      }
      return Observations.of(again);
    };
  }

  /** An amount as two readings of a clock tell it, whose step is {@code half}. */
  static Seen told(double amount, double half, double low) {
    double read = Math.rint(amount / half) * half;
    return new Seen(Math.max(low, read - half), Math.max(read + half, low + half), low);
  }

  /** In one word. */
  Verdict verdict() {
    return p >= 0.1 ? Verdict.FITS : p >= 0.01 ? Verdict.DOUBTFUL : Verdict.DOES_NOT_FIT;
  }

  enum Verdict {
    FITS,
    DOUBTFUL,
    DOES_NOT_FIT;

    String word() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
  }
}
