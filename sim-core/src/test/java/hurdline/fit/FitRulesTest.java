package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.fit.LawChoice.Chosen;
import hurdline.fit.Observations.Seen;
import hurdline.random.Distribution;
import hurdline.random.Exponential;
import hurdline.random.Lognormal;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.random.Weibull;
import hurdline.records.Spans;
import hurdline.records.Spans.Span;
import hurdline.records.StopRecord;
import hurdline.records.StopRecord.Repair;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Rules of fits that can be checked by hand. */
class FitRulesTest {
  private static final RandomStream STREAM = new RandomStreams(31).of(1, "rules");

  /**
   * NIST/SEMATECH e-Handbook 8.2.3.4: ten failures of a system, times in hours, tested to 1,500 h.
   */
  private static final double[] NIST_TIMES = {5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478};

  @Test
  void anExponentialIsAllThatWasCountedOverTheNumberOfStops() {
    Observations seen =
        Observations.of(List.of(Seen.whole(10, 0), Seen.whole(20, 0), Seen.going(30)));
    LawFit fit = MaximumLikelihood.fit(Law.EXPONENTIAL, seen, 0).orElseThrow();
    assertThat(fit.mean()).isCloseTo(60 / 2.0, within(1e-6));
    assertThat(fit.meanErrorShare()).as("1/sqrt(n)").isCloseTo(1 / Math.sqrt(2), within(1e-4));
  }

  @Test
  void whatWasHiddenBelowAThresholdIsTakenIntoAccount() {
    // Beyond 5 an exponential has mean 5 + m, whatever it has below.
    Observations seen =
        Observations.of(List.of(Seen.whole(6, 5), Seen.whole(9, 5), Seen.whole(15, 5)));
    LawFit fit = MaximumLikelihood.fit(Law.EXPONENTIAL, seen, 5).orElseThrow();
    assertThat(fit.mean()).as("mean of what is drawn above 5").isCloseTo(10, within(1e-6));
  }

  @Test
  void amountsThatHardlyDifferAreAPlan() {
    Chosen chosen = every(8, 8, 8.01, 7.99, 8, 3);
    assertThat(chosen.taken()).isInstanceOf(Taken.Fixed.class);
    assertThat(chosen.notes()).containsExactly("a plan: 5 of 6 within 3 % of the middle");
  }

  @Test
  void fewStopsAreExponentialAndSaidToBeThin() {
    Chosen chosen = every(3, 8, 21);
    assertThat(((Taken.OfLaw) chosen.taken()).fit().law()).isEqualTo(Law.EXPONENTIAL);
    assertThat(chosen.notes()).containsExactly("thin: fewer than 5 stops");
  }

  @Test
  void theLawThatMadeManyAmountsIsFoundAndFits() {
    Chosen chosen = every(drawn(new Weibull(3, 10, 0, Double.POSITIVE_INFINITY), 200));
    LawFit fit = ((Taken.OfLaw) chosen.taken()).fit();
    assertThat(fit.law()).isEqualTo(Law.WEIBULL);
    assertThat(Math.exp(fit.t()[0])).isCloseTo(3, within(0.5));
    assertThat(chosen.tried().get(0).p()).isGreaterThan(0.01);
    assertThat(fit.aicc())
        .isLessThan(
            MaximumLikelihood.fit(
                    Law.EXPONENTIAL,
                    seen(drawn(new Weibull(3, 10, 0, Double.POSITIVE_INFINITY), 200)),
                    0)
                .orElseThrow()
                .aicc());
  }

  @Test
  void aWrongLawIsRejected() {
    double[] amounts = drawn(Lognormal.of(10, 30), 150);
    Observations seen = seen(amounts);
    LawFit wrong = MaximumLikelihood.fit(Law.EXPONENTIAL, seen, 0).orElseThrow();
    assertThat(GoodnessOfFit.of(wrong, seen, GoodnessOfFit.amounts(seen, 0), STREAM).verdict())
        .isEqualTo(GoodnessOfFit.Verdict.DOES_NOT_FIT);
  }

  /**
   * Laplace's statistic of the handbook's data to the last failure: mean of the first nine 467.2,
   * half of 1,478 is 739.
   */
  @Test
  void trendIsLaplacesOverTheSpread() {
    double[] amounts = new double[NIST_TIMES.length];
    for (int i = 0; i < amounts.length; i++) {
      amounts[i] = NIST_TIMES[i] - (i == 0 ? 0 : NIST_TIMES[i - 1]);
    }
    assertThat(Trend.of(amounts)).as("too few for a verdict").isEmpty();
    double[] twice =
        DoubleStream.concat(DoubleStream.of(amounts), DoubleStream.of(amounts)).toArray();
    assertThat(Trend.of(twice).orElseThrow().isSignificant()).isFalse();
  }

