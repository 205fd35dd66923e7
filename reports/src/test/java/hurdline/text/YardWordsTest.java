package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.YardAnswer;
import hurdline.answer.YardSizeRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleYard;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class YardWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalTellsWhatIsNeededAndWhatTheYardDoesNow() {
    assertThat(String.join("\n", new YardWords(SampleYard.tooSmall(), METRIC).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands, yard of stalk with the open made larger or smaller, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            The yard needs room for about 6,400 bales of stalk, on about 1.1 ha of ground, if loads are to wait for room in at most 5 % of seasons.
            40 simulated seasons give no upper limit, only that it takes 5,800 bales or more; 72 would give one.
            As it stands it holds 4,200 bales and overflows in 83 of 100 seasons.
            The cheapest size simulated, 3,500 bales, costs 25,000 USD a year, give or take 2,000; from 3,500 to 5,000 bales the choice hardly matters; at 3,500 bales loads wait for room in 100 of 100 seasons.
            Up to 400 ha can be contracted, give or take 40, with which 90 % of seasons finish the crop.

                                       figure           95 % interval   percentiles
                                                                         5th   95th
            Needed
              room                      6,400 bales     5,800 or more
              of it in open             5,200 bales
              ground                   11,200 m2
              overflows in seasons          5 %               1 to 17
            Without limit
              peak, mean                4,900 bales    4,600 to 5,200  4,200  5,600
              peak, 95th percentile     6,275 bales     6,125 or more
            As it stands
              room                      4,200 bales
              overflows in seasons         82 %              67 to 93
              most at the fields          900 bales      700 to 1,100    300  1,500
              dry matter lost             140 t
              wait for room, in total      66 d              47 to 85      9    123
            Cheapest size
              room                      3,500 bales
              costs a year             25,000 USD    23,000 to 27,000
              hardly dearer from        3,500 bales
              hardly dearer up to       5,000 bales
            Land
              to contract at most         398 ha           368 to 442
              times the file's fields   1.080
              carry-over then              30 bales

            costs     ground, waiting, and margin below that without limit
            shorter   bigger mill (the file's option) -900 bales (-1,000 to -800)
            land      found to within 0.5 % of the factor on all fields
            The largest stack and the lanes are for the local fire code and the insurer to say.
            Intervals rest on 40 simulated seasons.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  @Test
  void stoppedAndWithoutMoneyItSaysNoMore() {
    assertThat(String.join("\n", new YardWords(SampleYard.stopped(), METRIC).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, turning away with calendar.to=2027-06-01, yard of stalk with the open made larger or smaller, 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1
            How large the yard of stalk must be was not found before the end was asked for.
            As it stands it holds 4,200 bales and overflows in 83 of 100 seasons.

                                       figure         95 % interval   percentiles
                                                                       5th   95th
            Needed
              room                     not found
            Without limit
              peak, mean                4,900 bales  4,600 to 5,200  4,200  5,600
              peak, 95th percentile     6,275 bales   6,125 or more
            As it stands
              room                      4,200 bales
              overflows in seasons         82 %            67 to 93
              dry matter lost             140 t
              wait for room, in total    88.0 d

            The largest stack and the lanes are for the local fire code and the insurer to say.
            Intervals rest on 7 simulated seasons.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  @Test
  void theReportSaysItInSentences() {
    assertThat(
            new YardHeadline(SampleYard.tooSmall(), new Wording(UnitSystem.US, Locale.ROOT))
                .sentences())
        .containsExactly(
            "The yard needs room for about 6,400 bales of stalk, on about 2.8 acres of ground, if loads are to wait for room in at"
                + " most 5 % of seasons.",
            "40 simulated seasons give no upper limit, only that it takes 5,800 bales or more; 72 would give one.",
            "As it stands it holds 4,200 bales and overflows in 83 of 100 seasons.",
            "The cheapest size simulated, 3,500 bales, costs 25,000 USD a year, give or take 2,000; from 3,500 to 5,000 bales the"
                + " choice hardly matters; at 3,500 bales loads wait for room in 100 of 100 seasons.",
            "Up to 980 acres can be contracted, give or take 110, with which 90 % of seasons finish the crop.");
  }

  @Test
  void aCheapYardWhoseWaitsHaveNoPriceIsSaidToBeOne() {
    YardAnswer answer = SampleYard.tooSmall();
    List<YardSizeRow> free =
        answer.capacity().stream()
            .map(
                row ->
                    Draft.from(row)
                        .with(
                            YardSizeRow::cost,
                            Draft.from(row.cost()).with(YardSizeRow.Cost::waiting, 0.0).made())
                        .made())
            .toList();
    assertThat(
            new YardHeadline(Draft.from(answer).with(YardAnswer::capacity, free).made(), METRIC)
                .sentences())
        .anyMatch(
            said ->
                said.endsWith(
                    "; at 3,500 bales loads wait for room in 100 of 100 seasons, which costs nothing"
                        + " here, since the file has no waiting_cost."));
  }

  @Test
  void inMetricUnitsTheGroundIsInHectares() {
    assertThat(new YardHeadline(SampleYard.tooSmall(), METRIC).sentences().get(0))
        .contains(" on about 1.1 ha of ground");
    assertThat(new YardHeadline(SampleYard.stopped(), METRIC).sentences())
        .startsWith(
            "How large the yard of stalk must be was not found before the end was asked for.");
  }
}
