package hurdline.compiled;

import static hurdline.compiled.Sketch.D;
import static hurdline.compiled.Sketch.H;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Bins that keep hours of their own, worked out by hand. Day 0 is Monday, March 1. */
class OwnHoursTest {
  private static Sketch plant() {
    return new Sketch(14).shift("day", "", 6, 14).shift("night", "", 22, 6);
  }

  private static BinHours own(Sketch sketch) {
    return sketch.roster().ownHours("a", "bin").orElseThrow();
  }

  @Test
  void shiftsAndDatesLeftOutAreThoseOfTheCampaigns() {
    BinHours own =
        own(
            plant()
                .campaign("a", 1, 2, "day")
                .campaign("a", 5, 5, "night")
                .ownHours("a", "bin", 0, 0));
    assertThat(own.hours())
        .isEqualTo(
            TimeWindows.of(6 * H, 14 * H, D + 6 * H, D + 14 * H, 4 * D + 22 * H, 5 * D + 6 * H));
    assertThat(own.owned()).isEqualTo(TimeWindows.of(0, 2 * D, 4 * D, 5 * D + 6 * H));
  }

  @Test
  void itsOwnShiftsOnTheCampaignsDates() {
    BinHours own = own(plant().campaign("a", 2, 3, "day").ownHours("a", "bin", 0, 0, "night"));
    assertThat(own.hours())
        .isEqualTo(TimeWindows.of(D + 22 * H, 2 * D + 6 * H, 2 * D + 22 * H, 3 * D + 6 * H));
    assertThat(own.owned()).isEqualTo(TimeWindows.of(D, 3 * D + 6 * H));
    assertThat(own.shifts()).extracting(PaidShift::shift).containsExactly("night", "night");
  }

  @Test
  void itsOwnDatesReachBeyondTheCampaign() {
    BinHours own = own(plant().campaign("a", 2, 3, "day").ownHours("a", "bin", 1, 5, "day"));
    assertThat(own.shifts()).hasSize(5);
    assertThat(own.owned()).isEqualTo(TimeWindows.of(0, 5 * D));
    assertThat(own.shifts().get(1))
        .as("the campaign's shift is the same value, so that it is paid once")
        .isEqualTo(plant().campaign("a", 2, 3, "day").roster().campaigns().get(0).shifts().get(0));
  }

  @Test
  void oneDateLeftOutIsTheFirstOrLastOfTheLinesCampaigns() {
    Sketch two = plant().campaign("a", 2, 3, "day").campaign("a", 6, 7, "day");
    assertThat(own(two.ownHours("a", "bin", 0, 9, "day")).owned())
        .isEqualTo(TimeWindows.of(D, 9 * D));
    Sketch other = plant().campaign("a", 2, 3, "day").campaign("a", 6, 7, "day");
    assertThat(own(other.ownHours("a", "bin", 1, 0, "day")).owned())
        .isEqualTo(TimeWindows.of(0, 7 * D));
  }

  @Test
  void datesOutsideEveryCampaignTakeTheShiftsOfTheOneBefore() {
    BinHours own =
        own(
            plant()
                .campaign("a", 2, 2, "day")
                .campaign("a", 4, 4, "night")
                .ownHours("a", "bin", 1, 5));
    assertThat(own.shifts())
        .extracting(PaidShift::shift)
        .containsExactly("day", "day", "day", "night", "night");
  }

  @Test
  void noOwnShiftStartsInAChangeoverOfItsLineAndNoHourLiesInIt() {
    BinHours own =
        own(
            plant()
                .campaign("a", 1, 2, "day")
                .changeover(2, 1)
                .campaign("b", 5, 6, "day")
                .ownHours("a", "bin", 1, 6, "day", "night"));
    assertThat(own.shifts()).extracting(PaidShift::day).containsExactly(0, 0, 1, 1, 4, 4, 5, 5);
    assertThat(own.hours().lengthS(2 * D, 4 * D))
        .as("the night of day 1 is broken off at midnight")
        .isZero();
    assertThat(own.hours().in(2 * D - 1)).isTrue();
  }

  @Test
  void aCampaignThatAChangeoverDelaysDelaysTheHoursThatFollowIt() {
    BinHours own =
        own(
            plant()
                .campaign("b", 1, 2, "day")
                .changeover(2, 1)
                .campaign("a", 3, 6, "day")
                .ownHours("a", "bin", 0, 0, "day"));
    assertThat(own.shifts()).extracting(PaidShift::day).containsExactly(4, 5);
    assertThat(own.owned()).isEqualTo(TimeWindows.of(4 * D, 6 * D));
  }

  @Test
  void aLineWithoutCampaignsNeedsBothDates() {
    assertThat(own(plant().ownHours("a", "bin", 2, 3, "day")).hours().lengthS()).isEqualTo(16 * H);
    assertThat(own(plant().ownHours("a", "bin", 2, 0, "day")).hours()).isEqualTo(TimeWindows.NONE);
    assertThat(plant().roster().ownHours("a", "bin")).isEmpty();
  }
}
