package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Bales that are lifted to tables, two an hour by one loader, where four an hour could be fed: each
 * table is always waiting.
 */
class LiftsTest {
  private static Repeats two(String machines, String other, int onHand, String lifts) {
    TestPlant plant =
        TestPlant.oneLine()
            .shift("2027-03-01", "2027-03-03", "06:00", "13:30")
            .says(
                "crops",
                "{stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}, straw: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}}")
            .says("machines", "{one: {kind: bale-feeder, feed_table: 8 bales}%s}", machines)
            .says(
                "lines",
                "{first: {crop: stalk, feed: one, steps: {one: {rate: 2 t/h, to: tow}}}, second: %s}",
                other)
            .says(
                "season",
                """
                - {line: first, from: 2027-03-01, to: 2027-03-01, shifts: [always]}
                - {line: second, from: 2027-03-02, to: 2027-03-02, shifts: [always]}
                - {line: first, from: 2027-03-03, to: 2027-03-03, shifts: [always]}
                """)
            .says("resources", "{loader: {count: 1}}")
            .says(
                "yard",
                "{on_hand: {stalk: %d bales, straw: 40 bales}, places: {barn: {holds: 90 bales}}, lift: {%s}}",
                onHand,
                lifts);
    return new Repeats(plant.plant(), 1, 1);
  }

  private static final String OWN = ", other: {kind: bale-feeder, feed_table: 8 bales}";
  private static final String SAME_CROP =
      "{crop: stalk, feed: other, steps: {other: {rate: 2 t/h, to: tow}}}";
  private static final String SAME_FEEDER =
      "{crop: straw, feed: one, steps: {one: {rate: 2 t/h, to: tow}}}";
  private static final String BY_LOADER = "lasts: 1 h, needs: loader, bales: 2";

  /**
   * Seven lifts end by 13:00 and one is under way to 14:00; three more wait, for which six of the
   * eight bales left are promised. As the campaign ends they are wanted no longer, so the other
   * line has all eight on the second day.
   */
  @Test
  void liftsThatHaveNotBegunAreGivenUpAsTheCampaignEnds() {
    Repeats got = two(OWN, SAME_CROP, 24, BY_LOADER);
    assertThat(got.of("machine.one.mass_in")[0])
        .as("seven lifts, and the eighth on the third day")
        .isCloseTo(8, within(1e-9));
    assertThat(got.of("machine.other.mass_in")[0]).isCloseTo(4, within(1e-9));
    assertThat(got.of("intake.stalk.fed")[0]).isEqualTo(24);
    assertThat(got.of("line.first.hours.after_shift")[0])
        .as("the lift from 13:00")
        .isCloseTo(0.5, within(1e-9));
  }

  /**
   * Another line on the feeder: what lies on the table goes back and is fed first when the line
   * comes again. On the first day 14 bales are fed, the lift from 13:00 sets two down at 14:00; on
   * the second day the straw's seven lifts; on the third the two are lifted again.
   */
  @Test
  void whatAnotherLineFindsOnItsFeederGoesBack() {
    Repeats got = two("", SAME_FEEDER, 40, BY_LOADER);
    assertThat(got.of("intake.stalk.fed")[0]).isEqualTo(28);
    assertThat(got.of("intake.straw.fed")[0]).isEqualTo(14);
    assertThat(got.of("machine.one.mass_in")[0]).isCloseTo(21, within(1e-9));
    assertThat(got.of("resource.loader.wait.mean")[0]).isGreaterThan(0);
    assertThat(got.of("balance.residual")[0]).isLessThan(1e-9);
    assertThat(
            got.of("line.first.hours.limited_by.lift")[0]
                + got.of("line.second.hours.limited_by.lift")[0])
        .as("each shift of 7.5 h feeds 3.5 h")
        .isCloseTo(3 * 4, within(1e-9));
  }

  /**
   * Two tonnes an hour in all three shifts of 7.5 h, but the stalk has 45 bales, so 7.5 t for the
   * third day.
   */
  @Test
  void liftsThatTakeNoTimeLeaveNoGap() {
    Repeats got = two("", SAME_FEEDER, 45, "lasts: 0 min");
    assertThat(got.of("mass.straw.fed")[0]).isCloseTo(15, within(1e-9));
    assertThat(got.of("mass.stalk.fed")[0]).isCloseTo(22.5, within(1e-9));
  }
}
