package hurdline.economics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of engineering economics, worked out again with exact factors; where a source
 * rounds its factors the exact figure is the one held to.
 */
class WorkedExamplesTest {

  /** An outlay, even payments over the years, and more with the last. */
  private static Cash even(double outlay, double yearly, int years, double salvage) {
    double[] amounts = new double[years + 1];
    Arrays.fill(amounts, yearly);
    amounts[0] = -outlay;
    amounts[years] += salvage;
    return Cash.yearly(amounts);
  }

  private static Cash less(Cash a, Cash b) {
    return Cash.yearly(
        IntStream.range(0, a.amounts().length)
            .mapToDouble(k -> a.amounts()[k] - b.amounts()[k])
            .toArray());
  }

  private static void near(double found, double expected, double tolerance) {
    assertThat(found).isCloseTo(expected, within(tolerance));
  }

  /** Sullivan, Wicks and Koelling, Engineering Economy, ch. 5, welding example. */
  @Test
  void aWeldingMachineEarnsItsPrice() {
    Cash cash = even(25_000, 8_000, 5, 5_000);
    near(cash.netPresentValue(0.20), 934.285, 0.001);
    near(cash.netPresentValue(0.20) * Math.pow(1.2, 5), 2_324.80, 0.005);
    near(cash.netPresentValue(0.20) * CapitalRecovery.factor(0.20, 5), 312.406, 0.001);
    near(InternalRate.of(cash).only(), 0.215776, 1e-6);
    near(cash.paybackYr(0), 3.125, 1e-9);
    near(cash.paybackYr(0.20), 4.821, 0.001);
  }

  /** kekkei.com, solution of an examination of the Institute of Engineering. */
  @Test
  void ofTwoThatOnlyCostTheDearerOneIsCheaperOverItsLife() {
    Cash x = even(1_800_000, -320_000, 12, 200_000);
    Cash y = even(2_600_000, -210_000, 12, 400_000);
    x.amounts()[6] -= 250_000;
    y.amounts()[6] -= 150_000;
    near(x.netPresentValue(0.10), -4_057_773.70, 0.01);
    near(y.netPresentValue(0.10), -3_988_094.05, 0.01);
    near(x.netPresentValue(0.10) * CapitalRecovery.factor(0.10, 12), -595_532.32, 0.01);
    near(y.netPresentValue(0.10) * CapitalRecovery.factor(0.10, 12), -585_305.90, 0.01);
    near(less(y, x).netPresentValue(0.10), 69_679.66, 0.01);
    near(InternalRate.of(less(y, x)).only(), 0.11589, 1e-5);
    assertThat(InternalRate.of(x).rates()).hasSizeLessThan(2);
  }

  /**
   * paperzz.com/doc/6905889, on Sullivan, 14th ed., problem 5-2; it rounds its factors and has
   * 82,082.78.
   */
  @Test
  void paymentsGrowFromTheFourthYear() {
    Cash cash =
        Cash.yearly(
            -640_000, 138_000, 138_000, 138_000, 142_000, 146_000, 150_000, 154_000, 178_000);
    near(cash.netPresentValue(0.12), 82_088.265, 0.001);
    near(InternalRate.of(cash).only(), 0.15447, 1e-5);
    near(cash.paybackYr(0), 4.575, 0.001);
    near(cash.paybackYr(0.12), 6.854, 0.001);
  }

  /** answerhappy.com, t=660177. */
  @Test
  void twoOfUnequalLives() {
    Cash s1 = even(100_000, 35_000, 5, 20_000);
    Cash s2 = even(150_000, 30_000, 10, 0);
    near(InternalRate.of(s1).only(), 0.253112, 1e-6);
    near(InternalRate.of(s2).only(), 0.150984, 1e-6);
    near(s1.netPresentValue(0.08), 53_356.52, 0.01);
    near(s2.netPresentValue(0.08), 51_302.44, 0.01);
  }

  /** answerhappy.com, t=659838. */
  @Test
  void twoOfUnequalLivesOfWhichOneLoses() {
    Cash s1 = even(100_000, 33_000, 5, 21_000);
    Cash s2 = even(150_000, 20_000, 10, 0);
    near(InternalRate.of(s1).only(), 0.229884, 1e-6);
    near(InternalRate.of(s2).only(), 0.056045, 1e-6);
    near(s1.netPresentValue(0.09), 42_007.05, 0.01);
    near(s2.netPresentValue(0.09), -21_646.85, 0.01);
  }

  /** pdfslide.us, ISE460 session 16. */
  @Test
  void fourToChooseFrom() {
    Cash[] four = {
      even(150, 45, 10, 0), even(220, 60, 10, 0), even(300, 100, 10, 0), even(340, 105, 10, 0)
    };
    double[] rates = {0.273198, 0.241333, 0.311130, 0.283338};
    double[] values = {75.845, 81.126, 201.877, 186.971};
    double[] paybacks = {4.962, 5.727, 4.292, 4.771};
    for (int k = 0; k < four.length; k++) {
      near(InternalRate.of(four[k]).only(), rates[k], 1e-6);
      near(four[k].netPresentValue(0.15), values[k], 0.001);
      near(four[k].paybackYr(0.15), paybacks[k], 0.001);
    }
    near(InternalRate.of(less(four[3], four[2])).only(), 0.04277, 1e-5);
  }

