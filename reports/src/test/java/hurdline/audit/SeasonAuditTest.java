package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.measure.Use;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Season plans: hours by crop, the building, finished crops, changeovers, and every pair of plans.
 */
class SeasonAuditTest extends AnswerAuditTest {
  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of(
        "season", Plants.small(), dir.resolve("season"), "--replications", "4", "--changeovers");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) throws IOException {
    return Audit.ofSeason(ChangeoverCheck.runWithout(answer, Plants.small(), dir, "4"));
  }

  @Override
  Map<String, Integer> least() {
    return Kinds.and(
        Kinds.ofReplications(3 * 4),
        Map.of(
            SummaryCheck.SUMMARY, 20_000,
            SummaryCheck.CHANCES, 18,
            SummaryCheck.PLANS, 4_500,
            PeriodCheck.MONTHS, 24,
            PeriodCheck.ORDER, 360,
            PeriodCheck.DEMAND, 144,
            DifferenceCheck.DIFFERENCES, 11_000,
            HoursCheck.CROPS, 1_000,
            HoursCheck.BUILDING, 24,
            HoursCheck.RATIOS, 600),
        Map.of(
            PlanCheck.WEEKS, 70,
            PlanCheck.FINISHED, 40,
            PlanCheck.FORGONE, 24,
            PlanCheck.CHANGEOVERS, 10,
            PlanCheck.VERDICT, 1,
            ChangeoverCheck.WORTH, 3,
            RecordCheck.RECORD, 45_000,
            PageBook.PAGE, 1_700,
            TerminalCheck.TERMINAL, 20));
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(
            SummaryCheck.CHANCES,
            Control.inTable(Tables.SUMMARY, Columns.LOW_95, Measure.SEASON_FINISHED.of())),
        arguments(SummaryCheck.PLANS, Control.inTable(Tables.PLANS, Columns.MEAN)),
        arguments(
            DifferenceCheck.DIFFERENCES,
            Control.inTable(Tables.DIFFERENCES, Columns.HIGH_95, Measure.MASS_FED.of("stalk"))),
        arguments(
            HoursCheck.CROPS,
            Control.ofMeasure(
                Measure.MACHINE_CROP_HOURS.of("feeder", "stalk", State.FULL_RATE.word()))),
        arguments(
            HoursCheck.CROPS,
            Control.ofMeasure(Measure.MACHINE_CROP_MASS_IN.of("feeder", "seed_cotton"))),
        arguments(
            HoursCheck.BUILDING, Control.ofMeasure(Measure.BUILDING_HOURS.of(Use.STAFFED.word()))),
        arguments(
            HoursCheck.RATIOS,
            Control.ofMeasure(Measure.MACHINE_KPI.of("saw", Kpi.AVAILABILITY.word()))),
        arguments(PlanCheck.WEEKS, Control.inTable(Tables.MACHINE_WEEKS, Columns.HOURS)),
        arguments(PlanCheck.WEEKS, Control.inTable(Tables.MACHINE_WEEKS, Columns.WORKED_T)),
        arguments(
            PlanCheck.FINISHED, Control.ofMeasure(Measure.SEASON_LINE_FINISHED.of("stalk_line"))),
        arguments(PlanCheck.FINISHED, Control.ofMeasure(Measure.SEASON_ENDED.of("stalk_line"))),
        arguments(
            PlanCheck.FORGONE, Control.inLastPlan(Measure.SEASON_MARGIN_FORGONE.of("stalk_line"))),
        arguments(PlanCheck.CHANGEOVERS, Control.turned(Tables.CHANGEOVERS, Columns.SIGNIFICANT)),
        arguments(ChangeoverCheck.WORTH, Control.inTable(Tables.CHANGEOVERS, Columns.WORTH)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.CREWS, 1)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.PLAN_AGAINST_PLAN, 2)),
        arguments(TerminalCheck.TERMINAL, Control.onTerminal("\\d+( ton  +\\d)", "7777$1")));
  }
}
