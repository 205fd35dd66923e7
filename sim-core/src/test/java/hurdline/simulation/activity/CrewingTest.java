package hurdline.simulation.activity;

import hurdline.simulation.Figures;
import hurdline.simulation.TestPlant;
import org.junit.jupiter.api.Test;

/** Whose hours are paid, by hand. A shift worked for two reasons is in {@code exact/paid_once}. */
class CrewingTest {

  @Test
  void handsArePaidForEachShiftAndForTheChangeover() {
    Figures.of(TestPlant.twoLines())
        .give("crew.stalk_line.labor_hours", 4 * 3 * 8)
        .give("crew.stalk_line.changeover", 3 * 8)
        .give("crew.cotton_line.labor_hours", 2 * 3 * 8)
        .give("crew.cotton_line.changeover", 0)
        .give("crew.stalk_line.sent_home", 0)
        .give("money.wages", 10 * (96 + 24 + 48));
  }

  /** The crop is through after 5 h of the first shift; the other two are nobody's. */
  @Test
  void aShiftThatWasBegunIsPaidToItsEnd() {
    Figures.of(TestPlant.twoLines().with("yard.on_hand.stalk", "20 bales"))
        .give("crew.stalk_line.labor_hours", 4 * 8)
        .give("crew.stalk_line.changeover", 3 * 8);
  }

  @Test
  void aRestIsPaid() {
    Figures.of(
            TestPlant.twoLines()
                .with("calendar.shifts.day.rests", "[{at: \"09:00\", lasts: 30 min}]"))
        .give("crew.stalk_line.labor_hours", 4 * 3 * 8);
  }

  /** The stalk's hands have 24 h in the first week, the cotton's 8 h in it and 16 h in the next. */
  @Test
  void whatACrewWorksBeyondTheHoursOfItsWeekIsOvertime() {
    Figures.of(TestPlant.twoLines().with("money.overtime", "{after: 15 h, pays: 1.5}"))
        .give("crew.stalk_line.overtime", 4 * 9)
        .give("crew.cotton_line.overtime", 2 * 1)
        .give("crew.stalk_line.labor_hours", 96)
        .give("money.wages", 10 * (96 + 24 + 48 + 0.5 * (36 + 2)));
  }

  /** As above, and the cotton's two hands have no overtime where it is for stalks only. */
  @Test
  void overtimeMayBeForOneLine() {
    Figures.of(
            TestPlant.twoLines()
                .with("money.overtime", "{after: 15 h, pays: 1.5, for: [stalk_line]}"))
        .give("crew.stalk_line.overtime", 4 * 9)
        .give("crew.cotton_line.overtime", 0)
        .give("money.wages", 10 * (96 + 24 + 48 + 0.5 * 36));
  }

  /**
   * Monday's shift of four hands; those of Tuesday and Wednesday are worked, see {@code
   * RosteringTest}.
   */
  @Test
  void whoIsSentHomeIsNotPaid() {
    Figures.of(
            loads("yard.on_hand.stalk", "8 bales")
                .with("season.0.send_home", "{below: 10 bales, back_at: 20 bales}"))
        .give("crew.stalk_line.sent_home", 4 * 8)
        .give("crew.stalk_line.labor_hours", 4 * 2 * 8);
  }

  /** Loads come 25 h and 50 h after the first midnight, and two hands wait all of those days. */
  @Test
  void receivingIsPaidOnDaysWithAnArrival() {
    Figures.of(loads("deliveries.stalk.hands", "2"))
        .give("crew.stalk.receiving", 2 * 2 * 24)
        .give("crew.cotton.receiving", 0)
        .give("money.stalk_line.wages", 10 * (96 + 24 + 96));
  }

  private static TestPlant loads(String path, String value) {
    return TestPlant.twoLines()
        .with(
            "deliveries",
            "{stalk: {loads: {every: 25 h, bales: 12, from: 2027-03-01, to: 2027-03-03}}}")
        .with(path, value);
  }
}
