package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RunWordsTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  @Test
  void aYearIsSaidInSentencesThenInATable() {
    assertThat(String.join("\n", new RunWords(SampleAnswer.year(), US).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands, 2027-01-04 to 2027-12-31, 40 replications, seed 1
            The mill is the bottleneck: it limits the stalk line in 57 of 100 scheduled hours.
            The feeder is the bottleneck: it limits the cotton line in 67 of 100 scheduled hours.
            About 2,420 of 9,730 bales of stalk are left when the season ends.
            The year earns 167,000 USD before interest and tax, give or take 4,000; one time in 20 less than 149,000 USD.

                                          mean               95 % interval       percentiles
                                                                                5th     95th
            Stalk line
              stalk fed                  3,840 ton          3,820 to 3,860    3,730    3,950
              scheduled                  2,048 h                              2,048    2,048
              throughput                 1.874 ton/h        1.864 to 1.885    1.820    1.929
              long fiber bales             475 ton              472 to 479      456      495
              short fiber bales            272 ton              270 to 274      261      283
              coarse hurd                  839 ton              833 to 846      805      874
              medium hurd                1,205 ton          1,195 to 1,214    1,155    1,254
              fine hurd                    355 ton              353 to 358      341      370
              dust                       231.6 ton          229.7 to 233.4    222.1    241.1
              limited by mill               57 %                  54 to 61
              limited by lack of          13.2 %              12.4 to 14.0
              crop
              limited by choke of          8.1 %                7.6 to 8.6
              stalk saw
              carry-over                 2,420 bales        2,290 to 2,550    1,740    3,090
            Cotton line
              seed cotton fed           10,050 ton         9,980 to 10,130    9,670   10,430
              scheduled                  1,242 h            1,239 to 1,246    1,224    1,261
              throughput                  8.09 ton/h          8.05 to 8.13     7.87     8.31
              trash                      1,006 ton            998 to 1,014      964    1,047
              cottonseed                 5,540 ton          5,490 to 5,580    5,310    5,760
              lint                       3,360 ton          3,340 to 3,390    3,220    3,500
              limited by feeder             67 %                  64 to 69
              limited by lack of            23 %                  21 to 26
              crop
              limited by choke of          9.8 %               9.0 to 10.7
              lint cleaner
              carry-over                     0 modules                            0        0
            Yard
              peak of stalk, room        4,188 bales        4,177 to 4,199    4,134    4,242
              for 4,200
              peak of seed cotton,         143 modules          136 to 150      108      179
              room for 500
            Money
              revenue                2,011,000 USD
              margin                   167,000 USD      164,000 to 171,000  149,000  186,000
              margin, stalk line,         23.0 USD/ton        21.3 to 24.7     14.2     31.8
              before electricity
              and overhead
              margin, cotton line,        53.7 USD/ton        53.0 to 54.5     50.0     57.5
              before electricity
              and overhead

            next        stalk line: if the mill did not limit: at most 2.65 ton/h by the bag hand expected (40 % more), 3.97 ton/h by the feeder rated (87 % more); compare --gain simulates 10 % more
            Limits are in % of scheduled hours. Intervals are those of the mean of 40 simulated years; one year in 20 lies below the 5th percentile, one above the 95th.
            Intervals cover the simulation alone, not how well the figures of the plant file are known; doubt in the file or --draws adds that.\
            """);
  }

  @Test
  void whatAPlantLacksIsLeftOut() {
    assertThat(String.join("\n", new RunWords(SampleAnswer.bare(), US).lines(80)))
        .isEqualTo(
            """
            Bare & <plain>, the plant as it stands with machines.mill.power=50 hp, 2027-01-04 to 2027-01-10, 1 replication, seed 7
            The feeder is the bottleneck: it limits the only in all scheduled hours.
            About 97 tons of stalk are fed.
            This is one simulated year, and another may differ much.

            Only
              stalk fed          97.00 ton
              limited by feeder  100.0 %

            One simulated year: no interval can be given.\
            """);
  }

  @Test
  void theCallThatGivesTheAnswerAgainCanBePastedIntoAShell() {
    assertThat(new RepeatCall(SampleAnswer.header()).run())
        .isEqualTo("hurdline run sweetgum-bend.yaml --replications 40 --seed 1");
    assertThat(new RepeatCall(SampleAnswer.bare().header()).run())
        .isEqualTo(
            "hurdline run bare.yaml --set 'machines.mill.power=50 hp' --replications 1 --seed 7");
  }

  @Test
  void ratedAndExpectedCapacityAreATable() {
    assertThat(String.join("\n", new CheckWords(SampleAnswer.paper(), US).lines(80)))
        .isEqualTo(
            """
            sweetgum-bend.yaml is right: Sweetgum Bend shared gin, the plant as it stands, 2027-01-04 to 2027-12-31
            The mill and the hurd bagger limit the stalk line to 1.88 tons an hour with mean stops and changes, and the mill to 2.13 tons an hour if nothing ever stopped.
            Not all orders can be met.
            Queues, the yard and the weather come on top; a run simulates them.

            stalk line on stalk, fed by the feeder at 3.97 ton/h; all in ton/h:
              machine         load   limit   rated  expected  headroom
              feeder         1.000    3.97    3.97      3.77      -5 %
              stalk saw      0.951    4.52    4.75      4.37      10 %
              mill           0.644    1.37    2.13      2.00     -50 %
              dust cyclone   0.049    2.20   44.97     44.97   1,030 %
              stalk fans     0.000    none    none      none
              bag hand                                  2.65     -33 %
              rated     2.13 ton/h by the mill: 3,915 ton in 1,840 scheduled hours, if nothing ever stopped
              expected  1.88 ton/h by the mill and the hurd bagger, which stop together as no bin lies between them: 3,468 ton with mean stops and changes
              next      if the hurd bagger did not limit: at most 2.65 ton/h by the bag hand expected (40 % more), 3.97 ton/h by the feeder rated (87 % more)
            orders      coarse hurd and fine hurd, 454.7 ton: take 140 % of what the mean crop can make and 70.0 % of what the scheduled hours can; they cannot all be met, some 130 ton will be missing

            Load: how much of what is fed reaches a machine, 1 being all. Limit: what it takes itself. Rated and expected: what the line could be fed if nothing but this machine limited it. Headroom: expected over the feeder's own rate, less one.
            Rated: nothing stops. Expected: mean stops, package changes, screen changes and lifts, and the hands that they need; in the table each machine alone.
            Queues come on top: waits for a hand that is busy elsewhere, full and empty bins, yard and weather. A run simulates them.\
            """);
  }
}
