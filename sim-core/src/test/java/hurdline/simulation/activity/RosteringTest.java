package hurdline.simulation.activity;

import hurdline.simulation.Figures;
import hurdline.simulation.TestPlant;
import org.junit.jupiter.api.Test;

/**
 * Who has the building when, by hand. A bin's draw in hours of its own is in {@code
 * NightPressTest}, a changeover past closed days in {@code exact/changeover_late}.
 */
class RosteringTest {

  @Test
  void aCampaignEndsByItsDateWithWhatIsLeftOver() {
    Figures.of(TestPlant.twoLines())
        .give("line.stalk_line.hours.scheduled", 24)
        .give("mass.stalk.fed", 48)
        .give("season.stalk_line.ended", 3)
        .give("season.stalk_line.left_over", 200 - 96)
        .give("line.cotton_line.hours.scheduled", 24)
        .give("mass.cotton.fed", 24)
        .give("season.cotton_line.ended", 9)
        .give("season.cotton_line.left_over", 100 - 48);
  }

  /**
   * Twelve days: three of the stalk, one of the changeover, five of the cotton with a weekend in
   * them, three of nobody.
   */
  @Test
  void aMachineIsInUseFromTheFirstToTheLastMidnightOfItsCampaigns() {
    Figures.of(TestPlant.twoLines())
        .give("machine.saw.hours.full_rate", 24)
        .give("machine.saw.hours.slowed", 24)
        .give("machine.saw.hours.uncrewed", 8 * 24 - 48)
        .give("machine.saw.hours.changeover", 24)
        .give("machine.saw.hours.unused", 3 * 24)
        .give("machine.feeder.hours.uncrewed", 3 * 24 - 24)
        .give("machine.feeder.hours.changeover", 24)
        .give("machine.feeder.hours.unused", 8 * 24)
        .give("machine.gin.hours.unused", 6 * 24);
  }

  /**
   * Twenty bales are 5 h of work: the line's hours end at 11:00, its machines are given up at 14:00
   * with the shift.
   */
  @Test
  void aCampaignEndsWhenItsCropIsThroughAndKeepsItsMachinesToTheEndOfTheShift() {
    Figures.of(TestPlant.twoLines().with("yard.on_hand.stalk", "20 bales"))
        .give("mass.stalk.fed", 10)
        .give("line.stalk_line.hours.scheduled", 5)
        .give("season.stalk_line.ended", 1)
        .give("season.stalk_line.left_over", 0)
        .give("machine.feeder.hours.full_rate", 5)
        .give("machine.feeder.hours.uncrewed", 6 + 3)
        .give("machine.feeder.hours.changeover", 24)
        .give("machine.feeder.hours.unused", 11 * 24 - 14)
        .give("mass.cotton.fed", 24);
  }

  /** Half an hour at nine is nobody's, eight times an hour and a half in six days. */
  @Test
  void aRestIsNotAmongTheHours() {
    Figures.of(
            TestPlant.twoLines()
                .with("calendar.shifts.day.rests", "[{at: \"09:00\", lasts: 30 min}]"))
        .give("line.stalk_line.hours.scheduled", 3 * 7.5)
        .give("mass.stalk.fed", 3 * 15)
        .give("machine.feeder.hours.uncrewed", 3 * 16.5);
  }

  @Test
  void nobodyWorksOnAClosedDay() {
    Figures.of(TestPlant.twoLines().with("calendar.closed", "[2027-03-02]"))
        .give("line.stalk_line.hours.scheduled", 16)
        .give("season.stalk_line.left_over", 200 - 64)
        .give("machine.feeder.hours.uncrewed", 3 * 24 - 16);
  }

  /**
   * Monday 8 bales, below 10 with more to come: home. Tuesday 8 + 12 = 20: back, 10 t in 5 h.
   * Wednesday 12: 6 t in 3 h, and the crew stays, for more may come until midnight.
   */
  @Test
  void aCrewIsSentHomeBelowOneLevelAndBackFromAnother() {
    Figures.of(sentHome(12))
        .give("mass.stalk.fed", 16)
        .give("line.stalk_line.hours.scheduled", 8 + 8)
        .give("line.stalk_line.hours.limited_by.no_bales", 3 + 5)
        .give("season.stalk_line.ended", 3)
        .give("season.stalk_line.left_over", 0);
  }

  /**
   * The control: 8 + 11 = 19 do not bring it back on Tuesday; Wednesday's 30 do, and 15 t take 7.5
   * h.
   */
  @Test
  void aBaleLessKeepsItAtHomeForAnotherDay() {
    Figures.of(sentHome(11)).give("mass.stalk.fed", 15).give("line.stalk_line.hours.scheduled", 8);
  }

  private static TestPlant sentHome(int load) {
    return TestPlant.twoLines()
        .with("yard.on_hand.stalk", "8 bales")
        .with("season.0.send_home", "{below: 10 bales, back_at: 20 bales}")
        .with(
            "deliveries",
            "{stalk: {loads: {every: 25 h, bales: "
                + load
                + ", from: 2027-03-01, to: 2027-03-03}}}");
  }
}
