package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import hurdline.measure.State;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Every table of a run follows from its replications; record, page and terminal are its tables. */
class RunAuditTest extends AnswerAuditTest {
  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of("run", Plants.small(), dir.resolve("run"), "--replications", "40");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) {
    return Audit.ofRun();
  }

  @Override
  Map<String, Integer> least() {
    return Kinds.and(
        Kinds.ofReplications(40),
        Map.of(
            SummaryCheck.SUMMARY, 4_000,
            PeriodCheck.WEEKS, 100,
            PeriodCheck.MONTHS, 8,
            PeriodCheck.ORDER, 6_000,
            PeriodCheck.DEMAND, 48,
            RecordCheck.RECORD, 80_000,
            PageBook.PAGE, 600,
            TerminalCheck.TERMINAL, 10),
        Map.of(
            AdjustedCheck.ADJUSTED, 20,
            OrderCheck.ORDERS, 12,
            StoreCheck.STORES, 300,
            StoreCheck.LEVELS, 1_000,
            SentenceCheck.SENTENCES, 60));
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(SummaryCheck.SUMMARY, Control.inTable(Tables.SUMMARY, Columns.LOW_95)),
        arguments(SummaryCheck.SUMMARY, Control.inTable(Tables.SUMMARY, Columns.SD)),
        arguments(SummaryCheck.SUMMARY, Control.inTable(Tables.SUMMARY, Columns.P95)),
        arguments(
            AdjustedCheck.ADJUSTED, Control.inTable(Tables.ADJUSTED, Columns.ADJUSTED_ERROR, 1e-4)),
        arguments(OrderCheck.ORDERS, Control.inTable(Tables.ORDERS, "on_time_high_95", 1e-3)),
        arguments(OrderCheck.ORDERS, Control.inTable(Tables.ORDERS, "late_days", 1e-3)),
        arguments(StoreCheck.STORES, Control.ofMeasure(Measure.PRODUCT_LEFT.of("lint"))),
        arguments(StoreCheck.LEVELS, Control.inTable(Tables.STORE_LEVELS, Columns.MEAN, 100)),
        arguments(MoneyCheck.REVENUE, Control.ofMeasure(Measure.PRODUCT_STOCK_WORTH.of("lint"))),
        arguments(PeriodCheck.WEEKS, Control.inTable(Tables.WEEKS, Columns.MEAN)),
        arguments(PeriodCheck.MONTHS, Control.inTable(Tables.MONTHS, Columns.MEAN)),
        arguments(
            HoursCheck.STATES,
            Control.ofMeasure(Measure.MACHINE_HOURS.of("saw", State.STARVED.word()))),
        arguments(
            HoursCheck.CAUSES,
            Control.ofMeasure(Measure.LINE_HOURS_LIMITED_BY.of("stalk_line", "mill"))),
        arguments(
            HoursCheck.STOPS, Control.ofMeasure(Measure.MACHINE_STOP_HOURS.of("saw", "choke"))),
        arguments(
            HoursCheck.SCREENS,
            Control.ofMeasure(Measure.MACHINE_SCREEN_HOURS.of("mill", "coarse"))),
        arguments(HoursCheck.CALENDAR, Control.ofMeasure(Measure.CREW_CHANGEOVER.of("stalk_line"))),
        arguments(MassCheck.BALANCE, Control.ofMeasure(Measure.PRODUCT_MASS.dryOf("fiber"))),
        arguments(MassCheck.YARD, Control.ofMeasure(Measure.MASS_FED.of("stalk"))),
        arguments(MassCheck.LOSSES, Control.ofMeasure(Measure.YARD_PLACE_LOST.of("shed"), 1e-5)),
        arguments(
            MassCheck.SCREENS,
            Control.ofMeasure(Measure.MACHINE_SCREEN_MASS_IN.of("mill", "medium"))),
        arguments(
            MassCheck.RATIOS, Control.ofMeasure(Measure.LINE_TURNOUT.of("stalk_line", "fiber"))),
        arguments(
            EnergyCheck.CONSTANT, Control.ofMeasure(Measure.MACHINE_ENERGY.of("gin_fans"), 1e-5)),
        arguments(EnergyCheck.SUM, Control.ofMeasure(Measure.ENERGY_TOTAL.of())),
        arguments(MoneyCheck.REVENUE, Control.ofMeasure(Measure.PRODUCT_REVENUE.of("fiber"))),
        arguments(MoneyCheck.PACKAGES, Control.ofMeasure(Measure.MONEY_PACKAGES.of())),
        arguments(MoneyCheck.STOPS, Control.ofMeasure(Measure.MONEY_STOPS.of(), 1e-3)),
        arguments(
            MoneyCheck.WAGES, Control.ofMeasure(Measure.CREW_OVERTIME.of("stalk_line"), 1e-4)),
        arguments(MoneyCheck.MARGIN, Control.ofMeasure(Measure.CASH_TAX.of())),
        arguments(MoneyCheck.POWER, Control.ofMeasure(Measure.MONEY_ELECTRICITY.of())),
        arguments(
            MoneyCheck.STOCK, Control.ofMeasure(Measure.MONEY_LINE_CROP_COST.of("stalk_line"))),
        arguments(MoneyCheck.MARGIN, Control.ofMeasure(Measure.MONEY_MARGIN.of(), 1e-4)),
        arguments(MoneyCheck.RENT, Control.ofMeasure(Measure.MONEY_RENT.of())),
        arguments(RecordCheck.RECORD, Control.inTable(Tables.YARD_LEVELS, Columns.P50)),
        arguments(SentenceCheck.SENTENCES, Control.onTerminal("(?<=Up to )\\d+(?= bales)", "7777")),
        arguments(SentenceCheck.SENTENCES, Control.onTerminal("\\d+(?=(\\.\\d+)? stacks)", "7777")),
        arguments(
            SentenceCheck.SENTENCES, Control.inProse("(?<= had )\\d+(?=\\S* % moisture)", "77")),
        arguments(
            SentenceCheck.SENTENCES, Control.inProse("\\S+(?= USD was paid for fields)", "7")),
        arguments(
            MassCheck.LOSSES, Control.ofMeasure(Measure.YARD_PLACE_VALUE_PEAK.of("open"), 1e-6)),
        arguments(MassCheck.BALES, Control.ofMeasure(Measure.YARD_KEPT_APART.of("stalk"), 1e3)),
        arguments(
            MoneyCheck.REVENUE, Control.ofMeasure(Measure.PRODUCT_PURGE_PACKAGES.of("lint"), 0.2)),
        arguments(MoneyCheck.STOCK, Control.ofMeasure(Measure.MONEY_ADVANCE.of("stalk"), 1e-4)),
        arguments(
            MoneyCheck.MARGIN, Control.ofMeasure(Measure.MONEY_ADVANCE_INTEREST.of("stalk"), 1e-2)),
        arguments(MoneyCheck.STOCK, Control.ofMeasure(Measure.MONEY_COVERS.of(), 1e-4)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.ANSWER, 1)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.ENERGY_BY_MONTH, 1)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.STORES, 2)),
        arguments(
            TerminalCheck.TERMINAL, Control.onTerminal("(?<= )\\d+(\\.\\d ton +\\d)", "7777$1")));
  }
}
