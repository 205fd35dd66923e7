package hurdline.words;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleCompare;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CompareWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalTellsWhatDiffersWhatHoldsAndWhetherItPays() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.two(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, base against bigger_mill, bigger_mill+hand, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            base: held stalk_line 57 % (54 to 61 %) by the rate of mill, 1.00 % (0.90 to 1.10 %) by want of bales
            bigger_mill: stalk fed +840 t (760 to 920); margin +213,000 USD (199,000 to 227,000)
              held  stalk_line 67 % (65 to 69 %) by the rate of feeder, 5.0 % (4.0 to 6.0 %) by the rate of mill
              pays  net present value 1,390,000 USD (1,300,000 to 1,480,000) over 12 yr for 140,000 USD; internal rate none in 2 of 40 lives, pays back after 0.7 yr (0.4 to 1.0) (discounted never in 3 of 40 lives), within 5 yr in 100 % (29 to 100 %) of lives, loses in 5 % (0 to 71 %) of lives
              hangs on  products.fine.price (900,000 to 1,880,000 USD from 0.8 to 1.2 times), then money.wage (1,400,000 to 1,380,000 USD from 20 to 30.5 USD/h)
              worth nothing at money.crops.stalk 202 (198 to 205) USD/ton (the file says 145 USD/ton); at no products.*.price from 0.0585 to 17.09 times, it is worth its price throughout
            bigger_mill+hand: stalk fed not told apart at 40 replications (-20 to 20 t), about 1,000 would tell them if it is as seen; margin unchanged
              held  stalk_line 80 % (78 to 82 %) by the rate of feeder
              pays  net present value 10 USD (-5 to 25) over 2.5 yr for 0 USD; nothing to pay back, loses in 40 % (10 to 80 %) of lives
            best: bigger_mill has the greatest money.margin, after 61 replications; if one is better than each other by 10,000 USD or more, the one picked is it with a chance of at least 95 % (Kim and Nelson's procedure)
            a tenth more: Of stalk fed most comes from mill (10 % more power) +190 t (176 to 204), then shift.day (51 min longer, from 05:09) +150 t (120 to 180), then resource.bag_hand (1 more than 1) +64 t (51 to 77), less from one other; what one other brings cannot be told from none; by hours it is the first holder too
              Of margin most comes from mill (10 % more power) +52,000 USD (46,000 to 58,000), then resource.bag_hand (1 more than 1) +21,000 USD (16,000 to 26,000), then feeder (10 % more rate) +9,000 USD (1,000 to 17,000); what 2 others bring cannot be told from none; by hours it is the first holder too
            In brackets: 95 % interval that holds for all options together; shares of scheduled hours and money with their own.\
            """);
  }

  @Test
  void stoppedAndWithoutMoneyItSaysNoMore() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.stopped(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, base with calendar.to=2027-06-01 against bigger_mill, bigger_mill+hand, 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1
            base: held stalk_line 57 % (54 to 61 %) by the rate of mill, 1.00 % (0.90 to 1.10 %) by want of bales
            bigger_mill: stalk fed +840 t (760 to 920)
              held  stalk_line 67 % (65 to 69 %) by the rate of feeder, 5.0 % (4.0 to 6.0 %) by the rate of mill
            bigger_mill+hand: stalk fed not told apart at 7 replications (-20 to 20 t), about 1,000 would tell them if it is as seen
              held  stalk_line 80 % (78 to 82 %) by the rate of feeder
            In brackets: 95 % interval that holds for all options together; shares of scheduled hours and money with their own.\
            """);
  }

  @Test
  void theReportHasASentenceForEachOption() {
    assertThat(String.join("\n", new CompareWords(SampleCompare.two(), METRIC).sentences()))
        .isEqualTo(
            """
            bigger_mill (75 hp mill <in place> of the 25 hp one) against the plant as it stands: stalk fed +840 t (760 to 920); margin +213,000 USD (199,000 to 227,000). Over its life: net present value 1,390,000 USD (1,300,000 to 1,480,000) over 12 yr for 140,000 USD; internal rate none in 2 of 40 lives, pays back after 0.7 yr (0.4 to 1.0) (discounted never in 3 of 40 lives), within 5 yr in 100 % (29 to 100 %) of lives, loses in 5 % (0 to 71 %) of lives.
            bigger_mill+hand against the plant as it stands: stalk fed not told apart at 40 replications (-20 to 20 t), about 1,000 would tell them if it is as seen; margin unchanged. Over its life: net present value 10 USD (-5 to 25) over 2.5 yr for 0 USD; nothing to pay back, loses in 40 % (10 to 80 %) of lives.\
            """);
  }
}
