package hurdline.audit;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * A season that goes on with something in its bin and its store: mass and money are counted with
 * it. It goes on from the first day, so that all else is as the plant file says.
 */
class RestAuditTest extends AnswerAuditTest {
  @Override
  WrittenAnswer answer(Path dir) throws IOException {
    Path records = Files.createDirectory(dir.resolve("records"));
    Files.writeString(
        records.resolve("shifts.csv"), "date,shift,from,to\n2027-06-14,day,06:00,14:30\n");
    Files.writeString(
        records.resolve("yard.csv"),
        """
        date,place,product,count,level,unit
        2027-01-01,hurd_bin,,,60,%
        2027-01-01,bale_room,fiber,41,,
        2027-01-01,bale_room,lint,120,,
        """);
    Files.writeString(
        records.resolve("records.yaml"), "records: 1\nfrom: 2027-01-01\nto: 2027-12-31\n");
    return WrittenAnswer.of(
        "run",
        Plants.small(),
        dir.resolve("rest"),
        "--as-of",
        "2027-01-01",
        "--records",
        records.toString(),
        "--replications",
        "40");
  }

  @Override
  Audit audit(WrittenAnswer answer, Path dir) {
    return Audit.ofRun();
  }

  @Override
  Map<String, Integer> least() {
    return new RunAuditTest().least();
  }

  @Override
  Stream<Arguments> faults() {
    return Stream.of(
        arguments(MassCheck.BALANCE, Control.ofMeasure(Measure.BIN_LEVEL_START.of("hurd_bin"))),
        arguments(StoreCheck.STORES, Control.ofMeasure(Measure.PRODUCT_STOCK_START.of("lint"))),
        arguments(
            MoneyCheck.REVENUE, Control.ofMeasure(Measure.PRODUCT_STOCK_WORTH_START.of("fiber"))),
        arguments(
            MoneyCheck.LINES, Control.ofMeasure(Measure.PRODUCT_STOCK_WORTH_START.of("lint"))));
  }
}
