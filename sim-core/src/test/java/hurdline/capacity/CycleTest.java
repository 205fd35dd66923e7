package hurdline.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.TimeWindows;
import hurdline.random.Constant;
import hurdline.random.Empirical;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mean cycles of fillers, lifts and repairs against sums by hand and against plain clocks. */
class CycleTest {

  @Test
  void oneSpoutFillsAndWaitsInTurn() {
    assertThat(PackageCycle.meanS(100, new Empirical(List.of(30.0, 50.0)), 1, 1))
        .isCloseTo(140, within(1e-9));
  }

  /** The change takes 60 or 140 s, half each: max(100, 60) and max(100, 140). */
  @Test
  void twoSpoutsWithOneHandWaitForTheLongerOfFillingAndChange() {
    assertThat(PackageCycle.meanS(100, new Empirical(List.of(60.0, 140.0)), 2, 1))
        .isCloseTo(120, within(1e-9));
  }

  @Test
  void withoutAHandNoPackageIsEverChanged() {
    assertThat(PackageCycle.meanS(100, new Constant(30), 1, 0)).isInfinite();
    assertThat(PackageCycle.meanS(100, new Constant(30), 2, 0)).isInfinite();
  }

  /**
   * A clock that fills the spout that is ready first and gives each change to the hand that is free
   * first.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 30, 1, 1", "100, 130, 1, 1", "100, 30, 2, 1", "100, 130, 2, 1", "100, 130, 2, 2",
    "100, 290, 2, 2", "100, 290, 3, 1", "100, 290, 3, 2", "100, 290, 3, 3", "10, 290, 4, 2"
  })
  void equalChangesGoAsAClockSays(double fillS, double changeS, int spouts, int hands) {
    double[] readyS = new double[spouts];
    double[] freeS = new double[hands];
    double nowS = 0;
    double markS = 0;
    for (int n = 0; n < 1200; n++) {
      markS = n == 600 ? nowS : markS;
      Arrays.sort(readyS);
      nowS = Math.max(nowS, readyS[0]) + fillS;
      Arrays.sort(freeS);
      freeS[0] = Math.max(nowS, freeS[0]) + changeS;
      readyS[0] = freeS[0];
    }
    assertThat(PackageCycle.meanS(fillS, new Constant(changeS), spouts, hands))
        .isCloseTo((nowS - markS) / 600, within(1e-9));
  }

  /**
   * Half of a shift of 8 h in a day of 24 h: begun at any instant of it, 4 h by the clock lose 3 h
   * on average.
   */
  @Test
  void aRepairByTheClockLosesOnlyWhatOfItLiesInHours() {
    RepairHours day = new RepairHours(TimeWindows.of(0, 8 * 3600), 24 * 3600);
    assertThat(day.crewedTimeLostS(4 * 3600) / 3600).isCloseTo(3, within(1e-5));
    assertThat(new RepairHours(TimeWindows.of(0, 86_400), 86_400).crewedTimeLostS(4 * 3600) / 3600)
        .as("round the clock")
        .isCloseTo(4, within(1e-5));
  }

  /**
   * Begun at any instant of a day with hours from 0 to 8: in them with 1/3, and then 2 h reach past
   * them in a quarter of cases; else it waits 8 h on average: 1/3·(2 + 16/4) + 2/3·(8 + 2) = 26/3
   * h.
   */
  @Test
  void aRepairInHoursWaitsForThem() {
    RepairHours day = new RepairHours(TimeWindows.of(0, 8 * 3600), 24 * 3600);
    assertThat(day.clockTimeS(2 * 3600) / 3600).isCloseTo(26.0 / 3, within(1e-4));
  }

  /** Longer than all hours of the horizon: the season comes again. */
  @Test
  void aRepairThatTakesMoreThanASeasonGoesOnInTheNext() {
    RepairHours day = new RepairHours(TimeWindows.of(0, 8 * 3600), 24 * 3600);
    assertThat(day.clockTimeS(10 * 3600) / 3600).isCloseTo(24 + 26.0 / 3, within(1e-4));
  }
}
