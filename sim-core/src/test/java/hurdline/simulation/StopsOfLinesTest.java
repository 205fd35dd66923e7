package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.capacity.CapacityPlant;
import hurdline.capacity.Freed;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A stop that belongs to one of two lines: as if that line had a machine of its own, whatever the
 * other does in between.
 */
class StopsOfLinesTest {
  private static final String RANDOM =
      "every: {gamma: {mean: %s, sd: 6 h}}, counted: %s, lasts: {exponential: {mean: 40 min}},"
          + " repair: any-time";

  /**
   * Stalks Monday to Wednesday and cotton Thursday and Friday, for eight weeks; repairs go on
   * overnight, so that hardly any runs into the other line's hours.
   *
   * @param cottonSaw the machine that cotton runs through
   */
  private static Plant plant(String cottonSaw, String stops) {
    StringBuilder season = new StringBuilder();
    for (int week = 0; week < 8; week++) {
      season.append(
          "  - {line: stalk_line, from: %s, to: %s, shifts: [day]}\n  - {line: cotton_line, from: %s, to: %s, shifts: [day]}\n"
              .formatted(day(week, 0), day(week, 2), day(week, 3), day(week, 4)));
    }
    String text =
        """
        hurdline: 1
        plant: Two lines in turn
        calendar:
          from: 2027-03-01
          to: 2027-04-25
          shifts: {day: {days: [Mon, Tue, Wed, Thu, Fri], from: "06:00", to: "16:00"}}
        components: [fiber]
        crops:
          stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %%}}
          cotton: {bale: {mass: 500 kg}, composition: {fiber: 100 %%}}
        machines:
          feeder: {kind: bale-feeder}
          saw: {kind: separating-saw, stops: {jam: {%s}}}
          other: {kind: separating-saw}
        products: {tow: {}, lint: {}}
        lines:
          stalk_line: {crop: stalk, feed: feeder, steps: {feeder: {rate: 2 t/h, to: saw}, saw: {to: tow}}}
          cotton_line: {crop: cotton, feed: feeder, steps: {feeder: {rate: 1 t/h, to: %s}, %s: {to: lint}}}
        season:
        %s
        yard: {on_hand: {stalk: 2000 bales, cotton: 2000 bales}, places: {barn: {holds: 5000 bales}}}
        """
            .formatted(stops, cottonSaw, cottonSaw, season);
    return PlantFile.of("test.yaml", text).plant();
  }

  private static String day(int week, int day) {
    return LocalDate.of(2027, 3, 1).plusDays(7L * week + day).toString();
  }

  private static String stop(String every, String counted) {
    String sd = counted.equals("mass") ? "6 t" : "6 h";
    return RANDOM.replace("6 h", sd).formatted(every, counted);
  }

  @ParameterizedTest
  @CsvSource({"9 h, running", "20 t, mass", "11 h, crewed"})
  void aStopOfOneLineIsThatOfAMachineOfItsOwn(String every, String counted) {
    Plant shared = plant("saw", stop(every, counted) + ", for: [stalk]");
    Plant apart = plant("other", stop(every, counted));
    int several = 0;
    for (int replication = 1; replication <= 10; replication++) {
      Map<String, Double> one = ExactCasesTest.measures(shared, replication);
      Map<String, Double> two = ExactCasesTest.measures(apart, replication);
      for (String measure :
          new String[] {
            "mass.stalk.fed",
            "mass.cotton.fed",
            "machine.saw.stop.jam.count",
            "machine.saw.stop.jam.hours",
            "line.stalk_line.hours.limited_by.saw.jam"
          }) {
        assertThat(one.get(measure))
            .as(replication + " " + measure)
            .isCloseTo(two.get(measure), within(1e-6));
      }
      several += one.get("machine.saw.stop.jam.count");
    }
    assertThat(several).isGreaterThan(80);
    Map<String, Double> ofBoth = ExactCasesTest.measures(plant("saw", stop(every, counted)), 1);
    assertThat(ofBoth.get("mass.cotton.fed")).as("the control").isLessThan(159);
  }

  @ParameterizedTest
  @ValueSource(strings = {"running", "mass", "crewed"})
  void aStopOfAllItsLinesIsThatOfTheMachine(String counted) {
    String stop = stop(counted.equals("mass") ? "20 t" : "9 h", counted);
    double[] named =
        Ready.replication(plant("saw", stop + ", for: [cotton_line, stalk]"))
            .run(new RandomStreams(1), 1, null)
            .values();
    double[] unnamed =
        Ready.replication(plant("saw", stop)).run(new RandomStreams(1), 1, null).values();
    for (int k = 0; k < named.length; k++) {
      assertThat(named[k]).isCloseTo(unnamed[k], within(1e-6));
    }
  }

  /**
   * By the calendar a stop of stalks counts Monday 00:00 to Wednesday 24:00: every 20 h of 72 h,
   * about 3.6 a week, while there are 30 h of work.
   */
  @ParameterizedTest
  @CsvSource({"9 h, running", "20 t, mass", "11 h, crewed", "20 h, calendar"})
  void expectedCapacityCountsAStopOnItsLineOnly(String every, String counted) {
    Plant plant =
        plant(
            "saw",
            "every: {exponential: {mean: %s}}, counted: %s, lasts: 40 min, for: [stalk]"
                .formatted(every, counted));
    assertThat(expectedTPerH(plant, 1)).as("cotton").isCloseTo(1, within(1e-9));
    double expected = expectedTPerH(plant, 0);
    double[] fed = Repeats.meanAndError(new Repeats(plant, 5, 60).of("line.stalk_line.throughput"));
    assertThat(Math.abs(fed[0] - expected) / fed[1]).as("errors off").isLessThan(3.5);
    assertThat(expected).isLessThan(1.95);
    double[] cotton =
        Repeats.meanAndError(new Repeats(plant, 5, 60).of("line.cotton_line.throughput"));
    assertThat(cotton[0]).as("but for repairs that run into its hours").isCloseTo(1, within(0.02));
  }

  private static double expectedTPerH(Plant plant, int line) {
    Roster roster = Roster.of(plant);
    Haulage haulage = Haulage.of(plant, YardPlan.of(plant), roster);
    return 3.6
        * new CapacityPlant(CompiledLines.of(plant), roster, haulage)
            .line(plant.lines().get(line))
            .expected(Freed.nothing())
            .kgPerS();
  }

  /** What is due before the first day waits for its own line. */
  @Test
  void aStopThatIsDueFromTheStartWaitsForItsLine() {
    Plant plant =
        plant(
            "saw", "every: 9 h, initial_age: 9 h, counted: running, lasts: 30 min, for: [cotton]");
    Map<String, Double> figures = ExactCasesTest.measures(plant, 1);
    // 16 days of 10 h: at once, and after every 9 h of running
    assertThat(figures.get("machine.saw.stop.jam.count")).isEqualTo(17);
    assertThat(figures.get("mass.stalk.fed")).isCloseTo(24 * 20, within(1e-6));
    assertThat(figures.get("mass.cotton.fed")).isCloseTo(160 - 17 * 0.5, within(1e-6));
  }
}
