package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.Measure;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.Interval;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The shipped example: a yard of 4,200 bales, a bin of 9 t, a calendar of 362 days. */
class MeasureBoundsTest {
  private static final CompiledPlant STAGE =
      CompiledPlant.of(Studied.source(Studied.EXAMPLE).variants().with());

  private static Interval cut(Measure measure, String of, double... values) {
    ReplicationResults figures = new ReplicationResults();
    Outcome.Column column = new Outcome.Column(measure.of(of), measure, "stalk");
    for (double value : values) {
      figures.add(List.of(column), new double[] {value});
    }
    return new MeasureBounds(STAGE.plant(), figures).cut(column, Summary.of(values));
  }

  private static Interval cut(Measure measure, double... values) {
    Outcome.Column column = new Outcome.Column(measure.of(), measure, "");
    return new MeasureBounds(STAGE.plant(), new ReplicationResults())
        .cut(column, Summary.of(values));
  }

  /** Mean 4,190, s 10, t of 2 degrees of freedom 4.303: 4,165.2 to 4,214.8. */
  @Test
  void aPeakIsNotSaidToBeAboveWhatTheYardHolds() {
    Interval peak = cut(Measure.YARD_PEAK, "stalk", 9180, 9190, 9200);
    assertThat(peak.low()).isBetween(9165.0, 9165.3);
    assertThat(peak.high()).isEqualTo(9200);
  }

  @Test
  void aBoundThatSomeReplicationHasPassedIsNone() {
    assertThat(cut(Measure.YARD_PEAK, "stalk", 9180, 9190, 9201).high()).isGreaterThan(9201);
    assertThat(cut(Measure.MASS_FED, "stalk", -1, 0, 5).low()).isLessThan(-1);
  }

  @Test
  void massesHoursAndCountsEndAtNothing() {
    assertThat(cut(Measure.MASS_FED, "stalk", 0, 0, 5).low()).isZero();
    assertThat(cut(Measure.MACHINE_SCREEN_CHANGES, "mill", 0, 0, 5).low()).isZero();
    Interval hours = cut(Measure.BIN_HOURS_FULL, "hurd_bin", 0, 8000, 8688);
    assertThat(hours).isEqualTo(new Interval(0, 24 * 362));
  }

  @Test
  void aHandCountedTwiceMayWorkMoreHoursThanTheCalendarHas() {
    assertThat(cut(Measure.CREW_LABOR_HOURS, "stalk_line", 0, 8000, 8688).high())
        .isGreaterThan(24 * 362);
  }

  @Test
  void whatIsPaidOneWayEndsAtNothingAndAMarginDoesNot() {
    assertThat(cut(Measure.MONEY_WAGES, 0, 0, 5).low()).isZero();
    assertThat(cut(Measure.MONEY_MARGIN, 0, 0, 5).low()).isNegative();
    assertThat(cut(Measure.MONEY_REVENUE, 0, 0, 5).low()).as("a price may be below 0").isNegative();
  }

  @Test
  void aPartOfOneIsAtMostOneAndARatioIsNot() {
    assertThat(cut(Measure.SEASON_FINISHED, 1, 1, 0).high()).isEqualTo(1);
    assertThat(cut(Measure.MASS_DRAWN_OVER_MEAN, "stalk", 0.8, 0.9, 0.99).high()).isGreaterThan(1);
  }

  /**
   * What is left over would have earned the line's margin a bale: no less than nothing if that
   * never is.
   */
  @Test
  void cropLeftOverIsWorthNoLessThanNothingWhereItsLineAlwaysEarns() {
    assertThat(notEarned(5).low()).isZero();
    assertThat(notEarned(-1).low()).isNegative();
  }

  private static Interval notEarned(double leastMargin) {
    ReplicationResults figures = new ReplicationResults();
    List<Outcome.Column> columns =
        List.of(
            new Outcome.Column(
                "season.stalk_line.margin_forgone", Measure.SEASON_MARGIN_FORGONE, ""),
            new Outcome.Column("money.stalk_line.margin", Measure.MONEY_LINE_MARGIN, ""));
    figures.add(columns, new double[] {0, 9});
    figures.add(columns, new double[] {0, leastMargin});
    figures.add(columns, new double[] {50, 7});
    return new MeasureBounds(STAGE.plant(), figures)
        .cut(columns.get(0), Summary.of(figures.series("season.stalk_line.margin_forgone")));
  }

  @Test
  void aBinIsNotSaidToHoldMoreThanItHolds() {
    Interval peak = cut(Measure.BIN_LEVEL_PEAK, "hurd_bin", 3, 8, 9);
    assertThat(peak.low()).isZero();
    assertThat(peak.high()).isEqualTo(9);
  }
}
