package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.records.Account.Entry;
import hurdline.records.Account.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The dirt of two made-up seasons, the one that is shipped and one of another plant, found by its
 * key: for every row that was made dirty the key says how, and the reader must come to the verdict
 * that RECORDS.md gives for that kind. What is written clean must not be set aside.
 */
class SeasonDirtTest {
  /** A season with the key to its dirt. */
  private enum Season {
    OF_ANOTHER_PLANT(Folder.season(), "season-key.csv", 212),
    SHIPPED(Folder.shipped(), "shipped-key.csv", 195);

    private final Records records;
    private final String key;
    private final int dirtyRows;

    Season(Records records, String key, int dirtyRows) {
      this.records = records;
      this.key = key;
      this.dirtyRows = dirtyRows;
    }
  }

  private static final Records SEASON = Season.OF_ANOTHER_PLANT.records;

  /** Kind of dirt by file: verdict and words of the reason. */
  private static final Map<String, Expected> RULES = new LinkedHashMap<>();

  private record Expected(Verdict verdict, String words) {}

  static {
    rule("stops.csv no end", Verdict.USED, "no end");
    rule("stops.csv am pm", Verdict.USED, "before it began .*\\+12 h\\?");
    rule("stops.csv zero", Verdict.USED, "no length");
    rule("stops.csv day month", Verdict.SET_ASIDE, "is far from the rows around it: .*\\?");
    rule("stops.csv twin", Verdict.SET_ASIDE, "same as line");
    rule("stops.csv overlap", Verdict.JOINED, "overlaps line");
    rule("stops.csv us date", Verdict.USED, "");
    rule("stops.csv name", Verdict.USED, "");
    rule("stops.csv reason", Verdict.USED, "");
    rule("stops.csv unknown machine", Verdict.SET_ASIDE, "is no machine");
    rule("stops.csv all machines", Verdict.SET_ASIDE, "stops all machines");
    rule("stops.csv no such date", Verdict.SET_ASIDE, "no such date");
    rule("stops.csv no machine", Verdict.SET_ASIDE, "no machine");
    rule("stops.csv hour that was not", Verdict.USED, "02:10 was not on that night; read as 03:10");
    rule("stops.csv hour that was twice", Verdict.USED, "taken as the second 01:09");
    rule("tickets.csv decimal comma", Verdict.USED, "");
    rule("tickets.csv thousands mark", Verdict.USED, "");
    rule("tickets.csv kg days", Verdict.USED, "");
    rule("tickets.csv no moisture", Verdict.USED, "");
    rule("tickets.csv no tare", Verdict.USED, "");
    rule("tickets.csv moisture as a share", Verdict.USED, "moisture 0\\.1.*Not used");
    rule("tickets.csv reprint", Verdict.SET_ASIDE, "same ticket as line");
    rule("tickets.csv same number other weight", Verdict.SET_ASIDE, "has two weights");
    rule("tickets.csv gross and tare swapped", Verdict.SET_ASIDE, "gross and tare changed round");
    rule("shifts.csv ten times", Verdict.USED, "(510|480) paid hours");
    rule("made.csv count ten times", Verdict.USED, "count not used");
    rule("made.csv kg day", Verdict.USED, "");
    rule("changes.csv twin", Verdict.SET_ASIDE, "same as line 7");
    rule("changes.csv name", Verdict.USED, "read as fiber_bale");
    rule("changes.csv no end", Verdict.SET_ASIDE, "neither an end nor a length");
    rule("power.csv spike", Verdict.SET_ASIDE, "more than all motors draw");
    rule("power.csv gap", Verdict.USED, "without readings before it");
    rule("rain.csv missing mark", Verdict.SET_ASIDE, "below 0");
    rule("rain.csv trace", Verdict.USED, "a trace: dry");
  }

  private static void rule(String kind, Verdict verdict, String words) {
    RULES.put(kind, new Expected(verdict, words));
  }

  /**
   * What the key names without a row, or where two kinds of dirt met: shifts and days left out have
   * no row, and the stop off shift has a reason that no machine knows.
   */
  private static final List<String> WITHOUT_ROW =
      List.of(
          "stops.csv open at end",
          "shifts.csv shift left out",
          "rain.csv day left out",
          "stops.csv outside hours");