  @Test
  void amountsThatShrinkAreATrendAndItsPlaceIsFound() {
    double[] amounts =
        DoubleStream.concat(
                DoubleStream.of(drawn(new Exponential(20, 0, Double.POSITIVE_INFINITY), 40)),
                DoubleStream.of(drawn(new Exponential(5, 0, Double.POSITIVE_INFINITY), 40)))
            .toArray();
    Trend trend = Trend.of(amounts).orElseThrow();
    assertThat(trend.isSignificant()).isTrue();
    assertThat(trend.statistic()).as("more often later").isPositive();
    assertThat(Trend.change(amounts).orElseThrow()).isBetween(30, 50);
  }

  @Test
  void amountsThatGoInRunsAreClusters() {
    double[] amounts = new double[60];
    for (int i = 0; i < amounts.length; i++) {
      amounts[i] = i / 10 % 2 == 0 ? 1 + i % 3 : 20 + i % 7;
    }
    assertThat(Clusters.of(amounts, STREAM).orElseThrow().isSignificant()).isTrue();
    assertThat(
            Clusters.of(drawn(new Exponential(5, 0, Double.POSITIVE_INFINITY), 100), STREAM)
                .orElseThrow()
                .isSignificant())
        .isFalse();
  }

  /**
   * Day shifts from 6 to 14, counted in hours: 6 on the first day to 8 h later, then 22 h of night
   * that do not count.
   */
  @Test
  void amountsGoFromAnEndToTheNextBeginOnTheCount() {
    Spans shifts = Spans.of(List.of(span(6, 14), span(30, 38), span(54, 62)));
    StopAmounts amounts =
        new StopAmounts(
            List.of(stop(8, 9), stop(32, 33), stop(35, 36)), List.of(), List.of(), 62 * 3600);
    StopAmounts.Every every = amounts.every(new Count.Hours(shifts), 60).get(0);
    assertThat(every.seen())
        .containsExactly(Seen.whole(7 * 3600, 0), Seen.whole(2 * 3600, 0), Seen.going(10 * 3600));
    assertThat(every.spells()).containsExactly(19 * 3600);
  }

  @Test
  void aChangeCutsTheAmountAndBeginsAtAgeZero() {
    StopAmounts amounts =
        new StopAmounts(
            List.of(stop(8, 9), stop(20, 21)), List.of(15 * 3600.0), List.of(), 30 * 3600);
    List<StopAmounts.Every> periods = amounts.every(new Count.Calendar(), 60);
    assertThat(periods.get(0).seen()).containsExactly(Seen.going(6 * 3600));
    assertThat(periods.get(1).seen())
        .containsExactly(Seen.whole(5 * 3600, 0), Seen.going(9 * 3600));
  }

  @Test
  void aDayWithoutShiftsEndsTheSpell() {
    StopAmounts amounts =
        new StopAmounts(
            List.of(stop(8, 9), stop(20, 21), stop(25, 26)),
            List.of(),
            List.of(15 * 3600.0),
            30 * 3600);
    assertThat(amounts.every(new Count.Calendar(), 60).get(0).seen())
        .containsExactly(Seen.going(6 * 3600), Seen.whole(4 * 3600, 0), Seen.going(4 * 3600));
  }

  @Test
  void aRepairOverNightIsItsCrewedPart() {
    Spans shifts = Spans.of(List.of(span(6, 14), span(30, 38)));
    StopAmounts amounts = new StopAmounts(List.of(stop(13, 31)), List.of(), List.of(), 40 * 3600);
    assertThat(amounts.lasts(shifts, false, 0).seen().get(0).high())
        .isBetween(2 * 3600.0, 2 * 3600.0 + 60);
    assertThat(amounts.lasts(shifts, true, 0).seen().get(0).high())
        .isBetween(18 * 3600.0, 18 * 3600.0 + 60);
  }

  private static Span span(int fromH, int toH) {
    return new Span(fromH * 3600.0, toH * 3600.0);
  }

  private static StopRecord stop(int fromH, int toH) {
    return new StopRecord(
        1, "m", "s", fromH * 3600.0, fromH * 3600.0, toH * 3600.0, Repair.WHOLE, true, 60);
  }

  private static Chosen every(double... amounts) {
    return new LawChoice(seen(amounts), GoodnessOfFit.amounts(seen(amounts), 0), 0, STREAM).every();
  }

  private static Observations seen(double... amounts) {
    return Observations.of(
        DoubleStream.of(amounts).mapToObj(amount -> Seen.whole(amount, 0)).toList());
  }

  private static double[] drawn(Distribution law, int n) {
    RandomStream stream = new RandomStreams(7).of(n, law.toString());
    return DoubleStream.generate(() -> law.at(stream.next())).limit(n).toArray();
  }
}