  /** wizedu.com, 25597. */
  @Test
  void whatOnlyCostsHasNoRateAndNeverPaysBack() {
    Cash cash = even(164_000, -55_000, 4, 0);
    near(cash.netPresentValue(0.22), -301_150.23, 0.01);
    assertThat(InternalRate.of(cash).rates()).isEmpty();
    assertThat(InternalRate.of(cash).only()).isNaN();
    assertThat(cash.paybackYr(0)).isInfinite();
  }

  /** Exact factors, by hand; printed tables agree to their four digits (answerhappy.com). */
  @Test
  void capitalRecoveryAgreesWithPrintedTables() {
    near(CapitalRecovery.factor(0.10, 12), 0.1467633, 1e-7);
    near(CapitalRecovery.factor(0.08, 5), 0.2504565, 1e-7);
    near(CapitalRecovery.factor(0.08, 10), 0.1490295, 1e-7);
    near(CapitalRecovery.factor(0.12, 8), 0.2013028, 1e-7);
    near(CapitalRecovery.factor(0.15, 10), 0.1992521, 1e-7);
    near(CapitalRecovery.factor(0.20, 5), 0.3343797, 1e-7);
    near(CapitalRecovery.factor(0, 4), 0.25, 0);
  }

  /** By hand: −1000·(1.1)(1.2) + 2300·… has exactly 10 % and 20 %. */
  @Test
  void signsThatChangeTwiceMayHaveTwoRatesOrNone() {
    InternalRate two = InternalRate.of(Cash.yearly(-1_000, 2_300, -1_320));
    assertThat(two.rates()).hasSize(2);
    near(two.rates().get(0), 0.10, 1e-9);
    near(two.rates().get(1), 0.20, 1e-9);
    assertThat(two.only()).isNaN();
    assertThat(InternalRate.of(Cash.yearly(-1_000, 2_000, -1_320)).rates()).isEmpty();
    assertThat(InternalRate.of(Cash.yearly(-1_600, 10_000, -10_000)).rates()).hasSize(2);
    assertThat(InternalRate.of(Cash.yearly(-100, 50, -60)).rates()).isEmpty();
  }

  private static double against(double discount, double... amounts) {
    Cash cash = Cash.yearly(amounts);
    return InternalRate.of(cash).against(cash, discount);
  }

  /**
   * By hand: −1000·(y − 0.2)·(y − 1.8) with y = 1 + i; the rate at −80 % comes of the small loss in
   * the last year.
   */
  @Test
  void aRateBelowMinusHalfIsNone() {
    near(InternalRate.of(Cash.yearly(-1_000, 2_000, -360)).only(), 0.8, 1e-9);
    near(against(0.09, -1_000, 2_000, -360), 0.8, 1e-9);
    assertThat(InternalRate.of(Cash.yearly(-1_000, 400)).rates()).as("−60 %").isEmpty();
  }

  /** By hand: −1000·(y − 0.7)·(y − 1.5) is above zero from −30 to 50 %. */
  @Test
  void ofTwoTheInvestorsIsTheOneUpToWhichItPays() {
    Cash cash = Cash.yearly(-1_000, 2_200, -1_050);
    InternalRate rates = InternalRate.of(cash);
    near(rates.against(cash, 0.09), 0.5, 1e-9);
    assertThat(rates.othersThan(rates.against(cash, 0.09)))
        .singleElement()
        .satisfies(other -> near(other, -0.3, 1e-9));
  }

  /** By hand: 10 % and 20 %, between which it pays. */
  @Test
  void theInvestorsRateAgreesWithTheSignOfTheValue() {
    near(against(0.15, -1_000, 2_300, -1_320), 0.2, 1e-9);
    near(against(0.25, -1_000, 2_300, -1_320), 0.2, 1e-9);
    near(against(0.20, -1_000, 2_300, -1_320), 0.2, 1e-9);
    assertThat(against(0.09, -1_000, 2_300, -1_320))
        .as("at 9 % it loses, and no lower rate would help")
        .isNaN();
    near(against(0.09, -1_000, 1_050), 0.05, 1e-9);
  }

  /** By hand: (x − 1/1.1)² touches zero at 10 % and crosses it nowhere. */
  @Test
  void aRateThatIsOnlyTouchedIsOne() {
    near(InternalRate.of(Cash.yearly(-1_000, 2_200, -1_210)).only(), 0.10, 1e-6);
  }

  /** By hand: (1 + i)^2.5 = 2. */
  @Test
  void aLifeMayEndWithinAYear() {
    Cash cash = new Cash(new double[] {0, 1, 2, 2.5}, new double[] {-100, 0, 0, 200});
    near(InternalRate.of(cash).only(), Math.pow(2, 1 / 2.5) - 1, 1e-9);
    near(cash.paybackYr(0), 2.25, 1e-12);
  }

  /** By hand: without interest the value is the sum, and a rate below zero exists. */
  @Test
  void withoutInterestTheValueIsTheSum() {
    Cash cash = even(100, 30, 3, 0);
    near(cash.netPresentValue(0), DoubleStream.of(cash.amounts()).sum(), 1e-12);
    assertThat(InternalRate.of(cash).only()).isBetween(-0.06, -0.04);
    near(cash.netPresentValue(InternalRate.of(cash).only()), 0, 1e-8);
    assertThat(cash.paybackYr(0)).isInfinite();
  }

  @Test
  void whereNothingIsPaidThereIsNothingToPayBack() {
    assertThat(even(0, 10, 3, 0).paybackYr(0.1)).isZero();
  }
}
