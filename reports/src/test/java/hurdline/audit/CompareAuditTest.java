package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Differences, bottlenecks and service lives of a comparison follow from its replications. */
class CompareAuditTest extends AnswerAuditTest {
  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of(
        "compare",
        Plants.small(),
        dir.resolve("compare"),
        "--replications",
        "6",
        "--service-lives",
        "2",
        "--tornado=products.medium_hurd.price=20%,money.wage=20%",
        "--break-even",
        "options.bigger_mill.cost");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) {
    return Audit.ofComparison();
  }

  @Override
  Map<String, Integer> least() {
    return Kinds.and(
        Kinds.ofReplications(3 * 6),
        Map.of(
            SummaryCheck.SUMMARY, 12_000,
            PeriodCheck.MONTHS, 24,
            PeriodCheck.ORDER, 360,
            PeriodCheck.DEMAND, 144,
            DifferenceCheck.DIFFERENCES, 7_000,
            BottleneckCheck.SHARES, 150),
        Map.of(
            WorthCheck.CASH, 20,
            WorthCheck.LIVES, 16,
            WorthCheck.ALL_LIVES, 40,
            WorthCheck.SENSITIVITY, 8,
            WorthCheck.BREAK_EVEN, 2,
            RecordCheck.RECORD, 25_000,
            PageBook.PAGE, 600,
            TerminalCheck.TERMINAL, 20));
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(SummaryCheck.SUMMARY, Control.inTable(Tables.SUMMARY, Columns.HIGH_95)),
        arguments(
            DifferenceCheck.DIFFERENCES,
            Control.inTable(Tables.DIFFERENCES, Columns.DIFFERENCE, Measure.MONEY_MARGIN.of())),
        arguments(
            DifferenceCheck.DIFFERENCES,
            Control.inTable(Tables.DIFFERENCES, Columns.LOW_JOINT, Measure.MONEY_MARGIN.of())),
        arguments(
            DifferenceCheck.DIFFERENCES, Control.inTable(Tables.DIFFERENCES, Columns.NEEDED, 0.5)),
        arguments(
            DifferenceCheck.DIFFERENCES,
            Control.inTable(Tables.DIFFERENCES, Columns.VARIANCE_REMOVED, 1e-4)),
        arguments(
            DifferenceCheck.DIFFERENCES, Control.turned(Tables.DIFFERENCES, Columns.SIGNIFICANT)),
        arguments(BottleneckCheck.SHARES, Control.inTable(Tables.BOTTLENECKS, Columns.SHARE)),
        arguments(BottleneckCheck.SHARES, Control.inTable(Tables.BOTTLENECKS, Columns.SHARE_HIGH)),
        arguments(
            PeriodCheck.DEMAND,
            Control.inTable(Tables.MONTHS, Columns.P95, Measure.MONEY_DEMAND.of())),
        arguments(WorthCheck.LIVES, Control.inTable(Tables.SERVICE_LIVES, Columns.VALUE)),
        arguments(WorthCheck.ALL_LIVES, Control.inTable(Tables.PAYBACK, Columns.LOW_95)),
        arguments(WorthCheck.CASH, Control.inTable(Tables.CASH, Columns.MEAN)),
        arguments(WorthCheck.CASH, Control.inTable(Tables.AFTER_TAX, "tax")),
        arguments(WorthCheck.CASH, Control.inTable(Tables.AFTER_TAX, "left")),
        arguments(
            WorthCheck.SENSITIVITY, Control.inTable(Tables.TORNADO, Columns.NPV_AT_HIGH, 1e-4)),
        arguments(WorthCheck.BREAK_EVEN, Control.inTable(Tables.BREAK_EVEN, Columns.VALUE, 1e-4)),
        arguments(RecordCheck.RECORD, Control.inTable(Tables.PAYBACK, Columns.P50)),
        arguments(RecordCheck.RECORD, Control.inTable(Tables.SERVICE_LIVES, Columns.VALUE)),
        arguments(RecordCheck.RECORD, Control.inTable(Tables.TORNADO, Columns.NPV_AT_LOW)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.WORTH, 1)),
        arguments(
            PageBook.PAGE, Control.onPage(String.format(PageNames.DIFFERENCES, "Bigger mill"), 4)),
        arguments(TerminalCheck.TERMINAL, Control.onTerminal("\\d+( USD  +\\d)", "7777$1")));
  }
}
