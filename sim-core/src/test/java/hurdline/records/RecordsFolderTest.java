package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.plant.ProblemsException;
import hurdline.records.Account.Verdict;
import hurdline.records.StopRecord.Repair;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordsFolderTest {
  private static final String SHIFTS =
      """
      date,shift,from,to,rest from,rest to,hands,hours paid
      2026-03-02,day,06:00,14:30,10:00,10:30,6,51
      2026-03-03,day,06:00,14:30,10:00,10:30,6,51
      2026-03-04,day,06:00,14:30,10:00,10:30,6,51
      """;

  @TempDir private Path temp;
  private Folder folder;

  @BeforeEach
  void open() {
    folder = new Folder(temp);
  }

  @Test
  void headsAreReadInAnyOrderCaseAndWithUnits() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "stops.csv",
        "\uFEFFCause;DOWN;Minutes [min];Equipment\nchoke;02.03.2026 08:15;12,5;stalk_saw\n");
    StopRecord stop = folder.read().stops().get(0);
    assertThat(stop.key()).isEqualTo("stalk_saw.choke");
    assertThat(stop.endedS() - stop.beganS()).isEqualTo(12.5 * 60);
  }

  @Test
  void recordsYamlMapsForeignHeadsAndNames() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "störungen.csv",
        "Maschine,von,bis,Grund\nSäge,2026-03-02 08:15,2026-03-02 08:30,verstopft\n");
    folder.with(
        "records.yaml",
        """
        records: 1
        zone: Europe/Berlin
        files: {stops: {file: störungen.csv, columns: {machine: Maschine, began: von, ended: bis, reason: Grund}}}
        called: {machines: {Säge: stalk_saw}, reasons: {verstopft: choke}}
        """);
    StopRecord stop = folder.read().stops().get(0);
    assertThat(stop.key()).isEqualTo("stalk_saw.choke");
    assertThat(stop.beganS())
        .as("08:15 in Berlin is 07:15 UTC")
        .isEqualTo(java.time.Instant.parse("2026-03-02T07:15:00Z").getEpochSecond());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-03-02 08:15|2026-03-02T08:15",
        "2026/3/2 8:15|2026-03-02T08:15",
        "3/13/2026 8:15 PM|2026-03-13T20:15",
        "13/3/2026 8:15|2026-03-13T08:15",
        "13.3.2026 08:15|2026-03-13T08:15",
        "2026-03-02T08:15:30|2026-03-02T08:15:30",
        "12/31/2026 12:05 AM|2026-12-31T00:05"
      })
  void datesAreReadInTheirOrder(String cell, String meant) {
    DateReader reader = DateReader.of(List.of(cell), DateReader.Order.UNKNOWN);
    assertThat(reader.read(cell).orElseThrow().at(null))
        .isEqualTo(java.time.LocalDateTime.parse(meant));
  }

  @Test
  void theRowsDecideWhetherTheMonthStandsFirst() {
    assertThat(
            DateReader.of(
                    List.of("03/04/2026", "03/05/2026", "03/13/2026"), DateReader.Order.UNKNOWN)
                .order())
        .isEqualTo(DateReader.Order.MONTH_FIRST);
    assertThat(
            DateReader.of(
                    List.of("30/04/2026", "01/05/2026", "02/05/2026"), DateReader.Order.UNKNOWN)
                .order())
        .isEqualTo(DateReader.Order.DAY_FIRST);
    assertThat(
            DateReader.of(
                    List.of("11/04/2026", "12/04/2026", "01/05/2026"), DateReader.Order.UNKNOWN)
                .order())
        .as("rows follow each other in time")
        .isEqualTo(DateReader.Order.DAY_FIRST);
    DateReader unknown = DateReader.of(List.of("03/04/2026"), DateReader.Order.UNKNOWN);
    assertThat(unknown.read("03/04/2026")).isEmpty();
    assertThat(unknown.found()).contains("day or month first?");
  }

  @Test
  void aCommaMeansOneThingInAColumn() {
    assertThat(read("48,260", "48,260", "51100")).isEqualTo(48_260);
    assertThat(read("12,7", "12,7", "12.6")).isEqualTo(12.7);
    assertThat(read("1.234,5", "1.234,5", "17,25")).isEqualTo(1234.5);
    assertThat(read("1,234.5", "1,234.5", "17")).isEqualTo(1234.5);
    assertThat(read("12,345", "12,345", "12,7")).as("could be either").isNaN();
  }

  private static double read(String cell, String... column) {
    return NumberReader.of(List.of(column), false).read(cell).orElse(Double.NaN);
  }

  @Test
  void aStopOverMidnightWithTimesAloneEndsOnTheNextDay() {
    folder.with(
        "shifts.csv", "date,shift,from,to,line\n2026-10-05,gin_night,18:00,06:00,cotton_line\n");
    folder.with(
        "stops.csv", "date,machine,from,to,reason\n2026-10-05,feeder,23:50,00:10,cleaning\n");
    StopRecord stop = folder.read().stops().get(0);
    assertThat(stop.endedS() - stop.beganS()).isEqualTo(20 * 60);
  }

  @Test
  void aTakenRowIsMendedAsRecordsYamlSays() {
    String stops =
        "machine,began,ended,reason\nstalk_saw,2026-03-02 13:05,2026-03-02 01:20,choke\n";
    folder.with("shifts.csv", SHIFTS).with("stops.csv", stops);
    assertThat(folder.read().stops().get(0).repair()).isEqualTo(Repair.NO_END);
    folder.with("records.yaml", "records: 1\ntake: {stops.csv: {2: ended +12 h}}\n");
    StopRecord stop = folder.read().stops().get(0);
    assertThat(stop.repair()).isEqualTo(Repair.WHOLE);
    assertThat(stop.endedS() - stop.beganS()).isEqualTo(15 * 60);
  }

  @Test
  void aRepairBehindAnothersBeginsWhenThatOneEnds() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "stops.csv",
        """
        machine,began,ended,reason
        stalk_saw,2026-03-02 08:00,2026-03-02 09:00,saw_change
        stalk_saw,2026-03-02 08:30,2026-03-02 09:20,choke
        stalk_saw,2026-03-02 08:40,2026-03-02 08:50,choke
        """);
    Records records = folder.read();
    assertThat(records.stops().get(1).repairFromS() - records.stops().get(0).endedS()).isZero();
    assertThat(records.account().entries().get(2).verdict())
        .as("within a stop of the same reason")
        .isEqualTo(Verdict.JOINED);
  }

  @Test
  void theWaitForAMechanicIsTakenOutWhereTheLogHasIt() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "stops.csv",
        """
        machine,began,work began,ended,reason
        stalk_saw,2026-03-02 08:00,2026-03-02 08:25,2026-03-02 08:40,choke
        """);
    StopRecord stop = folder.read().stops().get(0);
    assertThat(stop.endedS() - stop.repairFromS()).isEqualTo(15 * 60);
    assertThat(stop.endedS() - stop.beganS()).isEqualTo(40 * 60);
  }

  @Test
  void aNameThatLeadsNowhereIsNotPassedOver() {
    folder.with("shifts.csv", SHIFTS);
    folder.with("records.yaml", "records: 1\nlogged_from: {stalk_saw.chok: 5 min}\n");
    assertThat(problems())
        .isEqualTo(
            "records.yaml: \"stalk_saw.chok\" under logged_from is no stop of the plant file or the"
                + " log; expected machine.stop, perhaps \"stalk_saw.choke\"");
    folder.with("records.yaml", "records: 1\ncalled: {machines: {saw: stalk_sav}}\n");
    assertThat(folder.read().cautions())
        .anyMatch(
            caution ->
                caution
                    .text()
                    .contains("\"stalk_sav\" under called is no machine of the plant file"));
  }

  @Test
  void aStopWhileNobodyWorksServesCalendarCountsOnly() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "stops.csv",
        "machine,began,ended,reason\nstalk_saw,2026-03-07 08:00,2026-03-07 09:00,choke\n");
    Records records = folder.read();
    assertThat(records.stops().get(0).onShift()).isFalse();
    assertThat(
            records.account().entries().stream()
                .filter(entry -> entry.file().equals("stops.csv"))
                .findFirst()
                .orElseThrow()
                .whatFor())
        .isEqualTo("calendar");
  }

  @Test
  void aWeightInTheOtherUnitIsSetAside() {
    folder.with(
        "tickets.csv",
        "ticket,crop,net,unit,bales\n"
            + "1,stalk,35580,lb,34\n"
            + "2,stalk,35660,lb,34\n"
            + "3,stalk,16180,lb,34\n"
            + "4,stalk,35400,lb,34\n");
    Records records = folder.read();
    assertThat(records.tickets()).hasSize(3);
    assertThat(records.account().entries().get(2).why()).contains("2.2 times off");
  }

  @Test
  void aMissingColumnIsNamedWithWhatWouldDo() {
    folder.with("stops.csv", "machine,began,ended,grund\nstalk_saw,2026-03-02 08:00,,choke\n");
    assertThat(problems())
        .isEqualTo(
            "stops.csv:1: no column is \"reason\"; expected a head \"reason\" (or cause, code,"
                + " fault), or \"columns: {reason: ITS HEAD}\" in records.yaml");
  }

  @Test
  void wrongWordsOfRecordsYamlAreToldWithTheirPlace() {
    folder.with("shifts.csv", SHIFTS);
    folder.with(
        "records.yaml",
        "records: 1\n"
            + "zone: Mars/Olympus\n"
            + "caled: {}\n"
            + "logged_from: {stalk_saw.choke: 5 kg}\n"
            + "files: {stop: {file: x.csv}}\n");
    assertThat(problems())
        .contains("records.yaml:2:7 zone: there is no such time zone")
        .contains(
            "records.yaml:3:1 caled: \"caled\" is no key here; expected a key, perhaps \"called\"")
        .contains("records.yaml:4:32 logged_from.stalk_saw.choke: \"5 kg\" has the wrong unit")
        .contains(
            "files.stop: \"stop\" is no kind of record; expected a kind of record, perhaps"
                + " \"stops\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "machine,began,reason\\n\"saw,2026-03-02 08:00,choke|a quotation mark is not closed",
        "|it holds no row",
        "machine,began,reason,began\\n|two columns are \"began\"",
        "a\\0b,c|it is a binary file"
      })
  void hostileFilesGiveALineAndNoAnswer(String text, String said) {
    folder.with("stops.csv", text == null ? "" : text.replace("\\n", "\n").replace("\\0", "\0"));
    assertThat(problems()).startsWith("stops.csv").contains(said);
  }

  @Test
  void aCellWithoutEndOrARowOfThousandsOfCellsIsRefused() {
    folder.with("stops.csv", "machine,began,reason\n" + "x".repeat(5_000) + ",1,2\n");
    assertThat(problems()).startsWith("stops.csv:2: a cell is longer than 2,000 characters");
    folder.with("stops.csv", "machine,began,reason\n" + ",".repeat(5_000) + "\n");
    assertThat(problems()).startsWith("stops.csv:2: the row has 5001 cells");
    folder.with("stops.csv", "maschine,käse\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problems()).startsWith("stops.csv: it is not text in UTF-8");
  }

  @Test
  void aFolderWithoutRecordsOrNoneAtAllIsRefused() {
    assertThat(problems()).contains("it holds no records");
    assertThatThrownBy(() -> RecordsFolder.read(temp.resolve("nowhere"), Folder.plant()))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("there is no such folder");
  }

  private String problems() {
    try {
      folder.read();
      return "none";
    } catch (ProblemsException e) {
      return e.lines().stream().collect(Collectors.joining("\n"));
    }
  }
}
