package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.random.Draws;
import hurdline.random.Gamma;
import hurdline.random.RandomStreams;
import hurdline.simulation.TwoMachines.Unit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * What is easily got wrong and seen by no test of another name. Comparisons of means are within 4
 * standard errors, fixed seeds, else at most 1 false alarm in 1,000 runs of the class; all others
 * are exact.
 */
class PitfallsTest {
  private static final double ERRORS = 4;
  private static final Unit TEN = new Unit(10, 1, 6);
  private static final Unit EIGHT = new Unit(8, 1, 6);
  private static final Unit FRAIL = new Unit(12, 0.5, 10);

  /**
   * Half of the feed leaves at the saw: the press counts the 2 t/h that reach it, not the 4 t/h
   * fed.
   */
  @Test
  void aCountIsOfTheMachinesOwnInflow() {
    String machines =
        """
          feeder: {kind: bale-feeder}
          saw: {kind: separating-saw}
          press: {kind: press, stops: {look: {every: 7 t, counted: mass, lasts: 0 min}}}
        """;
    String steps =
        "      feeder: {rate: 4 t/h, to: saw}\n"
            + "      saw: {outlets: [{to: chips, takes: {hurd: 100 %}}, {to: press}]}\n"
            + "      press: {rate: 9 t/h, to: tow}";
    Repeats one = new Repeats(UnbufferedLine.of(machines, steps, 10), 1, 1);
    assertThat(one.of("machine.press.mass_in")[0]).isCloseTo(480, within(1e-9));
    assertThat(one.of("machine.press.stop.look.count")[0])
        .isEqualTo(Math.floor(480 / 7.0))
        .isNotEqualTo(Math.floor(960 / 7.0));
  }

  /**
   * Gamma amounts of shape 1/25 are next to nothing more often than not: each is met all the same,
   * and the run ends.
   */
  @Test
  void amountsNearNothingAreNeitherSkippedNorLoopedOn() {
    int days = 30;
    Repeats one =
        new Repeats(OutsidePlants.alone(days, "{gamma: {mean: 1 h, sd: 5 h}}", "0 min"), 9, 1);
    Draws draws = new Draws(Gamma.of(3600, 5 * 3600), new RandomStreams(9).of(1, "m1.fault.every"));
    int count = 0;
    int atOnce = 0;
    for (double due = draws.next(); due <= days * 86_400; count++) {
      double amount = draws.next();
      atOnce += amount < 1e-6 ? 1 : 0;
      due += amount;
    }
    assertThat(one.of("machine.m1.stop.fault.count")[0]).isEqualTo(count);
    assertThat(atOnce).as("amounts below a millionth of a second").isGreaterThan(count / 4);
  }

  /**
   * In the long stop, 10 to 13 h, b falls due at 10.25 and a at 10.5 h: b from 13 to 13.5, then a
   * to 14.5, and b again 10.25 h after its end, at 23.75, under way as the day ends. By name, a
   * would come first and b not again.
   */
  @Test
  void stopsBehindAnotherGoInTheOrderInWhichTheyFellDueAndTheLastIsBookedToTheEnd() {
    String machines =
        """
          feeder: {kind: bale-feeder}
          press:
            kind: press
            stops:
              long: {every: 10 h, counted: running, lasts: 3 h}
              b: {every: 10.25 h, counted: calendar, lasts: 30 min}
              a: {every: 10.5 h, counted: calendar, lasts: 1 h}
        """;
    String steps = "      feeder: {rate: 4 t/h, to: press}\n      press: {to: tow}";
    Repeats one = new Repeats(UnbufferedLine.of(machines, steps, 1), 1, 1);
    assertThat(one.of("machine.press.stop.long.hours")[0]).isCloseTo(3, within(1e-9));
    assertThat(one.of("machine.press.stop.b.count")[0]).isEqualTo(2);
    assertThat(one.of("machine.press.stop.b.hours")[0]).isCloseTo(0.75, within(1e-9));
    assertThat(one.of("machine.press.stop.a.count")[0]).isEqualTo(1);
    assertThat(one.of("machine.press.stop.a.hours")[0]).isCloseTo(1, within(1e-9));
    assertThat(one.of("machine.press.hours.down")[0]).isCloseTo(4.75, within(1e-9));
  }

  /**
   * What goes on in the second machine while the bin is empty, in every replication to the second.
   */
  @Test
  void anEmptyBinStarvesOrSlowsItsConsumerAndNothingElseDoes() {
    Repeats repeats = new Repeats(new TwoMachines("mass", 1, EIGHT, FRAIL, 0.5).plant(1), 6, 3);
    double[] empty = repeats.of("bin.between.hours.empty");
    double[] starved = repeats.of("machine.opener.hours.starved");
    double[] slowed = repeats.of("machine.opener.hours.slowed");
    for (int r = 0; r < empty.length; r++) {
      assertThat(empty[r]).isGreaterThan(1000).isCloseTo(starved[r] + slowed[r], within(1e-5));
      assertThat(starved[r]).isPositive();
      assertThat(slowed[r]).isPositive();
    }
  }

