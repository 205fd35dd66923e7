package hurdline.simulation.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.simulation.Figures;
import hurdline.simulation.TestPlant;
import org.junit.jupiter.api.Test;

/**
 * How two crops shared a saw and a building, by hand; more of one press by night is in {@code
 * NightPressTest}.
 */
class CropSharesTest {

  @Test
  void aMachinesHoursAndMassAreThoseOfTheCropThatHasIt() {
    Figures.of(TestPlant.twoLines())
        .give("machine.saw.crop.stalk.mass_in", 48)
        .give("machine.saw.crop.stalk.hours.full_rate", 24)
        .give("machine.saw.crop.stalk.hours.slowed", 0)
        .give("machine.saw.crop.stalk.hours.uncrewed", 3 * 16)
        .give("machine.saw.crop.cotton.mass_in", 24)
        .give("machine.saw.crop.cotton.hours.full_rate", 0)
        .give("machine.saw.crop.cotton.hours.slowed", 24)
        .give("machine.saw.crop.cotton.hours.uncrewed", 5 * 24 - 24)
        .give("machine.gin.crop.stalk.mass_in", 0);
  }

  @Test
  void theBuildingIsEachLinesAlone() {
    Figures.of(TestPlant.twoLines())
        .give("building.hours.alone.stalk_line", 24)
        .give("building.hours.alone.cotton_line", 24)
        .give("building.hours.concurrent", 0)
        .give("building.hours.staffed", 48)
        .give("building.hours.changeover", 24)
        .give("building.hours.uncrewed", 8 * 24 - 48)
        .give("building.hours.unused", 3 * 24);
  }

  /**
   * A belt goes every 5 h of running for one: at 5 and 11 h of the first 24, and so on, four times,
   * the last over at 24 h.
   */
  @Test
  void ratiosAreOfPlannedHours() {
    Figures.of(
            TestPlant.twoLines()
                .with(
                    "season",
                    "[{line: stalk_line, from: 2027-03-01, to: 2027-03-03, shifts: [day]}]")
                .with("machines.saw.stops", "{belt: {every: 5 h, counted: running, lasts: 1 h}}"))
        .give("machine.saw.hours.down", 4)
        .give("machine.saw.kpi.availability", 20 / 24.0)
        .give("machine.saw.kpi.technical_efficiency", 20 / 24.0)
        .give("machine.saw.kpi.allocation_efficiency", 1)
        .give("machine.feeder.hours.blocked", 4)
        .give("machine.feeder.kpi.allocation_efficiency", 20 / 24.0)
        .give("machine.feeder.kpi.utilization_efficiency", 1);
  }

  /**
   * [week][2 · (machine · crops + crop)]; machines and crops by name: feeder, gin, saw and cotton,
   * stalk.
   */
  @Test
  void weeksHaveTheHoursAndTonnesOfEachCrop() {
    double[][] strips = TestPlant.twoLines().outcome().shared().strips();
    int saw = 2 * 2 * 2;
    assertThat(strips).hasDimensions(2, 12);
    assertStrip(strips[0], saw, 8, 8, 24, 48);
    assertStrip(strips[1], saw, 16, 16, 0, 0);
  }

  private static void assertStrip(double[] week, int at, double... expected) {
    for (int k = 0; k < expected.length; k++) {
      assertThat(week[at + k]).as("place " + k).isCloseTo(expected[k], within(1e-9));
    }
  }

  @Test
  void aLineIsFinishedWhereItsLastCampaignLeavesNothing() {
    Figures.of(TestPlant.twoLines().with("yard.on_hand.cotton", "48 bales"))
        .give("season.cotton_line.finished", 1)
        .give("season.stalk_line.finished", 0)
        .give("season.finished", 0);
    Figures.of(TestPlant.twoLines().with("yard.on_hand", "{stalk: 96 bales, cotton: 48 bales}"))
        .give("season.finished", 1);
  }
}
