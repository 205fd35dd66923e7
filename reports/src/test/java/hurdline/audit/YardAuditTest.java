package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * A yard that is sized: its peak, the sizes, what they cost, and the cheapest by a run of its own.
 */
class YardAuditTest extends AnswerAuditTest {
  private static final String REPLICATIONS = "5";

  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    return WrittenAnswer.of(
        "yard", Plants.small(), dir.resolve("yard"), "--replications", REPLICATIONS);
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) throws IOException {
    return Audit.ofYard(YardSizeCheck.runOfCheapest(answer, Plants.small(), dir, REPLICATIONS));
  }

  @Override
  Map<String, Integer> least() {
    return Kinds.and(
        Kinds.ofReplications(2 * 5),
        Map.of(
            SummaryCheck.SUMMARY, 8_000,
            YardSizeCheck.PEAKS, 57,
            YardSizeCheck.NEEDED, 8,
            YardSizeCheck.OVERFLOW, 20,
            YardSizeCheck.AREA, 8,
            YardSizeCheck.FIGURES, 8,
            YardSizeCheck.MONEY, 10,
            YardSizeCheck.CHEAPEST, 20,
            YardSizeCheck.LOADS, 20),
        Map.of(RecordCheck.RECORD, 20_000, PageBook.PAGE, 200, TerminalCheck.TERMINAL, 3));
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(YardSizeCheck.PEAKS, Control.inTable(Tables.PEAKS, Columns.VALUE)),
        arguments(YardSizeCheck.PEAKS, Control.inTable(Tables.PEAKS, Columns.HIGH_95)),
        arguments(YardSizeCheck.OVERFLOW, Control.inTable(Tables.YARD_SIZES, Columns.CHANCE)),
        arguments(
            YardSizeCheck.OVERFLOW, Control.inTable(Tables.YARD_SIZES, Columns.HIGH_95, 1e-5)),
        arguments(YardSizeCheck.AREA, Control.inTable(Tables.YARD_SIZES, Columns.AREA_M2)),
        arguments(YardSizeCheck.MONEY, Control.inTable(Tables.YARD_SIZES, Columns.GROUND)),
        arguments(
            YardSizeCheck.FIGURES,
            Control.ofMeasure(Measure.MASS_LOST_IN_YARD.dryOf("stalk"), 1e-2)),
        arguments(YardSizeCheck.CHEAPEST, Control.inTable(Tables.CHEAPEST, Columns.ABOVE, 1e-4)),
        arguments(YardSizeCheck.LOADS, Control.inTable(Tables.LOADS, Columns.DRY_T)),
        arguments(RecordCheck.RECORD, Control.inTable(Tables.YARD_SIZES, Columns.MONEY_LOW)),
        arguments(PageBook.PAGE, Control.onPage(PageNames.YARD_MONEY, 1)),
        arguments(TerminalCheck.TERMINAL, Control.onTerminal("\\d+( %  +\\d)", "77$1")));
  }
}
