package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * What-ifs side by side: differences, bottlenecks and the ranked table follow from the
 * replications.
 */
class WhatIfAuditTest extends AnswerAuditTest {
  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of(
        "compare",
        Plants.small(),
        dir.resolve("what-ifs"),
        "--replications",
        "4",
        "--what-if",
        "money.wage=x1.2",
        "--what-if",
        "money.overhead=x0.5",
        "--what-if",
        "season.0.to=-2w",
        "--what-if",
        "money.wage=x0.9; season.0.to=-1w");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) {
    return Audit.ofComparison();
  }

  @Override
  Map<String, Integer> least() {
    return Kinds.and(
        Kinds.ofReplications(5 * 4),
        Map.of(
            SummaryCheck.SUMMARY, 12_000,
            PeriodCheck.MONTHS, 24,
            PeriodCheck.ORDER, 360,
            PeriodCheck.DEMAND, 100,
            DifferenceCheck.DIFFERENCES, 7_000,
            BottleneckCheck.SHARES, 150),
        Map.of(
            RecordCheck.RECORD, 20_000,
            PageBook.PAGE, 400,
            TerminalCheck.TERMINAL, 20));
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(
            DifferenceCheck.DIFFERENCES, Control.inTable(Tables.DIFFERENCES, Columns.LOW_JOINT)),
        arguments(
            PeriodCheck.DEMAND,
            Control.inTable(Tables.MONTHS, Columns.P95, Measure.MONEY_DEMAND.of())),
        arguments(PageBook.PAGE, Control.onPage(PageNames.RANKED, 1)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.RANKED, 5)));
  }
}
