package hurdline.chart.season;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.sample.SampleSeason;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PlanChartsTest {
  private static final SeasonAnswer ANSWER = SampleSeason.two();
  private static final PlanCharts FIGURES =
      new PlanCharts(ANSWER, new Wording(UnitSystem.METRIC, Locale.ROOT));

  private static Chart named(String name) {
    return named(name, FIGURES);
  }

  private static Chart named(String name, PlanCharts figures) {
    return figures.all().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void everyPlanHasItsYearAndItsMachines() {
    assertThat(FIGURES.all())
        .extracting(Chart::name)
        .containsExactly(
            "building",
            "year-base",
            "year-two_shifts",
            "ends",
            "machines-base",
            "machines-two_shifts",
            "margins",
            "energy",
            "peak");
  }

  @Test
  void aYearShowsTheCalendarAndAColumnForEachWeekOfWork() {
    Chart year = named("year-base");
    assertThat(year.svg())
        .contains(
            ">building<",
            ">stalk line<",
            ">changeover<",
            ">full height 130 producing hours a week<")
        .contains("rgb(230,159,0)");
    assertThat(year.alternative())
        .contains(
            "stalk line planned 2027-01-04 to 2027-09-24, ended 2027-09-24 (5th to 95th percentile 2027-09-14"
                + " to 2027-10-04); changeover planned 2027-09-27 to 2027-10-01;")
        .contains("stalk from week 1 to week 1, at most 39 h a week on the mill")
        .contains("seed cotton from week 41 to week 41, at most 130 h a week on the feeder");
    assertThat(year.table().head()).startsWith("machine, crop", "weeks 1–4 h").hasSize(14);
    assertThat(year.table().rows().get(0).subList(0, 3))
        .isEqualTo(List.of("feeder, stalk", "38", "0"));
  }

  /** Ended 30 days sooner than planned, so that the calendar's bar has an empty rest. */
  @Test
  void whatWasPlannedAndNotNeededIsNotPainted() {
    assertThat(named("year-two_shifts").alternative())
        .contains(
            "stalk line planned 2027-01-04 to 2027-09-24, ended 2027-08-25 (5th to 95th percentile");
    assertThat(named("year-two_shifts").svg()).contains(">planned, not needed<");
  }

  @Test
  void endsAreToldLineByLineWithTheirBandAndTheYearsThatFinished() {
    Chart ends = named("ends");
    assertThat(ends.svg())
        .contains(">stalk on the stalk line<", ">1 of 40 years<", ">31 of 40 years<");
    assertThat(ends.alternative())
        .contains(
            "stalk line, two shifts 2027-08-25 (5th to 95th percentile 2027-08-15 to 2027-09-04), planned to"
                + " 2027-09-24, finished in 31 of 40 years");
    assertThat(ends.table().head())
        .containsExactly(
            "line, plan",
            "earliest",
            "5 %",
            "median",
            "95 %",
            "latest",
            "planned",
            "finished in years",
            "years with a shift");
    assertThat(ends.table().rows())
        .containsExactly(
            List.of(
                "stalk line, the season as it stands",
                "2027-09-12",
                "2027-09-14",
                "2027-09-24",
                "2027-10-04",
                "2027-10-06",
                "2027-09-24",
                "1 of 40",
                "40"),
            List.of(
                "stalk line, two shifts",
                "2027-08-13",
                "2027-08-15",
                "2027-08-25",
                "2027-09-04",
                "2027-09-06",
                "2027-09-24",
                "31 of 40",
                "40"));
  }

  /** A reader of one order of dates must not meet another in a chart or its words. */
  @Test
  void datesAreInTheReadersOrderInEveryChart() {
    PlanCharts figures = new PlanCharts(ANSWER, new Wording(UnitSystem.METRIC, Locale.US));
    assertThat(figures.all())
        .hasSize(9)
        .allSatisfy(
            figure -> {
              assertThat(figure.svg()).doesNotContainPattern(">[^<]*\\d{4}-\\d\\d");
              assertThat(figure.alternative()).doesNotContainPattern("\\d{4}-\\d\\d");
              assertThat(figure.table().toString()).doesNotContainPattern("\\d{4}-\\d\\d");
            });
    assertThat(named("energy", figures).table().rows().get(0).get(0)).isEqualTo("Jan 2027");
    assertThat(named("ends", figures).alternative()).contains("planned to Sep 24, 2027");
  }

  /** The busiest week of all plans is the full height in each of them. */
  @Test
  void allPlansHaveOneScale() {
    assertThat(named("year-two_shifts").svg()).contains(">full height 130 producing hours a week<");
  }

  @Test
  void usesOfTheBuildingStandInATableThatAddsUp() {
    Chart.Grid table = named("building").table();
    assertThat(table.head())
        .containsExactly(
            "plan",
            "stalk line alone h",
            "cotton line alone h",
            "changeover h",
            "uncrewed h",
            "unused h");
    assertThat(table.rows().get(0))
        .containsExactly("the season as it stands", "2,080", "1,423", "240", "4,825", "120");
  }

  @Test
  void monthsAreToldPlanByPlanWithTheirBands() {
    assertThat(named("energy").table().rows().get(0))
        .containsExactly("2027-01", "30,000 (29,000 to 31,000)", "57,000 (29,000 to 31,000)");
  }
}
