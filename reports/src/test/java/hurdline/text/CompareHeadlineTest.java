package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.ServiceLifeRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleCompare;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CompareHeadlineTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);
  private static final double NONE = Double.NaN;

  private final List<PaybackRow> worths = new ArrayList<>();
  private final List<ServiceLifeRow> lives = new ArrayList<>();

  private void worth(String option, Quantity quantity, double mean, double half) {
    String unit = quantity.name().contains("PAYBACK") ? "yr" : "USD";
    worths.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, option)
            .with(PaybackRow::quantity, quantity)
            .with(PaybackRow::unit, unit)
            .with(PaybackRow::mean, mean)
            .with(PaybackRow::low95, mean - half)
            .with(PaybackRow::high95, mean + half)
            .with(PaybackRow::gaps, PaybackRow.Gaps.none(4))
            .made());
  }

  private void lives(String option, double... values) {
    for (int life = 0; life < values.length; life++) {
      lives.add(new ServiceLifeRow(option, life + 1, values[life], 0.1, NONE, 1, 1));
    }
  }

  private List<String> said(LifeTerms.Carried carried, double discount, String... unrepeated) {
    LifeTerms terms = new LifeTerms(362, "yearly", List.of(unrepeated), discount, 4, carried);
    return said(SampleCompare.with(worths, lives, terms));
  }

  private static List<String> said(CompareAnswer answer) {
    return new CompareHeadline(answer, METRIC).sentences();
  }

  @Test
  void theOptionThatPaysWhenItIsPaidBackAndWhatLimitsThen() {
    assertThat(said(SampleCompare.two()))
        .containsExactly(
            "The bigger mill pays: it adds 190,000 USD a year after the first, give or take 10,000, and is paid back after about 8"
                + " months.",
            "In the first year it adds 213,000 USD, give or take 8,000, since the stock on hand is used once.",
            "With it the feeder limits the stalk line, in 67 of 100 scheduled hours.",
            "Whether the bigger mill and the hand pay is not decided.");
  }

  @Test
  void whatChanceAloneCouldBringHasNoDirection() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 60_000, 20_000);
    worth("bigger_mill", Quantity.SIMPLE_PAYBACK, 0.4, 0.02);
    worth("bigger_mill", Quantity.ADDED_IN_FIRST_YEAR, 117_000, 2_000);
    worth("bigger_mill", Quantity.ADDED_IN_EACH_LATER_YEAR, -500, 800);
    assertThat(said(LifeTerms.Carried.STOCK_ON_HAND, 0.09))
        .startsWith(
            "The bigger mill pays: it adds no significant amount a year after the first, and is paid back after about 5 months.");
  }

  @Test
  void yearsThatDoNotDifferAreSaidOnce() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 300_000, 20_000);
    worth("bigger_mill", Quantity.SIMPLE_PAYBACK, 3.24, 0.2);
    worth("bigger_mill", Quantity.ADDED_IN_FIRST_YEAR, 48_000, 9_000);
    worth("bigger_mill", Quantity.ADDED_IN_EACH_LATER_YEAR, 43_000, 3_000);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .startsWith(
            "The bigger mill pays: it adds 43,000 USD a year, give or take 3,000, and is paid back after about 3.2 years.",
            "With it the feeder limits the stalk line, in 67 of 100 scheduled hours.");
  }

  /**
   * Of pairs 10 and 30 apart the mean is 20, the spread 11.5; alone each spreads 115, and t over
   * the root of 4 is 1.59.
   */
  @Test
  void twoThatPayAreRankedByTheirDifferencesLifeByLife() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 320, 184);
    worth("bigger_mill+hand", Quantity.NET_PRESENT_VALUE, 300, 184);
    lives("bigger_mill", 210, 230, 410, 430);
    lives("bigger_mill+hand", 200, 200, 400, 400);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .first()
        .asString()
        .startsWith("The bigger mill pays most: ");
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .last()
        .asString()
        .isEqualTo("The bigger mill and the hand pay too.");
    lives.clear();
    lives("bigger_mill", 210, 230, 410, 430);
    lives("bigger_mill+hand", 260, 150, 340, 450);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .last()
        .asString()
        .matches(
            "Whether the bigger mill or the bigger mill and the hand is worth more is not decided: about \\d+ service lives would"
                + " show which; the bigger mill and the hand pay too\\.");
  }

  @Test
  void theOwnersMoneyIsSaidAfterLoanAndTax() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 300_000, 20_000);
    worth("bigger_mill", Quantity.SIMPLE_PAYBACK, 3.24, 0.2);
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE_AFTER_TAX, 182_000, 9_000);
    worth("bigger_mill", Quantity.PAYBACK_AFTER_TAX, 2.4, 0.1);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .contains(
            "After loan and tax, before your accountant, its net present value is 182,000 USD, give or take 9,000, and the owner's"
                + " own money is back after about 2.40 years.");
    worths.remove(worths.size() - 1);
    worth("bigger_mill", Quantity.PAYBACK_AFTER_TAX, 0, 0);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .anyMatch(said -> said.endsWith("and none of its price is the owner's own money."));
    worths.remove(worths.size() - 1);
    worths.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, "bigger_mill")
            .with(PaybackRow::quantity, Quantity.PAYBACK_AFTER_TAX)
            .with(PaybackRow::unit, "yr")
            .with(PaybackRow::mean, NONE)
            .with(PaybackRow::gaps, new PaybackRow.Gaps(4, 3, 0, NONE, NONE))
            .made());
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .anyMatch(
            said ->
                said.endsWith(
                    "and in 3 of 4 service lives the owner's own money does not come back."));
  }

  @Test
  void whatLosesIsNotSaidToPay() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, -80_000, 10_000);
    worth("bigger_mill", Quantity.ADDED_IN_FIRST_YEAR, 8_000, 1_000);
    worth("bigger_mill", Quantity.ADDED_IN_EACH_LATER_YEAR, 8_000, 1_000);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .first()
        .isEqualTo(
            "The bigger mill does not pay: it adds 8,000 USD a year, give or take 1,000, too little for its price of 140,000 USD.");
    worths.clear();
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, -380_000, 10_000);
    worth("bigger_mill", Quantity.ADDED_IN_FIRST_YEAR, -54_000, 3_000);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .first()
        .isEqualTo(
            "The bigger mill does not pay: it takes 54,000 USD a year from the margin, give or take 3,000.");
  }

  @Test
  void whatIsNotDecidedSaysHowManyServiceLivesWould() {
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 10_000, 20_000);
    lives("bigger_mill", 1, 2, 3, 4);
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09))
        .first()
        .isEqualTo(
            "Whether the bigger mill pays is not decided: the net present value is 10,000 USD, give or take 20,000; about 16"
                + " service lives would show which.");
  }

  @Test
  void whyNoWorthIsKnownIsSaid() {
    assertThat(said(SampleCompare.stopped()))
        .containsExactly(
            "The bigger mill raises the stalk fed by 840 tonnes, give or take 60.",
            "With it the feeder limits the stalk line, in 67 of 100 scheduled hours.",
            "Whether it pays cannot be said, since the file gives no prices.");
    assertThat(said(LifeTerms.Carried.NOTHING, 0.09, "bigger_mill"))
        .last()
        .isEqualTo(
            "Whether it pays cannot be said, since the file does not say how its calendar repeats.");
    worth("bigger_mill", Quantity.NET_PRESENT_VALUE, 300_000, 20_000);
    assertThat(said(LifeTerms.Carried.NOTHING, NONE))
        .last()
        .isEqualTo("The file gives no discount rate, so money of later years counts in full.");
  }
}
