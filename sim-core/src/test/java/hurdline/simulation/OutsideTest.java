package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.outside.Autocorrelation;
import org.junit.jupiter.api.Test;

/**
 * A short look at what {@link OutsideProofTest} shows at length, with controls that must be seen.
 *
 * <p>Agreement means within 4 standard errors; seeds are fixed, else at most 1 false alarm in 1,000
 * runs of the class.
 */
class OutsideTest {
  private static final long SEED = 3;
  private static final double ERRORS = 4;

  /**
   * The line moves only while none of its machines is down: chance p₀ of the finite-source model.
   */
  @Test
  void oneMechanicLetsMachinesWaitAsTheFormulaSays() {
    Repeats repeats = new Repeats(OutsidePlants.mechanics(5, 1, 8, 30), SEED, 16);
    double[] fed = repeats.of("machine.m1.mass_in");
    assertThat(errorsOff(fed, tons(repeats, 5, 1, 480, 30))).isLessThan(ERRORS);
    assertThat(errorsOff(fed, tons(repeats, 5, 2, 480, 30)))
        .as("two mechanics")
        .isGreaterThan(ERRORS);
    assertThat(errorsOff(fed, tons(repeats, 5, 1, 480, 31)))
        .as("repairs of 31 min")
        .isGreaterThan(ERRORS);
    double goingOn = 10 * repeats.hours / Math.pow(1 + 0.5 / 8, 5);
    assertThat(errorsOff(fed, goingOn)).as("a mechanic each").isGreaterThan(ERRORS);
  }

  /** The renewal function of amounts of gamma shape 2 and mean m: T/m − 1/4 + e^(−4T/m)/4. */
  @Test
  void aShortSeasonCountsItsStopsFromAFreshStart() {
    double[] starts =
        new Repeats(
                OutsidePlants.alone(1, "{gamma: {mean: 10 h, sd: 7.0710678118654755 h}}", "0 h"),
                SEED,
                6_000)
            .of("machine.m1.stop.fault.count");
    assertThat(errorsOff(starts, 2.4 - 0.25 + Math.exp(-9.6) / 4)).isLessThan(ERRORS);
    assertThat(errorsOff(starts, 2.4)).as("T over the mean").isGreaterThan(ERRORS);
    double together =
        Autocorrelation.ofNeighbours(starts); // of independent ones, standard deviation 1/√n
    assertThat(Math.abs(together))
        .as("one replication and the next")
        .isLessThan(ERRORS / Math.sqrt(starts.length));
  }

  @Test
  void hoursUpOfAShortSeasonAreThoseOfANewMachine() {
    double[] fed =
        new Repeats(
                OutsidePlants.alone(1, "{exponential: {mean: 8 h}}", "{exponential: {mean: 4 h}}"),
                SEED,
                6_000)
            .of("machine.m1.mass_in");
    assertThat(errorsOff(fed, 10 * OutsidePlants.upHours(24, 8, 4))).isLessThan(ERRORS);
    assertThat(errorsOff(fed, 160)).as("in the long run").isGreaterThan(ERRORS);
  }

  private static double tons(
      Repeats repeats, int machines, int mechanics, double between, double repair) {
    return 10 * repeats.hours * OutsidePlants.downOfMany(machines, mechanics, between, repair)[0];
  }

  private static double errorsOff(double[] each, double reference) {
    double[] got = Repeats.meanAndError(each);
    return Math.abs(got[0] - reference) / got[1];
  }
}
