package hurdline.chart;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SeasonAnswer;
import hurdline.sample.SampleSeason;
import hurdline.words.UnitSystem;
import hurdline.words.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PlanFiguresTest {
  private static final SeasonAnswer ANSWER = SampleSeason.two();
  private static final PlanFigures FIGURES =
      new PlanFigures(ANSWER, new Wording(UnitSystem.METRIC, Locale.ROOT));

  private static Figure named(String name) {
    return FIGURES.all().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void everyPlanHasItsYearAndItsMachines() {
    assertThat(FIGURES.all())
        .extracting(Figure::name)
        .containsExactly(
            "building", "year-base", "year-two_shifts", "machines-base", "machines-two_shifts",
            "margins", "energy", "peak");
  }

  @Test
  void aYearShowsTheCalendarAndAColumnForEachWeekOfWork() {
    Figure year = named("year-base");
    assertThat(year.svg())
        .contains(">building<", ">stalk_line<", ">changeover<", ">full height 130 h a week at work<")
        .contains("url(#year-base.rising");
    assertThat(year.alternative())
        .contains("changeover 2027-09-27 to 2027-10-01")
        .contains("stalk from week 1 to week 1, at most 39 h a week on mill")
        .contains("seed_cotton from week 41 to week 41, at most 130 h a week on feeder");
    assertThat(year.table().head()).startsWith("machine, crop", "weeks 1–4 h").hasSize(14);
    assertThat(year.table().rows().get(0).subList(0, 3)).isEqualTo(List.of("feeder, stalk", "38", "0"));
  }

  /** The busiest week of all plans is the full height in each of them. */
  @Test
  void allPlansHaveOneScale() {
    assertThat(named("year-two_shifts").svg()).contains(">full height 130 h a week at work<");
  }

  @Test
  void usesOfTheBuildingStandInATableThatAddsUp() {
    Figure.Grid table = named("building").table();
    assertThat(table.head())
        .containsExactly(
            "plan", "stalk_line alone h", "cotton_line alone h", "changeover h", "uncrewed h", "unused h");
    assertThat(table.rows().get(0)).containsExactly("base", "2,080", "1,423", "240", "4,825", "120");
  }

  @Test
  void monthsAreToldPlanByPlanWithTheirBands() {
    assertThat(named("energy").table().rows().get(0))
        .containsExactly("2027-01", "30,000 (29,000 to 31,000)", "57,000 (29,000 to 31,000)");
  }
}
