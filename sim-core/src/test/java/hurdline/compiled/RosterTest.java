package hurdline.compiled;

import static hurdline.compiled.Sketch.D;
import static hurdline.compiled.Sketch.H;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Campaigns on the calendar, each worked out by hand. Day 0 is Monday, March 1. */
class RosterTest {
  private static final String WEEKDAYS = "Mon Tue Wed Thu Fri";

  @Test
  void aDayShiftIsWorkedLessItsRestAndPaidWhole() {
    CampaignHours campaign =
        new Sketch(2)
            .shift("day", "", 6, 14.5, 10, 0.5)
            .campaign("stalk_line", 1, 2, "day")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours())
        .isEqualTo(
            TimeWindows.of(
                6 * H,
                10 * H,
                10.5 * H,
                14.5 * H,
                D + 6 * H,
                D + 10 * H,
                D + 10.5 * H,
                D + 14.5 * H));
    assertThat(campaign.shifts())
        .containsExactly(
            new PaidShift("stalk_line", "day", 0, 6 * H, 14.5 * H),
            new PaidShift("stalk_line", "day", 1, D + 6 * H, D + 14.5 * H));
    assertThat(campaign.beginS()).isZero();
    assertThat(campaign.untilS()).isEqualTo(2 * D);
  }

  /**
   * Nights of Mon 1 and Mon 8; Wed 3 worked too, Wed 10 closed, Tue 9 closed though the night of
   * Mon 8 runs into it.
   */
  @Test
  void aNightBelongsToTheDayOnWhichItStarts() {
    CampaignHours campaign =
        new Sketch(14)
            .shift("night", "Mon Wed", 22, 6, 2, 0.5)
            .closed(9)
            .closed(10)
            .campaign("stalk_line", 1, 14, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.shifts()).extracting(PaidShift::day).containsExactly(0, 2, 7);
    assertThat(campaign.hours().lengthS()).isEqualTo(22.5 * H);
    assertThat(campaign.hours().fromS(0)).isEqualTo(22 * H);
    assertThat(campaign.hours().toS(0))
        .as("the rest at 02:00 lies on the next date")
        .isEqualTo(D + 2 * H);
    assertThat(campaign.hours().fromS(1)).isEqualTo(D + 2.5 * H);
    assertThat(paidS(campaign.shifts())).isEqualTo(24 * H);
  }

  @Test
  void aRestMayBeginBeforeMidnightAndRunPastIt() {
    CampaignHours campaign =
        new Sketch(3)
            .shift("night", "Mon", 18, 6, 23.75, 0.5)
            .campaign("l", 1, 1, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours()).isEqualTo(TimeWindows.of(18 * H, 23.75 * H, 24.25 * H, 30 * H));
  }

  @Test
  void aRestAtMidnightLiesOnTheNextDate() {
    CampaignHours campaign =
        new Sketch(3)
            .shift("night", "Mon", 18, 6, 0, 0.5)
            .campaign("l", 1, 1, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours()).isEqualTo(TimeWindows.of(18 * H, 24 * H, 24.5 * H, 30 * H));
  }

  @Test
  void aShiftMayEndAtMidnightAndShiftsThatTouchMakeOneStretchOfHours() {
    CampaignHours campaign =
        new Sketch(3)
            .shift("late", "", 16, 24)
            .shift("early", "", 0, 8)
            .campaign("l", 1, 2, "late", "early")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours())
        .isEqualTo(TimeWindows.of(0, 8 * H, 16 * H, 32 * H, 40 * H, 48 * H));
    assertThat(campaign.shifts())
        .extracting(PaidShift::shift)
        .containsExactly("early", "late", "early", "late");
    assertThat(campaign.untilS()).isEqualTo(2 * D);
  }

  /** A shift from 06:00 to 06:00 lasts a day: its end is at its start. */
  @Test
  void aShiftThatEndsWhereItStartsLastsADay() {
    CampaignHours campaign =
        new Sketch(3)
            .shift("round", "Mon", 6, 6)
            .campaign("l", 1, 1, "round")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours()).isEqualTo(TimeWindows.of(6 * H, 30 * H));
  }

  @Test
  void theHorizonCutsTheLastShiftAndItsPay() {
    CampaignHours campaign =
        new Sketch(2)
            .shift("night", "", 18, 6, 0, 0.5)
            .campaign("l", 1, 2, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours())
        .isEqualTo(TimeWindows.of(18 * H, 24 * H, 24.5 * H, 30 * H, 42 * H, 48 * H));
    assertThat(paidS(campaign.shifts())).isEqualTo(18 * H);
    assertThat(campaign.untilS()).isEqualTo(2 * D);
  }

  @Test
  void aShiftOfTheDayBeforeTheHorizonDoesNotExist() {
    CampaignHours campaign =
        new Sketch(3)
            .from(2)
            .shift("night", "", 18, 6)
            .campaign("l", 2, 2, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.hours()).isEqualTo(TimeWindows.of(18 * H, 30 * H));
  }

  @Test
  void aCampaignKeepsItsMachinesToTheEndOfAShiftThatRunsPastItsLastDate() {
    CampaignHours campaign =
        new Sketch(9)
            .shift("night", "", 22, 6)
            .campaign("l", 1, 2, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(campaign.untilS()).isEqualTo(2 * D + 6 * H);
    CampaignHours idleEnd =
        new Sketch(9)
            .shift("night", "Mon", 22, 6)
            .campaign("l", 1, 2, "night")
            .roster()
            .campaigns()
            .get(0);
    assertThat(idleEnd.untilS()).isEqualTo(2 * D);
  }

  /**
   * The case changeover_late: Fri 5 is closed, so Mon 8 and Tue 9; the cotton of Mon 8 begins on
   * Wed 10.
   */
  @Test
  void aChangeoverTakesTheDaysThatTheCampaignBeforeItWouldHaveWorked() {
    Roster roster =
        new Sketch(14)
            .shift("day", WEEKDAYS, 6, 14.5, 10, 0.5)
            .shift("swing", "Mon Tue Wed Thu", 14.5, 22.5)
            .closed(5)
            .campaign("stalk_line", 1, 4, "swing", "day")
            .changeover(2, 6)
            .campaign("cotton_line", 8, 12, "day")
            .roster();
    ChangeoverHours changeover = roster.changeovers().get(0);
    assertThat(changeover.fromS()).isEqualTo(7 * D);
    assertThat(changeover.toS()).isEqualTo(9 * D);
    assertThat(changeover.paidS()).isEqualTo(6 * 2 * 8.5 * H);
    assertThat(changeover.before()).isZero();
    assertThat(changeover.after()).hasValue(1);
    CampaignHours cotton = roster.campaigns().get(1);
    assertThat(cotton.plannedS()).isEqualTo(7 * D);
    assertThat(cotton.beginS()).isEqualTo(9 * D);
    assertThat(cotton.shifts()).extracting(PaidShift::day).containsExactly(9, 10, 11);
    assertThat(cotton.hours().lengthS()).isEqualTo(24 * H);
    assertThat(roster.campaigns().get(0).hours().lengthS()).isEqualTo(64 * H);
  }

  @Test
  void aChangeoverWaitsForTheEndOfAShiftThatRunsIntoIt() {
    ChangeoverHours changeover =
        new Sketch(9)
            .shift("night", "", 22, 6)
            .campaign("a", 1, 2, "night")
            .changeover(1, 3)
            .roster()
            .changeovers()
            .get(0);
    assertThat(changeover.fromS()).isEqualTo(2 * D + 6 * H);
    assertThat(changeover.toS()).isEqualTo(3 * D);
    assertThat(changeover.paidS()).isEqualTo(3 * 8 * H);
    assertThat(changeover.after()).isEmpty();
  }

  @Test
  void aSecondChangeoverFollowsTheFirst() {
    Roster roster =
        new Sketch(14)
            .shift("day", WEEKDAYS, 6, 14)
            .campaign("a", 1, 4, "day")
            .changeover(1, 1)
            .changeover(2, 1)
            .campaign("b", 5, 12, "day")
            .roster();
    assertThat(roster.changeovers())
        .extracting(ChangeoverHours::fromS)
        .containsExactly(4 * D, 7 * D);
    assertThat(roster.changeovers()).extracting(ChangeoverHours::toS).containsExactly(5 * D, 9 * D);
    assertThat(roster.campaigns().get(1).beginS()).isEqualTo(9 * D);
  }

  @Test
  void theHorizonCutsAChangeover() {
    Roster roster =
        new Sketch(6)
            .shift("day", WEEKDAYS, 6, 14)
            .campaign("a", 1, 4, "day")
            .changeover(3, 2)
            .roster();
    assertThat(roster.changeovers().get(0).fromS()).isEqualTo(4 * D);
    assertThat(roster.changeovers().get(0).toS()).isEqualTo(6 * D);
    assertThat(roster.changeovers().get(0).paidS()).as("Friday only").isEqualTo(2 * 8 * H);
    Roster gone =
        new Sketch(6)
            .shift("day", WEEKDAYS, 6, 14)
            .campaign("a", 1, 5, "day")
            .changeover(1, 2)
            .roster();
    assertThat(gone.changeovers().get(0).fromS()).isEqualTo(6 * D);
    assertThat(gone.changeovers().get(0).toS()).isEqualTo(6 * D);
    assertThat(gone.changeovers().get(0).paidS()).isZero();
  }

  @Test
  void aChangeoverThatEatsACampaignLeavesItNothing() {
    CampaignHours eaten =
        new Sketch(14)
            .shift("day", WEEKDAYS, 6, 14)
            .campaign("a", 1, 2, "day")
            .changeover(3, 1)
            .campaign("b", 3, 4, "day")
            .roster()
            .campaigns()
            .get(1);
    assertThat(eaten.beginS()).isEqualTo(5 * D);
    assertThat(eaten.untilS()).isEqualTo(5 * D);
    assertThat(eaten.hours()).isEqualTo(TimeWindows.NONE);
    assertThat(eaten.shifts()).isEmpty();
  }

  /** The case two_campaigns: three days of 8 h, and three more a week later. */
  @Test
  void campaignsOfOneLineAreCounted() {
    Roster roster =
        new Sketch(14)
            .shift("day", WEEKDAYS, 6, 14)
            .campaign("a", 1, 3, "day")
            .campaign("b", 4, 5, "day")
            .campaign("a", 8, 10, "day")
            .roster();
    assertThat(roster.campaigns()).extracting(CampaignHours::ordinal).containsExactly(1, 1, 2);
    assertThat(roster.campaigns().get(2).hours().fromS(0)).isEqualTo(7 * D + 6 * H);
    assertThat(roster.campaigns().get(2).hours().lengthS()).isEqualTo(24 * H);
  }

  @Test
  void aChangeoverBeforeAnyCampaignIsRefused() {
    assertThatThrownBy(() -> new Sketch(3).changeover(1, 1).roster())
        .hasMessage("season entry 0 is a changeover; expected a campaign before it");
  }

  static double paidS(List<PaidShift> shifts) {
    return shifts.stream().mapToDouble(shift -> shift.toS() - shift.fromS()).sum();
  }
}
