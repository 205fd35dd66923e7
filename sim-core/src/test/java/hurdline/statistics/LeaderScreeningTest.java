package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.statistics.LeaderScreening.Candidate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeaderScreeningTest {
  private static final ScreeningYears SHORT = new ScreeningYears(10, List.of(10, 20, 40));

  private static List<Candidate> candidates(int count) {
    return IntStream.range(0, count).mapToObj(i -> new Candidate(i, 0, false)).toList();
  }

  /** Plan i has its level in every year. */
  private static double[][] levels(double... level) {
    double[][] years = new double[level.length][640];
    for (int i = 0; i < level.length; i++) {
      Arrays.fill(years[i], level[i]);
    }
    return years;
  }

  @Test
  void aRoundIsJudgedOnItsNewYearsAgainstTheLeaderOfThoseBefore() {
    ScreeningYears terms = new ScreeningYears(2, List.of(4));
    double[][] years = {
      {5, 5, 1, 2, 3, 4}, // leads by the first two years
      {4, 4, 3, 5, 4, 6}, // differences 2, 3, 1, 2
      {0, 0, -9, -8, -9, -8} // differences -10, -10, -12, -12
    };
    LeaderScreening screening = new LeaderScreening(candidates(3), 0.05, terms);
    LeaderScreening.Round round = screening.judge(years);
    double t = TDistribution.of(3).inverseSurvivalProbability(0.05);
    assertThat(round.leader()).isZero();
    assertThat(round.gap()).isCloseTo(2 + t * Math.sqrt(2.0 / 3) / 2, within(1e-12));
    assertThat(screening.left()).containsExactly(0, 1);
    assertThat(screening.exits()).hasSize(1);
    LeaderScreening.Exit exit = screening.exits().get(0);
    assertThat(exit.difference()).isEqualTo(-11);
    assertThat(exit.limit()).isCloseTo(-11 + t * Math.sqrt(4.0 / 3) / 2, within(1e-12));
  }

  @Test
  void theChanceOfAnErrorIsDividedByTheRoundsThatWereSaid() {
    double[][] years = {{0, 1, 2, 3}, {0, 1, 1, 5}};
    ScreeningYears two = new ScreeningYears(2, List.of(2, 2));
    LeaderScreening screening = new LeaderScreening(candidates(2), 0.05, two);
    double t = TDistribution.of(1).inverseSurvivalProbability(0.025);
    assertThat(screening.judge(years).gap())
        .isCloseTo(0.5 + t * Math.sqrt(4.5) / Math.sqrt(2), within(1e-9));
  }

  @Test
  void aLongTailToTheRightRaisesTheLimitAsHallsFormulaSays() {
    double[] skewed = {-2, -2.1, -1.9, -2, -2.2, -1.8, -2, -2, 1, -2.05};
    Moments moments = Moments.of(skewed);
    double g = moments.skewness();
    double y = -TDistribution.of(9).inverseSurvivalProbability(0.01) / Math.sqrt(10);
    double hall = moments.mean() - moments.sd() * 3 / g * (Math.cbrt(1 + g * (y - g / 60)) - 1);
    assertThat(new UpperLimit(10, 0.01).of(skewed)).isCloseTo(hall, within(1e-12));
    double[] turned = Arrays.stream(skewed).map(d -> -d).toArray();
    assertThat(new UpperLimit(10, 0.01).of(turned))
        .isCloseTo(Intervals.student(Moments.of(turned), 10, 0.98).high(), within(1e-12));
  }

  /** Johnson's limit rises again for plans that are far below; Hall's may not. */
  @Test
  void thePlanThatIsWorseGoesOutTheSooner() {
    double[] skewed = {-1, -1.1, -0.9, -1, -1.2, -0.8, -1, -1, 2, -1.05};
    double before = Double.POSITIVE_INFINITY;
    for (double below = 0; below <= 300; below += 3) {
      double shift = below;
      double limit =
          new UpperLimit(10, 0.01).of(Arrays.stream(skewed).map(d -> d - shift).toArray());
      assertThat(limit).isLessThan(before);
      before = limit;
    }
    assertThat(before).isNegative();
  }

  /** γ of the sample is 3.0; the limit of n = 10 and α/M = 0.05 is 0.3·√10/1.83 = 0.52. */
  @Test
  void aPlanWithALongTailIsCountedAsUnsure() {
    ScreeningYears once = new ScreeningYears(10, List.of(10));
    double[][] years = levels(0, 0, 0, 0);
    double[] skewed = {-1, -1.1, -0.9, -1, -1.2, -0.8, -1, -1, 2, -1.05};
    for (int year = 0; year < 10; year++) {
      years[1][10 + year] = skewed[year];
      years[2][10 + year] = -skewed[year];
      years[3][10 + year] = skewed[year] - 50;
    }
    LeaderScreening screening = new LeaderScreening(candidates(4), 0.05, once);
    screening.judge(years);
    assertThat(screening.left()).doesNotContain(3);
    assertThat(screening.unsure()).isEqualTo(2);
  }

  @Test
  void alikePlansStayAndTheCheapestOfThemLeads() {
    List<Candidate> alike =
        List.of(new Candidate(0, 9, false), new Candidate(1, 7, false), new Candidate(2, 8, false));
    LeaderScreening screening = new LeaderScreening(alike, 0.05, ScreeningYears.usual());
    double[][] years = levels(0.1 + 0.2, 0.3, 0.3); // rounding apart
    Arrays.setAll(years[1], year -> 1e6 * Math.sin(year) + 0.3);
    Arrays.setAll(years[0], year -> years[1][year] + 1e-10);
    years[2] = years[1].clone();
    LeaderScreening.Round first = screening.judge(years);
    assertThat(first.gap()).isEqualTo(Double.POSITIVE_INFINITY);
    LeaderScreening.Round second = screening.judge(years);
    assertThat(second.gap()).isZero();
    assertThat(screening.left()).containsExactly(0, 1, 2);
    screening.judge(levels(1, 1, 1));
    assertThat(screening.rounds().get(2).leader()).isEqualTo(1);
  }

  @Test
  void withoutSpreadNothingGoesOutBefore30Years() {
    LeaderScreening screening = new LeaderScreening(candidates(2), 0.05, ScreeningYears.usual());
    double[][] years = levels(10, 9);
    assertThat(screening.judge(years).gap()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(screening.left()).containsExactly(0, 1);
    screening.judge(years);
    assertThat(screening.left()).containsExactly(0);
    assertThat(screening.exits().get(0).limit()).isEqualTo(-1);
    assertThat(screening.isOver()).isTrue();
  }

  /** The rare year among those before is the very thing a round without spread has missed. */
  @Test
  void aRareYearBeforeTheRoundKeepsAPlanUntilARoundHas30() {
    LeaderScreening screening = new LeaderScreening(candidates(2), 0.05, ScreeningYears.usual());
    double[][] years = levels(10, 9);
    years[1][3] = 12;
    screening.judge(years);
    screening.judge(years);
    assertThat(screening.left()).containsExactly(0, 1);
    screening.judge(years);
    assertThat(screening.left()).containsExactly(0);
  }

  @Test
  void aKeptPlanNeverGoesOutAndAPlanWithoutAValueAlwaysDoes() {
    List<Candidate> all =
        List.of(new Candidate(0, 0, false), new Candidate(1, 0, true), new Candidate(2, 0, true));
    LeaderScreening screening = new LeaderScreening(all, 0.05, SHORT);
    double[][] years = levels(10, 1, 10);
    years[2][7] = Double.NaN;
    Arrays.setAll(years[1], year -> year % 3);
    screening.judge(years);
    assertThat(screening.left()).containsExactly(0, 1);
    assertThat(screening.exits().get(0).plan()).isEqualTo(2);
    assertThat(screening.exits().get(0).limit()).isNaN();
    assertThat(screening.known().orElseThrow().gap()).isZero();
  }

  @Test
  void nothingIsKnownBeforeTheFirstRoundUnlessThereIsOnePlan() {
    assertThat(new LeaderScreening(candidates(2), 0.05, SHORT).known()).isEmpty();
    LeaderScreening one = new LeaderScreening(candidates(1), 0.05, SHORT);
    assertThat(one.known()).contains(new LeaderScreening.Round(0, 0, 1));
    assertThat(one.isOver()).isTrue();
    assertThatThrownBy(() -> one.judge(levels(1))).hasMessage("no round is left to judge");
  }

  /**
   * One round of 20 years, α = 0.0125, plans D deviations below: Student's part alone goes out as
   * the noncentral t says; with Hall's part never more often, and above some 0.6 deviations still
   * mostly.
   */
  @ParameterizedTest
  @CsvSource({"0", "0.3", "0.6", "1"})
  void plansGoOutAsOftenAsTheNoncentralTSays(double below) {
    int trials = 20_000;
    double chance = 0.0125;
    ZigguratSampler normal =
        ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(4_242));
    UpperLimit limit = new UpperLimit(20, chance);
    int student = 0;
    int out = 0;
    for (int trial = 0; trial < trials; trial++) {
      double[] d = new double[20];
      Arrays.setAll(d, year -> normal.sample() - below);
      student += Intervals.student(Moments.of(d), 20, 1 - 2 * chance).high() < 0 ? 1 : 0;
      out += limit.of(d) < 0 ? 1 : 0;
    }
    double expected = noncentralT(20, chance, below);
    BinomialDistribution count = BinomialDistribution.of(trials, expected);
    assertThat(student)
        .isBetween(
            count.inverseCumulativeProbability(0.0005), count.inverseSurvivalProbability(0.0005));
    assertThat(out).isLessThanOrEqualTo(student).isGreaterThan((int) (0.7 * student));
  }

  /** P(T ≤ −q), T = (Z − D√n)/√(V/(n − 1)), V chi-squared: the mean over V by the midpoint rule. */
  private static double noncentralT(int n, double chance, double below) {
    double q = TDistribution.of(n - 1).inverseSurvivalProbability(chance);
    ChiSquaredDistribution v = ChiSquaredDistribution.of(n - 1);
    double sum = 0;
    int steps = 4_000;
    for (int i = 0; i < steps; i++) {
      double quantile = v.inverseCumulativeProbability((i + 0.5) / steps);
      sum +=
          NormalDistribution.of(0, 1)
              .cumulativeProbability(-q * Math.sqrt(quantile / (n - 1)) + below * Math.sqrt(n));
    }
    return sum / steps;
  }

  @ParameterizedTest
  @CsvSource({"2, 0.000001, 0", "10, 0.3, 0", "10, 0, 1", "100, 0.3, 4.4"})
  void theStatementFailsInAtMostOneCaseOf20(int plans, double lead, double common) {
    ScreeningTrials.Found found =
        ScreeningTrials.slippage(plans, lead, common, SHORT).run(plans < 100 ? 1_000 : 200, 11);
    assertThat(found.isWithin(0.05)).as("%s", found).isTrue();
  }

  /**
   * A control that must fail: the leader's luck in the years that chose it counts against the best.
   */
  @Test
  void withYearsThatChoseTheLeaderTheStatementFailsFarMoreOften() {
    ScreeningYears once = new ScreeningYears(20, List.of(20));
    ScreeningTrials alike = ScreeningTrials.slippage(100, 1e-6, 0, once);
    assertThat(alike.run(300, 12).isWithin(0.05)).isTrue();
    assertThat(alike.runReusing(300, 12).isWithin(0.05)).isFalse();
  }

  /**
   * A control that must fail: 200 rows of draws taken again and again are no new years, since the
   * leader was chosen by the same rows that judge it.
   */
  @Test
  void withRowsOfDrawsThatComeAgainTheStatementFailsFarMoreOften() {
    ScreeningTrials alike =
        ScreeningTrials.slippage(10, 1e-6, 0, ScreeningYears.usual()).endingAt(0.01);
    int years = alike.terms().before(alike.terms().rounds().size());
    assertThat(alike.runOnRows(years, 300, 13).isWithin(0.05)).isTrue();
    ScreeningTrials.Found again = alike.runOnRows(200, 300, 13);
    assertThat(again.isWithin(0.05)).as("%s", again).isFalse();
  }

  @Test
  void termsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> new LeaderScreening(List.of(), 0.05, SHORT))
        .hasMessage("candidates are none; expected at least one");
    assertThatThrownBy(() -> new LeaderScreening(candidates(2), 1, SHORT))
        .hasMessage("alpha is 1.0; expected above 0 and below 1");
    assertThatThrownBy(() -> new ScreeningYears(0, List.of(10)))
        .hasMessage("choosing is 0; expected at least 1");
    assertThatThrownBy(() -> new ScreeningYears(10, List.of(1)))
        .hasMessage("rounds are [1]; expected one or more of at least 2 years each");
    LeaderScreening screening = new LeaderScreening(candidates(2), 0.05, SHORT);
    assertThatThrownBy(() -> screening.judge(new double[2][15]))
        .hasMessage("plan 0 has 15 years; expected 20");
  }
}