  @ParameterizedTest
  @EnumSource
  void everyDirtyRowComesToItsVerdict(Season season) throws IOException {
    List<String> wrong = new ArrayList<>();
    int seen = 0;
    for (CSVRecord dirt : key(season)) {
      String kind = dirt.get("file") + " " + dirt.get("kind");
      if (WITHOUT_ROW.contains(kind)) {
        continue;
      }
      seen++;
      Entry entry = entry(season, dirt.get("file"), Integer.parseInt(dirt.get("row")));
      Expected expected = RULES.get(kind);
      if (entry.verdict() != expected.verdict()
          || !entry.why().matches("(?s).*" + expected.words() + ".*")) {
        wrong.add(kind + " " + entry);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(seen).isEqualTo(season.dirtyRows);
  }

  @Test
  void aReasonThatNoMachineHasIsSetAside() {
    assertThat(entry(Season.OF_ANOTHER_PLANT, "stops.csv", 1144).why())
        .contains("is no reason of stalk_saw");
  }

  @ParameterizedTest
  @EnumSource
  void noCleanRowIsSetAside(Season season) throws IOException {
    var dirty = new ArrayList<String>();
    key(season).forEach(dirt -> dirty.add(dirt.get("file") + ":" + dirt.get("row")));
    long twice =
        key(season).stream()
            .filter(dirt -> dirt.get("kind").equals("same number other weight"))
            .count();
    assertThat(season.records.account().entries())
        .filteredOn(entry -> entry.verdict() == Verdict.SET_ASIDE)
        .filteredOn(entry -> !dirty.contains(entry.file() + ":" + entry.line()))
        // The first of two tickets with one number and two weights is as doubtful as the second.
        .allMatch(entry -> entry.why().contains("has two weights"))
        .hasSize((int) twice);
  }

  @Test
  void everyRowHasOneEntryAndTheCountsAddUp() {
    Account account = SEASON.account();
    assertThat(account.rows())
        .containsEntry("stops.csv", 1148)
        .containsEntry("tickets.csv", 1435)
        .containsEntry("shifts.csv", 375);
    account
        .rows()
        .forEach(
            (file, rows) -> {
              assertThat(
                      java.util.stream.Stream.of(Verdict.values())
                          .mapToInt(verdict -> account.count(file, verdict))
                          .sum())
                  .isEqualTo(rows);
              assertThat(
                      account.entries().stream()
                          .filter(entry -> entry.file().equals(file))
                          .map(Entry::line)
                          .distinct()
                          .count())
                  .isEqualTo(rows.longValue());
            });
  }

  @Test
  void whatIsReadIsWhatWasMeant() {
    assertThat(SEASON.stops())
        .filteredOn(stop -> stop.key().equals("stalk_saw.choke"))
        .hasSizeBetween(135, 142);
    assertThat(SEASON.stops())
        .filteredOn(stop -> stop.key().equals("gin_stands.choke"))
        .as("a stop that the plant file has not")
        .hasSize(81);
    assertThat(SEASON.tickets())
        .allMatch(
            ticket -> ticket.netKg() > 8_000 && ticket.netKg() < 20_000 || ticket.bales() < 34);
    assertThat(SEASON.tickets())
        .allMatch(
            ticket ->
                Double.isNaN(ticket.moisture())
                    || ticket.moisture() > 0.05 && ticket.moisture() < 0.25);
  }

  private static Entry entry(Season season, String file, int line) {
    return season.records.account().entries().stream()
        .filter(entry -> entry.file().equals(file) && entry.line() == line)
        .findFirst()
        .orElseThrow();
  }

  private static List<CSVRecord> key(Season season) throws IOException {
    try (InputStream in = SeasonDirtTest.class.getResourceAsStream(season.key);
        CSVParser parser =
            CSVParser.parse(
                new InputStreamReader(in, StandardCharsets.UTF_8),
                CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    }
  }

  /** Two shifts were left out of the sheet; the bales that they fed show it. */
  @ParameterizedTest
  @EnumSource
  void aShiftThatWasLeftOutShowsInWhatWasFed(Season season) {
    assertThat(season.records.account().entries())
        .filteredOn(entry -> entry.why().startsWith("no shift on "))
        .hasSize(2)
        .allMatch(
            entry ->
                entry.file().equals("made.csv")
                    && entry.why().endsWith("were fed: they do not count"));
  }
}
