package hurdline.words;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RunWordsTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  @Test
  void aYearIsToldInADozenLines() {
    assertThat(String.join("\n", new RunWords(SampleAnswer.year(), US).lines()))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, base, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            stalk_line: 3,840 ton (3,820 to 3,860) of stalk, 1.874 ton/h over 2,048 scheduled hours
              made      long_fiber_bales 475 ton, short_fiber_bales 272 ton, coarse_hurd 839 ton, medium_hurd 1,205 ton, fine_hurd 355 ton, dust 231.6 ton
              limited   of scheduled hours 57 % (54 to 61 %) by the rate of the mill, 13.2 % (12.4 to 14.0 %) by want of bales, 8.1 % (7.6 to 8.6 %) by the stop choke of the stalk saw
              next      if mill did not limit: at most 2.65 ton/h by bag_hand expected (40 % more), 3.97 ton/h by feeder rated (87 % more); compare --gain simulates 10 % more
              left over 2,420 bales (2,290 to 2,550) when its season ends
            cotton_line: 10,050 ton (9,980 to 10,130) of seed_cotton, 8.09 ton/h over 1,242 scheduled hours
              made      trash 1,006 ton, cottonseed 5,540 ton, lint 3,360 ton
              limited   of scheduled hours 67 % (64 to 69 %) by the rate of the feeder, 23 % (21 to 26 %) by want of bales, 9.8 % (9.0 to 10.7 %) by the stop choke of the lint cleaner
              left over 0 modules when its season ends
            yard peak   stalk 4,188 bales (4,177 to 4,199) of 4,200 bales, seed_cotton 143 modules (136 to 150) of 500 modules
            money       revenue 2,011,000 USD, margin 167,000 USD (164,000 to 171,000)
            In brackets: 95 % interval of the mean of 40 replications.\
            """);
  }

  @Test
  void whatAPlantLacksIsLeftOut() {
    assertThat(String.join("\n", new RunWords(SampleAnswer.bare(), US).lines()))
        .isEqualTo(
            """
            Bare & <plain>, base with machines.mill.power=50 hp, 2027-01-04 to 2027-01-10, 1 replication, seed 7
            only: 97.00 ton of stalk
              limited   of scheduled hours 100.0 % by the rate of the feeder\
            """);
  }

  @Test
  void theReportBeginsWithTwoSentences() {
    assertThat(String.join("\n", new RunWords(SampleAnswer.year(), US).twoSentences()))
        .isEqualTo(
            """
            From 2027-01-04 to 2027-12-31 stalk_line is fed 3,840 ton (3,820 to 3,860) of stalk, 1.874 ton/h over 2,048 scheduled hours, and 2,420 bales (2,290 to 2,550) are left over; cotton_line is fed 10,050 ton (9,980 to 10,130) of seed_cotton, 8.09 ton/h over 1,242 scheduled hours; the margin is 167,000 USD (164,000 to 171,000).
            Of its scheduled hours stalk_line is held 57 % (54 to 61 %) by the rate of the mill, 13.2 % (12.4 to 14.0 %) by want of bales, 8.1 % (7.6 to 8.6 %) by the stop choke of the stalk saw; cotton_line is held 67 % (64 to 69 %) by the rate of the feeder, 23 % (21 to 26 %) by want of bales, 9.8 % (9.0 to 10.7 %) by the stop choke of the lint cleaner.\
            """);
  }

  @Test
  void theReportSaysWhatMostSeasonsReach() {
    assertThat(new RunWords(SampleAnswer.year(), US).mostSeasons())
        .contains(
            "In 19 of 20 simulated years, one figure at a time, at least 3,730 ton of stalk are"
                + " fed; at least 9,670 ton of seed_cotton are fed; the margin is 149,000 USD or"
                + " more.");
    assertThat(new RunWords(SampleAnswer.bare(), US).mostSeasons()).isEmpty();
  }

  @Test
  void theCallThatGivesTheAnswerAgainCanBePastedIntoAShell() {
    assertThat(new AgainWords(SampleAnswer.header()).run())
        .isEqualTo("hurdline run sweetgum-bend.yaml --replications 40 --seed 1");
    assertThat(new AgainWords(SampleAnswer.bare().header()).run())
        .isEqualTo(
            "hurdline run bare.yaml --set 'machines.mill.power=50 hp' --replications 1 --seed 7");
  }

  @Test
  void ratedAndExpectedCapacityAreATable() {
    assertThat(String.join("\n", new PaperWords(SampleAnswer.paper(), US).lines()))
        .isEqualTo(
            """
            sweetgum-bend.yaml is right: Sweetgum Bend shared gin, base, 2027-01-04 to 2027-12-31

            stalk_line on stalk, fed by feeder at 3.97 ton/h; all in ton/h:
              machine         load   limit   rated  expected  headroom
              feeder         1.000    3.97    3.97      3.77      -5 %
              stalk_saw      0.951    4.52    4.75      4.37      10 %
              mill           0.644    1.37    2.13      2.00     -50 %
              dust_cyclone   0.049    2.20   44.97     44.97   1,030 %
              stalk_fans     0.000    none    none      none
              bag_hand                                  2.65     -33 %
              rated     2.13 ton/h by mill: 3,915 ton in 1,840 scheduled hours, if nothing ever stopped
              expected  1.88 ton/h by mill and hurd_bagger, which stop together as no bin lies between them: 3,468 ton with mean stops and changes
              next      if hurd_bagger did not limit: at most 2.65 ton/h by bag_hand expected (40 % more), 3.97 ton/h by feeder rated (87 % more)
            orders      coarse_hurd and fine_hurd, 454.7 ton: take 140 % of what the mean crop can make and 70.0 % of what the scheduled hours can; they cannot all be met, some 130 ton will be missing

            Rated: nothing stops. Expected: mean stops, package changes, screen changes and lifts, and the hands that they need; in the table each machine alone.
            Queues come on top: waits for a hand that is busy elsewhere, full and empty bins, yard and weather. A run simulates them.\
            """);
  }
}
