package hurdline.words;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleYard;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class YardWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  @Test
  void theTerminalTellsWhatIsNeededAndWhatTheYardDoesNow() {
    assertThat(String.join("\n", new YardWords(SampleYard.tooSmall(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands, yard of stalk with the open made larger or smaller, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            needs     6,400 bales (5,800 or more; no upper limit from 40 seasons), of them 5,200 in the open, 11,200 m2 of ground, so that something waits for room in at most 5 % of seasons
            no limit  peak 4,900 bales (4,600 to 5,200) on the mean, 95th percentile 6,275 bales (6,125 or more; no upper limit from 40 seasons)
            now       a yard of 4,200 bales overflows in 82 % (67 to 93 %) of seasons; at most 900 bales (700 to 1,100) lie at the fields, 140 t of dry matter are lost, trucks and loads wait 66 d (47 to 85) for room, in total
            cheapest  3,500 bales at 25,000 USD (23,000 to 27,000) a year: ground, waiting, and margin below that without limit; from 3,500 to 5,000 bales the choice hardly matters
            shorter   bigger mill (the file's option) -900 bales (-1,000 to -800)
            land      up to 398 ha (368 to 442), 1.080 times the file's to within 0.5 %, with which 90 % of seasons finish; there 30 bales are left over on the mean
            The largest stack and the lanes are for the local fire code and the insurer to say.
            In brackets: 95 % intervals over 40 seasons.\
            """);
  }

  @Test
  void stoppedAndWithoutMoneyItSaysNoMore() {
    assertThat(String.join("\n", new YardWords(SampleYard.stopped(), METRIC).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, turning away with calendar.to=2027-06-01, yard of stalk with the open made larger or smaller, 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1
            needs     a size that was not found before the end was asked for
            no limit  peak 4,900 bales (4,600 to 5,200) on the mean, 95th percentile 6,275 bales (6,125 or more; no upper limit from 7 seasons)
            now       a yard of 4,200 bales overflows in 82 % (67 to 93 %) of seasons; 140 t of dry matter are lost, trucks and loads wait 88.0 d for room, in total
            The largest stack and the lanes are for the local fire code and the insurer to say.
            In brackets: 95 % intervals over 7 seasons.\
            """);
  }

  @Test
  void theReportSaysItInSentences() {
    assertThat(String.join("\n", new YardWords(SampleYard.tooSmall(), new Wording(UnitSystem.US, Locale.ROOT)).sentences()))
        .isEqualTo(
            """
            The yard of stalk needs 6,400 bales (5,800 or more; no upper limit from 40 seasons), of them 5,200 in the open, 121,000 ft2 of ground, so that something waits for room in at most 5 % of seasons.
            As the file has it, a yard of 4,200 bales overflows in 82 % (67 to 93 %) of seasons; at most 900 bales (700 to 1,100) lie at the fields, 154 ton of dry matter are lost, trucks and loads wait 66 d (47 to 85) for room, in total.
            Of the sizes simulated the cheapest is 3,500 bales at 25,000 USD (23,000 to 27,000) a year: ground, waiting, and margin below that without limit; from 3,500 to 5,000 bales the choice hardly matters.
            The peak without limit: bigger mill (the file's option) -900 bales (-1,000 to -800).
            Land for stalk: up to 983 acres (910 to 1,092), 1.080 times the file's to within 0.5 %, with which 90 % of seasons finish; there 30 bales are left over on the mean.\
            """);
  }
}
