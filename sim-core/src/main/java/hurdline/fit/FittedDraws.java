package hurdline.fit;

import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.random.Empirical;
import hurdline.random.Normal;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Draws of fitted figures, as far as their records leave them open: a law's parameters are normal
 * around those fitted with their covariance, with a common factor where the error of the mean is
 * larger than that; a law of few exponential amounts has the mean T/Γ(n), T all that was counted
 * and n the ends; recorded amounts are drawn again from themselves, other means from their errors.
 * Figures are drawn independently of each other.
 *
 * @see "Cheng and Holland 1997; the exact draw of few, and how often intervals from such draws
 *     held: measured for this program"
 */
final class FittedDraws {
  private static final int ROWS = 200;
  private static final int TRIES = 100;

  private final RandomStreams streams;

  FittedDraws(RandomStreams streams) {
    this.streams = streams;
  }

  /** Values as a plant file has them; none where the file's figure stays. */
  List<String> of(AmountFit fit, ShownUnit unit) {
    if (fit.taken() instanceof Taken.Left || Double.isNaN(fit.errorShare())) {
      return List.of();
    }
    return rows(fit.key(), stream -> drawn(fit, stream), unit);
  }

  /** Draws of a mean with its error; spread and bounds stay. */
  List<String> of(String key, Distribution taken, double error, ShownUnit unit) {
    return rows(
        key,
        stream -> {
          double mean = taken.mean() + error * stream.nextNormal();
          return taken instanceof Normal law
              ? new Normal(
                  law.uncutMean() + mean - taken.mean(), law.uncutSd(), law.low(), law.high())
              : new Constant(mean);
        },
        unit);
  }

  /**
   * Joint draws of a mill's energy and exponent; those of the exponent only where it was fitted.
   */
  List<List<String>> pairs(String key, PowerOfOpening law, ShownUnit unit) {
    List<String> energy = new ArrayList<>();
    List<String> exponent = new ArrayList<>();
    double[][] c = law.covariance();
    double first = Math.sqrt(c[0][0]);
    double slope = first > 0 ? c[0][1] / first : 0;
    double rest = Math.sqrt(Math.max(0, c[1][1] - slope * slope));
    for (int row = 1; row <= ROWS; row++) {
      RandomStream stream = streams.of(row, key + " draws");
      double z = stream.nextNormal();
      double n = law.exponent() + slope * z + rest * stream.nextNormal();
      energy.add(unit.text(Math.exp(law.lnEnergy() + first * z) * unit.inSi()));
      exponent.add(LawText.digits(Math.max(0, n))); // the format has no exponent below 0
    }
    return law.hasExponent() ? List.of(energy, exponent) : List.of(energy, List.of());
  }

  private List<String> rows(String key, Function<RandomStream, Distribution> draw, ShownUnit unit) {
    List<String> rows = new ArrayList<>();
    for (int row = 1; row <= ROWS; row++) {
      rows.add(text(streams.of(row, key + " draws"), draw, unit));
    }
    return rows;
  }

  /** What no plant file can have is drawn again. */
  private static String text(
      RandomStream stream, Function<RandomStream, Distribution> draw, ShownUnit unit) {
    for (int again = 0; again < TRIES; again++) {
      try {
        Distribution drawn = draw.apply(stream);
        if (drawn.mean() > 0) {
          return LawText.of(drawn, unit).text();
        }
      } catch (IllegalArgumentException outside) {
        continue;
      }
    }
    throw new IllegalStateException("no draw of " + TRIES + " was one that a plant can have");
  }

  private static Distribution drawn(AmountFit fit, RandomStream stream) {
    Taken taken = fit.taken();
    if (taken instanceof Taken.OfLaw law) {
      return isFew(fit, law.fit()) ? few(fit, law.fit(), stream) : around(fit, law.fit(), stream);
    }
    if (taken instanceof Taken.AsSeen seen) {
      List<Double> amounts = seen.amounts();
      return new Empirical(
          IntStream.range(0, amounts.size())
              .mapToObj(i -> amounts.get((int) (stream.next() * amounts.size())))
              .toList());
    }
    return new Constant(fit.meanInUnit() * Math.exp(fit.errorShare() * stream.nextNormal()));
  }

  private static boolean isFew(AmountFit fit, LawFit law) {
    return law.law() == Law.EXPONENTIAL
        && law.low() == 0
        && fit.ended() < LawChoice.FEW
        && fit.key().endsWith(".every");
  }

  private static Distribution few(AmountFit fit, LawFit law, RandomStream stream) {
    int n = fit.ended();
    double gamma =
        ChiSquaredDistribution.of(2.0 * n).inverseCumulativeProbability(stream.next()) / 2;
    double mean = fit.meanInUnit() * n / gamma;
    return law.law().distribution(new double[] {Math.log(mean / law.unit())}, law.unit(), 0);
  }

  private static Distribution around(AmountFit fit, LawFit law, RandomStream stream) {
    double[][] c = law.covariance();
    double[] t = law.t().clone();
    double first = Math.sqrt(c[0][0]);
    double z = stream.nextNormal();
    t[0] += first * z;
    if (t.length > 1) {
      double slope = c[0][1] / first;
      t[1] += slope * z + Math.sqrt(Math.max(0, c[1][1] - slope * slope)) * stream.nextNormal();
    }
    double own = law.meanErrorShare();
    double more = Math.sqrt(Math.max(0, fit.errorShare() * fit.errorShare() - own * own));
    return law.law().distribution(t, law.unit() * Math.exp(more * stream.nextNormal()), law.low());
  }
}
