package hurdline.words;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.LifeRow;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.sample.SampleCompare;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CompareWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalTellsWhatDiffersWhatHoldsAndWhetherItPays() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.two(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands against bigger mill, bigger mill + hand, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            the plant as it stands: held the stalk line 57 % (54 to 61 %) by the rate of the mill, 1.00 % (0.90 to 1.10 %) by want of bales
            bigger mill: stalk fed +840 t (760 to 920); margin +213,000 USD (199,000 to 227,000)
              held  the stalk line 67 % (65 to 69 %) by the rate of the feeder, 5.0 % (4.0 to 6.0 %) by the rate of the mill
              pays  net present value 1,390,000 USD (1,300,000 to 1,480,000) over 12 yr for 140,000 USD; internal rate none above -50 % in 2 of 40 service lives, pays back after 0.7 yr (0.4 to 1.0) (discounted never in 3 of 40 service lives), within 5 yr in 100 % of 40 service lives (91 to 100 %), net present value negative in 5 % of 40 service lives (1 to 17 %)
              adds  213,000 USD (205,000 to 221,000) to the margin in the first year, 190,000 USD (180,000 to 200,000) in each later one (the stock on hand is used once)
              is sensitive to  products.fine.price (900,000 to 1,880,000 USD from 0.8 to 1.2 times), then money.wage (1,400,000 to 1,380,000 USD from 20 to 30.5 USD/h)
              break-even at money.crop_prices.stalk 202 (198 to 205) USD/ton (the file says 145 USD/ton); at no products.*.price from 0.0585 to 17.09 times, it is worth its price throughout
            bigger mill + hand: stalk fed no significant difference at 40 replications (-20 to 20 t), about 1,000 would show one of this size; margin unchanged
              held  the stalk line 80 % (78 to 82 %) by the rate of the feeder
              pays  net present value 10 USD (-5 to 25) over 2.5 yr for 0 USD; nothing to pay back, net present value negative in 1 of 2 service lives (so few say no more than 1 to 99 %)
            best: bigger mill has the greatest money.margin, after 61 replications; if one is better than each other by 10,000 USD or more, the one picked is it with a chance of at least 95 % (Kim and Nelson's procedure)
            a tenth more: Of stalk fed most comes from mill (10 % more power) +190 t (176 to 204), then shift day (51 min longer, from 05:09) +150 t (120 to 180), then bag hand (1 more than 1) +64 t (51 to 77), less from one other; what one other brings cannot be significant; by hours it is the first bottleneck too
              Of margin most comes from mill (10 % more power) +52,000 USD (46,000 to 58,000), then bag hand (1 more than 1) +21,000 USD (16,000 to 26,000), then feeder (10 % more rate) +9,000 USD (1,000 to 17,000); what 2 others bring cannot be significant; by hours it is the first bottleneck too
            In brackets: 95 % interval that holds for all options together; shares of scheduled hours and money with their own.\
            """);
  }

  @Test
  void stoppedAndWithoutMoneyItSaysNoMore() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.stopped(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands with calendar.to=2027-06-01 against bigger mill, bigger mill + hand, 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1
            the plant as it stands: held the stalk line 57 % (54 to 61 %) by the rate of the mill, 1.00 % (0.90 to 1.10 %) by want of bales
            bigger mill: stalk fed +840 t (760 to 920)
              held  the stalk line 67 % (65 to 69 %) by the rate of the feeder, 5.0 % (4.0 to 6.0 %) by the rate of the mill
            bigger mill + hand: stalk fed no significant difference at 7 replications (-20 to 20 t), about 1,000 would show one of this size
              held  the stalk line 80 % (78 to 82 %) by the rate of the feeder
            In brackets: 95 % interval that holds for all options together; shares of scheduled hours and money with their own.\
            """);
  }

  @Test
  void theReportHasASentenceForEachOption() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.two(), METRIC).sentences()))
        .isEqualTo(
            """
            bigger mill (75 hp mill <in place> of the 25 hp one) against the plant as it stands: stalk fed +840 t (760 to 920); margin +213,000 USD (199,000 to 227,000). Over its life: net present value 1,390,000 USD (1,300,000 to 1,480,000) over 12 yr for 140,000 USD; internal rate none above -50 % in 2 of 40 service lives, pays back after 0.7 yr (0.4 to 1.0) (discounted never in 3 of 40 service lives), within 5 yr in 100 % of 40 service lives (91 to 100 %), net present value negative in 5 % of 40 service lives (1 to 17 %). It adds 213,000 USD (205,000 to 221,000) to the margin in the first year, 190,000 USD (180,000 to 200,000) in each later one (the stock on hand is used once).
            bigger mill + hand against the plant as it stands: stalk fed no significant difference at 40 replications (-20 to 20 t), about 1,000 would show one of this size; margin unchanged. Over its life: net present value 10 USD (-5 to 25) over 2.5 yr for 0 USD; nothing to pay back, net present value negative in 1 of 2 service lives (so few say no more than 1 to 99 %).\
            """);
  }

  private static CompareWords of(LifeTerms terms, double happened, int lives, double low, double high) {
    List<PaybackRow> rows = List.of(chance(Quantity.NET_PRESENT_VALUE, 5_000, 4_000, 6_000), chance(Quantity.CHANCE_OF_LOSS, happened, low, high));
    List<LifeRow> all = new ArrayList<>();
    for (int life = 1; life <= lives; life++) {
      all.add(new LifeRow("bigger_mill", life, 1, 0.1, Double.NaN, 1, 1));
    }
    return new CompareWords(SampleCompare.with(rows, all, terms), METRIC);
  }

  private static PaybackRow chance(Quantity quantity, double mean, double low, double high) {
    String unit = quantity == Quantity.CHANCE_OF_LOSS ? "share" : "USD";
    double none = Double.NaN;
    return new PaybackRow("bigger_mill", quantity, unit, mean, low, high, none, none, none, PaybackRow.Gaps.none(40));
  }

  private static LifeTerms terms(double discount, String... unrepeated) {
    return new LifeTerms(89, "", List.of(unrepeated), discount, 30, LifeTerms.Carried.NOTHING);
  }

  /** Exact intervals of 0 of 3 and of 0 of 30: up to 71 and 12 %. */
  @Test
  void whatFewLivesCannotSayIsNotSaid() {
    assertThat(String.join("\n", of(terms(0.09), 0, 3, 0, 0.7076).lines()))
        .contains("net present value negative in 0 of 3 service lives (so few say no more than 0 to 71 %)")
        .doesNotContain("0 % of 3")
        .contains("bigger mill + hand: ", "  pays  not available: stopped before its service lives were whole");
    assertThat(String.join("\n", of(terms(0.09), 0, 30, 0, 0.1157).lines()))
        .contains("net present value negative in 0 % of 30 service lives (0 to 12 %)");
  }

  /** What costs 9,000 USD and brings 1,500 USD a day has a rate of 156,300 %, which says nothing more than that it is high. */
  @Test
  void aRateThatIsBeyondAllMeasureIsSaidToBeHigh() {
    PaybackRow rate = chance(Quantity.INTERNAL_RATE_OF_RETURN, 1_563, 1_551, 1_575);
    CompareWords words = new CompareWords(SampleCompare.two(), METRIC);
    assertThat(words.amount(rate)).isEqualTo("above 1,000 %");
  }

  @Test
  void whatIsMissingStandsBeforeAnyFigure() {
    assertThat(of(terms(0.09), 0, 30, 0, 0.12).lines().get(1)).startsWith("the plant as it stands: ");
    assertThat(of(terms(Double.NaN), 0, 30, 0, 0.12).lines().get(1))
        .startsWith("Warning: the file gives no discount rate, so money of later years counts in full")
        .contains("\"discount_rate: 9 %/yr\"");
    assertThat(of(terms(0.09, "bigger_mill"), 0, 30, 0, 0.12).lines().get(1))
        .isEqualTo(
            "No net present value: the calendar of 89 days is shorter than a year, and the file does not say how it repeats over"
                + " the life of an option. Write \"repeats: yearly\" (every year at the same season) or \"repeats: end-to-end\""
                + " under calendar.");
  }
}