  /**
   * Whatever the bin does: counts on work make hours down per tonne, by the calendar per hour not
   * down.
   */
  @Test
  void hoursDownFollowTheMassOrTheCalendarWhateverTheBinDoes() {
    double perTonne = 0.1 / 10;
    Repeats work = new Repeats(new TwoMachines("mass", 2, TEN, EIGHT, 0.5).plant(1), 7, 10);
    assertThat(errorsOff(difference(work, "machine.feeder.mass_in", perTonne), 0))
        .isLessThan(ERRORS);
    assertThat(errorsOff(difference(work, "machine.feeder.mass_in", 1.02 * perTonne), 0))
        .as("2 % more")
        .isGreaterThan(ERRORS);
    Repeats calendar = new Repeats(new TwoMachines("calendar", 2, TEN, EIGHT, 0.5).plant(1), 7, 10);
    double[] down = calendar.of("machine.feeder.hours.down");
    assertThat(errorsOff(down, calendar.hours * 0.1 / 1.1)).isLessThan(ERRORS);
    assertThat(errorsOff(down, calendar.hours * 0.1))
        .as("repairs not in the cycle")
        .isGreaterThan(ERRORS);
  }

  private static double[] difference(Repeats repeats, String mass, double hoursPerTonne) {
    double[] down = repeats.of("machine.feeder.hours.down");
    double[] tonnes = repeats.of(mass);
    double[] each = new double[down.length];
    Arrays.setAll(each, r -> down[r] - hoursPerTonne * tonnes[r]);
    return each;
  }

  /** The line mirrored passes as much, and its bin is as full as the other is empty. */
  @Test
  void aLineTurnedEndToEndPassesAsMuch() {
    TwoMachines line = new TwoMachines("mass", 2, TEN, FRAIL, 1);
    Repeats there = new Repeats(line.plant(1), 8, 12);
    Repeats back = new Repeats(line.turned().plant(1), 80, 12);
    assertThat(errorsApart(there.of("machine.opener.mass_in"), back.of("machine.opener.mass_in")))
        .isLessThan(ERRORS);
    double[] mirrored =
        Arrays.stream(back.of("bin.between.level.mean")).map(level -> 1 - level).toArray();
    assertThat(errorsApart(there.of("bin.between.level.mean"), mirrored)).isLessThan(ERRORS);
    assertThat(errorsApart(there.of("bin.between.level.mean"), back.of("bin.between.level.mean")))
        .as("not mirrored")
        .isGreaterThan(ERRORS);
  }

  /**
   * From the formula without a bin towards the lesser machine's alone, and not beyond; the same
   * chance for all bins.
   */
  @Test
  void throughputRisesWithTheBinAndNeverBeyondTheLesserMachine() {
    double before = 8 / 1.18 * 0.995;
    for (double holdsT : new double[] {0.001, 0.3, 1, 5}) {
      Repeats repeats = new Repeats(new TwoMachines("mass", 1, TEN, EIGHT, holdsT).plant(1), 4, 6);
      double tPerH = Repeats.meanAndError(repeats.of("machine.opener.mass_in"))[0] / repeats.hours;
      assertThat(tPerH).isGreaterThan(before).isLessThan(8 / 1.1 * 1.005);
      before = tPerH;
    }
    assertThat(before).isGreaterThan(7.2);
  }

  /**
   * What reaches the bin, 3.6 t/h less a tenth, is what its consumer takes, 54 kg/min, but for the
   * last bits. One stop of half an hour fills the bin to the brim, and there it stays, for no
   * rounding may lower it or make events.
   */
  @Test
  void atEqualSpeedsInUnlikeUnitsABinStaysWhereItIs() {
    String machines =
        """
          feeder: {kind: bale-feeder}
          saw: {kind: separating-saw}
          between: {kind: bin, holds: 1.62 t}
          press: {kind: press, stops: {look: {every: 32.4 t, counted: mass, lasts: 30 min, initial_age: 0 t}}}
        """;
    String steps =
        "      feeder: {rate: 3.6 t/h, to: saw}\n"
            + "      saw: {outlets: [{to: chips, takes: {fines: 100 %}}, {to: between}]}\n"
            + "      between: {to: press}\n"
            + "      press: {rate: 54 kg/min, to: tow}";
    Repeats one = new Repeats(UnbufferedLine.of(machines, steps, 10), 1, 1);
    double stops = one.of("machine.press.stop.look.count")[0];
    assertThat(stops).isEqualTo(Math.floor(240 / 10.5));
    assertThat(one.of("bin.between.hours.full")[0]).isCloseTo(240 - 10.5, within(1e-6));
    assertThat(one.of("bin.between.hours.empty")[0]).isCloseTo(10, within(1e-6));
    assertThat(one.of("bin.between.level.mean")[0])
        .isCloseTo(1.62 * (240 - 10.5 + 0.25) / 240, within(1e-9));
    assertThat(one.of("machine.press.hours.full_rate")[0])
        .isCloseTo(240 - 0.5 * stops, within(1e-6));
  }

  /** Two loaders that each work half of the time are busy for a half, not for the whole. */
  @Test
  void busyIsPerServer() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    10,
                    """
                resources: {loader: {count: 2}}
                yard: {places: {barn: {holds: 9999 bales}}}
                deliveries:
                  stalk:
                    loads: {every: 10 min, bales: 1}
                    unload: {lasts: 10 min, needs: loader}
                """))
            .run();
    assertThat(run.busyShare("loader")).isCloseTo(0.5, within(1e-3));
  }

  private static double errorsOff(double[] each, double reference) {
    double[] got = Repeats.meanAndError(each);
    return Math.abs(got[0] - reference) / got[1];
  }

  private static double errorsApart(double[] one, double[] other) {
    double[] a = Repeats.meanAndError(one);
    double[] b = Repeats.meanAndError(other);
    return Math.abs(a[0] - b[0]) / Math.hypot(a[1], b[1]);
  }
}
