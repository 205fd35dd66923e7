package hurdline.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.outside.Outside;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every distribution, run over the one list of them. */
class DistributionTest {
  private static final int STEPS = 240;

  static List<Distributions.Case> all() {
    return Distributions.all();
  }

  static Stream<Distributions.Case> checked() {
    return all().stream().filter(one -> !one.outside().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("checked")
  void theCurveMeetsTheOutsidePoints(Distributions.Case one) {
    Outside outside = Outside.of(one.outside());
    double[] u = outside.numbers("u");
    double[] x = outside.numbers("x");
    double tolerance = outside.number("tolerance.relative");
    for (int i = 0; i < u.length; i++) {
      assertThat(one.distribution().at(u[i]))
          .as("at %s", u[i])
          .isCloseTo(x[i], within(tolerance * x[i] + spare(u[i], x, i)));
    }
  }

  /**
   * Chi-square of ν degrees is gamma of mean ν and variance 2ν: a printed table of its quantiles,
   * three decimals.
   */
  @Test
  void gammaMeetsThePrintedTableOfChiSquare() {
    Outside table = Outside.of("chi-square");
    double[] shares = table.numbers("shares");
    for (double freedom : table.numbers("freedom")) {
      DoubleUnaryOperator curve = Gamma.of(freedom, Math.sqrt(2 * freedom)).curve();
      double[] printed = table.numbers("upper." + (int) freedom);
      for (int i = 0; i < shares.length; i++) {
        assertThat(curve.applyAsDouble(shares[i]))
            .as("%s at %s", freedom, shares[i])
            .isCloseTo(printed[i], within(0.00051));
      }
    }
  }

  /**
   * u itself is a rounded number: near 1 its last bit moves the amount by more than rounding does.
   */
  private static double spare(double u, double[] x, int at) {
    return at < x.length - 2 ? 0 : Math.ulp(u) / (1 - u) * x[at];
  }

  @ParameterizedTest
  @MethodSource("checked")
  void theMeanMeetsTheOutsideMean(Distributions.Case one) {
    double mean = Outside.of(one.outside()).number("mean");
    assertThat(one.distribution().mean()).isCloseTo(mean, within(1e-11 * mean));
  }

  /**
   * A lognormal or gamma whose mean and sd were those of something else would pass the mean and
   * fail here.
   */
  @ParameterizedTest
  @MethodSource("checked")
  void theSecondMomentOfTheCurveMeetsTheOutsideOne(Distributions.Case one) {
    Outside outside = Outside.of(one.outside());
    double mean = outside.number("mean");
    double sd = outside.number("sd");
    DoubleUnaryOperator curve = one.distribution().curve();
    double square = overAllShares(u -> Math.pow(curve.applyAsDouble(u) - mean, 2));
    assertThat(Math.sqrt(square)).isCloseTo(sd, within(1e-3 * sd));
  }

  @ParameterizedTest
  @MethodSource("all")
  void theMeanIsTheMeanOfTheCurve(Distributions.Case one) {
    double mean = overAllShares(one.distribution().curve());
    assertThat(one.distribution().mean()).isCloseTo(mean, within(1e-4 * Math.abs(mean)));
  }

  @ParameterizedTest
  @MethodSource("all")
  void aGreaterShareNeverGivesALesserAmountButForRounding(Distributions.Case one) {
    DoubleUnaryOperator curve = one.distribution().curve();
    double last = -Double.MAX_VALUE;
    for (int step = 1; step < 1000; step++) {
      double amount = curve.applyAsDouble(step / 1000.0);
      assertThat(amount).isGreaterThanOrEqualTo(last - 2 * Math.ulp(last));
      last = amount;
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theOutermostDrawsAreFinite(Distributions.Case one) {
    assertThat(one.distribution().at(0x1p-53)).isFinite();
    assertThat(one.distribution().at(1 - 0x1p-53)).isFinite();
  }

  @ParameterizedTest
  @MethodSource("all")
  void theSameShareGivesTheSameBits(Distributions.Case one) {
    DoubleUnaryOperator curve = one.distribution().curve();
    for (double u : new double[] {0.017, 0.5, 0.983}) {
      assertThat(one.distribution().at(u)).isEqualTo(curve.applyAsDouble(u));
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void aShareThatIsNoneIsRefused(Distributions.Case one) {
    for (double u : new double[] {Double.NaN, 0, 1, -0.1, 1.1}) {
      assertThatThrownBy(() -> one.distribution().at(u))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("u is " + u + "; expected a share above 0 and below 1");
    }
  }

  @Test
  void aCutKeepsEveryDrawInItsRange() {
    cutHolds(new Normal(1050, 70, 700, 1100).curve(), 700, 1100);
    cutHolds(new Lognormal(18, 10, 8, 40).curve(), 8, 40);
    cutHolds(new Exponential(9, 2, 20).curve(), 2, 20);
    cutHolds(new Weibull(0.75, 90, 10, 200).curve(), 10, 200);
    cutHolds(new Gamma(30, 12, 25, 60).curve(), 25, 60);
    cutHolds(new Beta(30, 5, 10, 80).curve(), 10, 80);
  }

  private static void cutHolds(DoubleUnaryOperator curve, double low, double high) {
    for (double u : new double[] {0x1p-53, 1e-9, 0.5, 1 - 1e-9, 1 - 0x1p-53}) {
      assertThat(curve.applyAsDouble(u)).isBetween(low, high);
    }
    assertThat(curve.applyAsDouble(1e-9)).isCloseTo(low, within(0.1 * (high - low)));
    assertThat(curve.applyAsDouble(1 - 1e-9)).isCloseTo(high, within(0.4 * (high - low)));
  }

  @Test
  void observedAmountsAreDrawnWithEqualChance() {
    Empirical observed = Empirical.of(6, 31, 4);
    double[] drawn = {
      observed.at(0.1),
      observed.at(0.3),
      observed.at(0.4),
      observed.at(0.6),
      observed.at(0.7),
      observed.at(0.9)
    };
    assertThat(drawn).containsExactly(4, 4, 6, 6, 31, 31);
    assertThat(observed.mean()).isEqualTo(41.0 / 3);
  }

  /**
   * Where the normal distribution takes over from gamma and beta, the two lie within what their
   * comments say.
   */
  @Test
  void nothingJumpsWhereTheNormalStandsIn() {
    for (double u : new double[] {1e-4, 0.2, 0.5, 0.9, 1 - 1e-4}) {
      assertThat(Gamma.of(10, 0.00999999).at(u))
          .isCloseTo(Gamma.of(10, 0.01000001).at(u), within(1e-4));
      assertThat(new Beta(0.2, 0.000199999, 0, 1).at(u))
          .isCloseTo(new Beta(0.2, 0.000200001, 0, 1).at(u), within(2e-6));
    }
  }

  /**
   * Logarithms of a lognormal are symmetric about the median to the outermost draw, cut far out or
   * not.
   */
  @Test
  void theTailsReachEquallyFar() {
    for (Lognormal one : new Lognormal[] {Lognormal.of(18, 10), new Lognormal(18, 10, 1e-9, 1e9)}) {
      double median = one.at(0.5);
      assertThat(one.at(0x1p-53) * one.at(1 - 0x1p-53)).isCloseTo(median * median, within(1e-9));
    }
    assertThat(Normal.of(0, 1).at(1 - 0x1p-53)).isGreaterThan(8.2);
    assertThat(new Normal(0, 1, -9, 9).at(1 - 0x1p-53)).isGreaterThan(8.2);
  }

  @Test
  void trianglesWithTheModeAtAnEndAreKnownByHand() {
    assertThat(new Triangular(2, 2, 6).at(0.75)).isEqualTo(4);
    assertThat(new Triangular(2, 6, 6).at(0.25)).isEqualTo(4);
  }

  /** A normal held at 0 from below has the mean sd/√(2π), if its own is 0. */
  @Test
  void theMeanWithinBoundsCountsWhatLiesBeyondAsTheBound() {
    assertThat(Normal.of(0, 3).meanWithin(0, Double.POSITIVE_INFINITY))
        .isCloseTo(3 / Math.sqrt(2 * Math.PI), within(1e-5));
    assertThat(new Uniform(-1, 3).meanWithin(0, 1)).isCloseTo((0.25 * 0.5 + 0.5), within(1e-4));
    assertThat(new Constant(-2).meanWithin(0, 1)).isZero();
    assertThat(Normal.of(1050, 70).meanWithin(-1e9, 1e9)).isEqualTo(1050);
  }

  @ParameterizedTest
  @MethodSource("all")
  void theMeanOfWhatIsHeldAtNothingIsThatOfTheDraws(Distributions.Case one) {
    DoubleUnaryOperator curve = one.distribution().curve();
    double mean = overAllShares(u -> Math.max(0, curve.applyAsDouble(u)));
    assertThat(one.distribution().meanWithin(0, Double.POSITIVE_INFINITY))
        .isCloseTo(mean, within(1e-4 * mean));
  }

  /**
   * By hand: μ·Φ(μ/σ) + σ·φ(μ/σ) above 0; Φ(1) = 0.841344746068543, φ(1) = 0.241970724519143; a cut
   * divides by its share.
   */
  @Test
  void theMeanOfANormalHeldWithinBoundsIsExact() {
    double below = 0.841344746068543;
    double density = 0.241970724519143;
    double above0 = 2 * below + 2 * density;
    assertThat(Normal.of(0, 3).meanWithin(0, Double.POSITIVE_INFINITY))
        .isCloseTo(3 / Math.sqrt(2 * Math.PI), within(1e-14));
    assertThat(Normal.of(2, 2).meanWithin(0, Double.POSITIVE_INFINITY))
        .isCloseTo(above0, within(1e-14));
    assertThat(new Normal(2, 2, Double.NEGATIVE_INFINITY, 4).meanWithin(0, 9))
        .isCloseTo((2 * (2 * below - 1)) / below, within(1e-14));
    assertThat(new Normal(2, 2, 0, 4).meanWithin(0, Double.POSITIVE_INFINITY))
        .isCloseTo(2, within(1e-14));
    assertThat(new Normal(2, 2, 0, Double.POSITIVE_INFINITY).meanWithin(-1, 4))
        .isCloseTo((2 * (2 * below - 1) + 4 * (1 - below)) / below, within(1e-14));
    assertThat(new Normal(2, 2, 1, 3).meanWithin(4, 5)).isEqualTo(4);
    assertThat(new Normal(2, 2, 1, 3).meanWithin(-5, 0.5)).isEqualTo(0.5);
    assertThat(Normal.of(-3, 0).meanWithin(0, 1)).isZero();
    assertThat(Normal.of(1050, 70).meanWithin(0, Double.POSITIVE_INFINITY)).isEqualTo(1050);
  }

  /**
   * By midpoints, closer towards the ends and with the steps of the observed amounts on borders.
   */
  private static double overAllShares(DoubleUnaryOperator of) {
    double[] ends = {
      1e-12, 1e-9, 1e-7, 1e-5, 1e-3, 0.03, 1 / 3.0, 2 / 3.0, 0.97, 1 - 1e-3, 1 - 1e-5, 1 - 1e-7,
      1 - 1e-9, 1 - 1e-12
    };
    double sum = 0;
    for (int piece = 1; piece < ends.length; piece++) {
      double width = (ends[piece] - ends[piece - 1]) / STEPS;
      for (int step = 0; step < STEPS; step++) {
        sum += width * of.applyAsDouble(ends[piece - 1] + (step + 0.5) * width);
      }
    }
    return sum;
  }
}
