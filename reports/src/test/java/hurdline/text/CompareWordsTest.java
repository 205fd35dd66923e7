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

class CompareWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalBeginsWithSentencesAndHasTheFiguresInATable() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.two(), METRIC).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands against bigger mill, bigger mill + hand, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            The bigger mill pays: it adds 190,000 USD a year after the first, give or take 10,000, and is paid back after about 8 months.
            In the first year it adds 213,000 USD, give or take 8,000, since the stock on hand is used once.
            With it the feeder limits the stalk line, in 67 of 100 scheduled hours.
            Whether the bigger mill and the hand pay is not decided.

                                      mean               95 % interval           percentiles
                                                                              5th       95th
            The plant as it stands
              stalk line                57 %                  54 to 61
              limited by mill
              stalk line              1.00 %              0.90 to 1.10
              limited by lack
              of crop
            Bigger mill
              stalk fed               +840 t                760 to 920
              margin              +213,000 USD      199,000 to 227,000
              stalk line                67 %                  65 to 69
              limited by feeder
              stalk line               5.0 %                4.0 to 6.0
              limited by mill
              net present value  1,390,000 USD  1,300,000 to 1,480,000  1,330,000  1,460,000
              internal rate a    none above -50 % in 2 of 40 service lives
              year
              paid back after          0.7 yr               0.4 to 1.0        0.5        0.9
              the same,          never in 3 of 40 service lives
              discounted
              paid back within         100 %                 91 to 100
              5 yr
              lives with a loss          5 %                   1 to 17
              added in first       213,000 USD      205,000 to 221,000    180,000    240,000
              year
              in each later        190,000 USD      180,000 to 200,000    170,000    210,000
              year
            Bigger mill + hand
              stalk fed                  0 t                 -20 to 20
              margin                     0 USD
              stalk line                80 %                  78 to 82
              limited by feeder
              net present value         10 USD                -5 to 25        -20         30
              lives with a loss         50 %                  0 to 100

            sensitive to     bigger mill: price of fine (900,000 to 1,880,000 USD from 0.8 to 1.2 times), then wage (1,400,000 to 1,380,000 USD from 20 to 30.5 USD/h)
            break-even       bigger mill: at crop price of stalk 202 (198 to 205) USD/ton (the file says 145 USD/ton); at no price of all products from 0.0585 to 17.09 times, it is worth its price throughout
            not significant  bigger mill + hand: stalk fed, about 1,000 replications would show a difference of this size
            best: bigger mill has the greatest margin, after 61 replications; if one is better than each other by 10,000 USD or more, the one picked is it with a chance of at least 95 % (Kim and Nelson's procedure)
            10 % more        Of stalk fed most comes from mill (10 % more power) +190 t (176 to 204), then shift day (51 min longer, from 05:09) +150 t (120 to 180), then bag hand (1 more than 1) +64 t (51 to 77), less from one other; what one other brings cannot be significant; by hours it is the first bottleneck too
                             Of margin most comes from mill (10 % more power) +52,000 USD (46,000 to 58,000), then bag hand (1 more than 1) +21,000 USD (16,000 to 26,000), then feeder (10 % more rate) +9,000 USD (1,000 to 17,000); what 2 others bring cannot be significant; by hours it is the first bottleneck too
            Against the plant as it stands, on 40 replications of the same random draws; intervals of differences hold for all options together; worth and payback over 40 service lives. Limits are in % of scheduled hours.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  @Test
  void stoppedAndWithoutMoneyItSaysNoMore() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.stopped(), METRIC).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands with calendar.to=2027-06-01 against bigger mill, bigger mill + hand, 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1
            The bigger mill raises the stalk fed by 840 tonnes, give or take 60.
            With it the feeder limits the stalk line, in 67 of 100 scheduled hours.
            Whether it pays cannot be said, since the file gives no prices.

                                                  mean    95 % interval
            The plant as it stands
              stalk line limited by mill            57 %       54 to 61
              stalk line limited by lack of crop  1.00 %   0.90 to 1.10
            Bigger mill
              stalk fed                           +840 t     760 to 920
              stalk line limited by feeder          67 %       65 to 69
              stalk line limited by mill           5.0 %     4.0 to 6.0
            Bigger mill + hand
              stalk fed                              0 t      -20 to 20
              stalk line limited by feeder          80 %       78 to 82

            not significant  bigger mill + hand: stalk fed, about 1,000 replications would show a difference of this size
            Against the plant as it stands, on 7 replications of the same random draws; intervals of differences hold for all options together. Limits are in % of scheduled hours.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  private static CompareWords of(
      LifeTerms terms, double happened, int lives, double low, double high) {
    List<PaybackRow> rows =
        List.of(
            chance(Quantity.NET_PRESENT_VALUE, 5_000, 4_000, 6_000),
            chance(Quantity.CHANCE_OF_LOSS, happened, low, high));
    List<ServiceLifeRow> all = new ArrayList<>();
    for (int life = 1; life <= lives; life++) {
      all.add(new ServiceLifeRow("bigger_mill", life, 1, 0.1, Double.NaN, 1, 1));
    }
    return new CompareWords(SampleCompare.with(rows, all, terms), METRIC);
  }

  private static PaybackRow chance(Quantity quantity, double mean, double low, double high) {
    String unit = quantity == Quantity.CHANCE_OF_LOSS ? "share" : "USD";
    double none = Double.NaN;
    return Draft.of(PaybackRow.class)
        .with(PaybackRow::option, "bigger_mill")
        .with(PaybackRow::quantity, quantity)
        .with(PaybackRow::unit, unit)
        .with(PaybackRow::mean, mean)
        .with(PaybackRow::low95, low)
        .with(PaybackRow::high95, high)
        .with(PaybackRow::gaps, PaybackRow.Gaps.none(40))
        .made();
  }

  private static LifeTerms terms(double discount, String... unrepeated) {
    return new LifeTerms(89, "", List.of(unrepeated), discount, 30, LifeTerms.Carried.NOTHING);
  }

  /** Exact intervals of 0 of 3 and of 0 of 30: up to 71 and 12 %. */
  @Test
  void whatFewLivesCannotSayIsNotSaid() {
    assertThat(of(terms(0.09), 0, 3, 0, 0.7076).lines(80))
        .anyMatch(line -> line.matches("  lives with a loss  +0 %  +0 to 70"))
        .anyMatch(
            line ->
                line.matches("  net present value  +not available: stopped before its service"));
    assertThat(of(terms(0.09), 0, 30, 0, 0.1157).lines(80))
        .anyMatch(line -> line.matches("  lives with a loss  +0 %  +0 to 12"));
  }

  /**
   * What costs 9,000 USD and brings 1,500 USD a day has a rate of 156,300 %, which says nothing
   * more than that it is high.
   */
  @Test
  void aRateThatIsBeyondAllMeasureIsSaidToBeHigh() {
    PaybackRow rate = chance(Quantity.INTERNAL_RATE_OF_RETURN, 1_563, 1_551, 1_575);
    CompareWords words = new CompareWords(SampleCompare.two(), METRIC);
    assertThat(words.amount(rate)).isEqualTo("above 1,000 %");
  }

  /** One rule for the mean, its percentiles and other rates, on the terminal and on the page. */
  @Test
  void percentilesBeyondAllMeasureAreSaidToBeHighToo() {
    PaybackRow.Gaps gaps = new PaybackRow.Gaps(40, 0, 2, 0.3, 1_200);
    PaybackRow rate =
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, "bigger_mill")
            .with(PaybackRow::quantity, Quantity.INTERNAL_RATE_OF_RETURN)
            .with(PaybackRow::unit, "share")
            .with(PaybackRow::mean, 6)
            .with(PaybackRow::low95, 5)
            .with(PaybackRow::high95, 7)
            .with(PaybackRow::p05, 0.5)
            .with(PaybackRow::p50, 4)
            .with(PaybackRow::p95, 1_560)
            .with(PaybackRow::gaps, gaps)
            .made();
    PaybackRow worth = chance(Quantity.NET_PRESENT_VALUE, 5_000, 4_000, 6_000);
    CompareAnswer answer = SampleCompare.with(List.of(worth, rate), List.of(), terms(0.09));
    assertThat(
            String.join(" ", new CompareWords(answer, METRIC).lines(100)).replaceAll("\\s+", " "))
        .contains(
            "600 % (500 to 700 %), another from 30 to above 1,000 % in 2 of 40 service lives, 5th to 95th percentile 50.0 % to above 1,000 %")
        .doesNotContain("156,000");
    assertThat(hurdline.page.ReportPage.html(answer, METRIC))
        .contains("<td>above 1,000 %</td>")
        .doesNotContain("156,000");
  }

  @Test
  void whatIsMissingStandsBeforeTheTable() {
    assertThat(table(of(terms(0.09), 0, 30, 0, 0.12))).allMatch(line -> line.endsWith("."));
    assertThat(table(of(terms(Double.NaN), 0, 30, 0, 0.12)))
        .contains("The file gives no discount rate, so money of later years counts in full.")
        .anyMatch(
            line ->
                line.startsWith(
                        "Warning: the file gives no discount rate, so money of later years counts in full")
                    && line.contains("\"discount_rate: 9 %/yr\""));
    assertThat(table(of(terms(0.09, "bigger_mill"), 0, 30, 0, 0.12)))
        .contains(
            "No net present value: the calendar of 89 days is shorter than a year, and the file does not say how it repeats over"
                + " the life of an option. Write \"repeats: yearly\" (every year at the same season) or \"repeats: end-to-end\""
                + " under calendar.");
  }

  /** What stands between the title and the table. */
  private static List<String> table(CompareWords words) {
    List<String> lines = words.lines(80);
    return lines.subList(1, lines.indexOf(""));
  }
}
