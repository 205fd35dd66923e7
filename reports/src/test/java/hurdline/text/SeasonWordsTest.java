package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.DifferenceRow;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleSeason;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SeasonWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalTellsOfBuildingCropsAndWhichPlanIsBest() {
    assertThat(String.join("\n", new SeasonWords(SampleSeason.two(), METRIC).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, season plans the season as it stands, two shifts, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            The plan "two shifts" earns the most: 40,000 USD more than the season as it stands, give or take 15,000; it leaves about 100 bales of stalk.
            The plan "two shifts" most surely finishes all crops: in 31 of 40 simulated years, not significantly more often than the season as it stands.

                                       mean             95 % interval       percentiles
                                                                           5th     95th
            The season as it stands
              margin                530,000 USD    525,000 to 535,000  505,000  555,000
              all crops finished          2 %                -8 to 12
              stalk fed               3,400 t          3,380 to 3,420    3,300    3,500
              stalk line margin     200,000 USD    196,000 to 204,000  180,000  220,000
              stalk line finished         2 %                -8 to 12
              stalk line ended      2027-09-24, 5th to 95th percentile 2027-09-14 to
                                    2027-10-04
              stalk carry-over        2,000 bales      1,900 to 2,100    1,500    2,500
              margin forgone on it  110,000 USD    101,000 to 119,000   65,000  155,000
              seed cotton fed        11,700 t        11,640 to 11,760   11,400   12,000
              cotton line margin    600,000 USD    596,000 to 604,000  580,000  620,000
              cotton line finished      100 %
            Two shifts
              margin                570,000 USD    565,000 to 575,000  545,000  595,000
              all crops finished         78 %                68 to 88
              stalk fed               4,000 t          3,980 to 4,020    3,900    4,100
              stalk line margin     240,000 USD    236,000 to 244,000  220,000  260,000
              stalk line finished        78 %                68 to 88
              stalk line ended      2027-08-25, 5th to 95th percentile 2027-08-15 to
                                    2027-09-04
              stalk carry-over          100 bales            0 to 200     -400      600
              margin forgone on it   20,000 USD      11,000 to 29,000  -25,000   65,000
              seed cotton fed        11,700 t        11,640 to 11,760   11,400   12,000
              cotton line margin    600,000 USD    596,000 to 604,000  580,000  620,000
              cotton line finished      100 %

            The season as it stands: building staffed 3,503 of 8,688 h, changeover 240 h, uncrewed 4,825 h, unused 120 h
              stalk line: 2,080 h scheduled, starved 210 h, blocked 33 h
              cotton line: 1,423 h scheduled
            Two shifts: building staffed 4,403 of 8,688 h, changeover 240 h, uncrewed 3,925 h, unused 120 h
              stalk line: 2,980 h scheduled, starved 210 h, blocked 33 h
              cotton line: 1,423 h scheduled
            Without the changeover of 2027-09-27, the season as it stands earns 31,000 USD (26,000 to 36,000) more.
            Best margin: two shifts, +40,000 USD (25,000 to 55,000) over the season as it stands.
            Most surely finishes all crops: two shifts (finished in 31 of 40 years, a chance of 68 to 88 %); no significant difference from the season as it stands.
            Intervals are those of the mean of 40 simulated years; one year in 20 lies below the 5th percentile, one above the 95th.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  @Test
  void thePlanWithTheBestMarginIsNotNamedBestAloneWhereItLeavesOverMoreThanItGains() {
    assertThat(new SeasonWords(SampleSeason.leavingCropOver(true), METRIC).sentences())
        .startsWith(
            "Best margin: the season as it stands, +40,000 USD (25,000 to 55,000) over two shifts.",
            "With the margin forgone on crop left over taken off, the best plan is two shifts: +50,000 USD (30,000"
                + " to 70,000) over the season as it stands, which leaves over 2,000 bales (1,900 to 2,100) of stalk.");
    assertThat(new SeasonWords(SampleSeason.leavingCropOver(false), METRIC).sentences().get(1))
        .endsWith(" of stalk; not statistically significant at 40 replications.");
  }

  private static SummaryRow ended(double day, int years) {
    double none = Double.NaN;
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, "base")
        .with(SummaryRow::measure, "season.stalk_line.ended")
        .with(SummaryRow::unit, "d")
        .each(
            day,
            SummaryRow::mean,
            SummaryRow::p05,
            SummaryRow::p50,
            SummaryRow::p95,
            SummaryRow::least,
            SummaryRow::most)
        .with(SummaryRow::replications, years)
        .made();
  }

  @Test
  void aDateThatRestsOnFewYearsSaysSo() {
    SeasonWords words = new SeasonWords(SampleSeason.two(), METRIC);
    assertThat(words.dates(ended(264, 40))).isEqualTo("2027-09-24");
    assertThat(words.dates(ended(264, 1))).isEqualTo("2027-09-24 in 1 of 40 years");
    assertThat(words.medianDate(ended(264, 1))).isEqualTo("2027-09-24 in 1 of 40 years");
  }

  @Test
  void aDifferenceThatRestsOnFewPairsSaysSo() {
    SeasonAnswer answer = SampleSeason.two();
    DifferenceRow of = answer.differences().get(1).row();
    DifferenceRow few = Draft.from(of).with(DifferenceRow::replications, 3).made();
    assertThat(PairWords.ofReplications(of, answer.header())).isEmpty();
    assertThat(PairWords.ofReplications(few, answer.header()))
        .isEqualTo(" (from 3 of 40 replications)");
  }
}
