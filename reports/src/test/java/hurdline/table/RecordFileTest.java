package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.Trace;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleDay;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RecordFileTest {
  static List<Answer> answers() {
    return List.of(
        SampleAnswer.year(),
        SampleAnswer.richYears(),
        SampleAnswer.bare(),
        SampleAnswer.paper(),
        SampleCompare.two(),
        SampleGrid.line(),
        SampleGrid.tiles(),
        SampleChoose.budgets(),
        SampleChoose.ended(),
        SampleYard.tooSmall(),
        SampleYard.stopped(),
        SampleSeason.two(),
        SampleDay.traced());
  }

  private static String text(Answer answer) throws IOException {
    StringWriter out = new StringWriter();
    RecordFile.write(answer, out);
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("answers")
  void whatIsReadBackIsWrittenAsTheSameBytes(Answer answer) throws IOException {
    String once = text(answer);
    assertThat(text(RecordFile.read("record.json", new StringReader(once)))).isEqualTo(once);
  }

  @Test
  void everythingButTheReplicationsComesBackEqual() throws IOException {
    RunAnswer year = SampleAnswer.year();
    RunAnswer back = (RunAnswer) RecordFile.read("record.json", new StringReader(text(year)));
    Samples none = Samples.none();
    assertThat(with(back, none)).isEqualTo(with(year, none));
    assertThat(back.samples().measures()).isEmpty();
    assertThat(RecordFile.read("record.json", new StringReader(text(SampleAnswer.paper()))))
        .isEqualTo(SampleAnswer.paper());
  }

  private static RunAnswer with(RunAnswer a, Samples samples) {
    return Draft.from(a)
        .with(RunAnswer::samples, samples)
        .with(RunAnswer::trace, Trace.none())
        .made();
  }

  @Test
  void theUndefinedIsNullAndRowsStandOnLinesOfTheirOwn() throws IOException {
    List<String> lines = text(SampleAnswer.bare()).lines().toList();
    assertThat(lines).contains("  \"verb\": \"run\",");
    assertThat(lines)
        .anySatisfy(
            line ->
                assertThat(line.strip())
                    .isEqualTo(
                        "{\"alternative\":\"base\",\"measure\":\"mass.stalk.fed\",\"unit\":\"t\",\"mean\":88,\"low_95\":null,\"high_95\":null,\"sd\":null,\"p05\":88,\"p50\":88,\"p95\":88,\"min\":88,\"max\":88,\"replications\":1,\"interval\":\"\"}"));
  }

  /** Names of fields are the columns of the tables. */
  @ParameterizedTest
  @CsvSource({
    "low95, low_95",
    "shareLow95, share_low_95",
    "baseMean, base_mean",
    "p05, p05",
    "areaM2, area_m2",
    "weightT, weight_t",
    "feedRateTPerH, feed_rate_t_per_h",
    "varianceRemoved, variance_removed",
    "inFile, in_file"
  })
  void aFieldIsCalledLikeItsColumn(String part, String name) {
    assertThat(CsvNames.name(Object.class, part)).isEqualTo(name);
  }

  @Test
  void factsAreNamedByTheirKind() throws IOException {
    assertThat(text(SampleYard.tooSmall()).lines().map(String::strip))
        .contains("{\"fact\":\"overflow\",\"turned_away\":false},")
        .contains(
            "{\"fact\":\"sizes_of_the_yard\",\"crop\":\"stalk\",\"place\":\"open\",\"why\":\"last_with_price\",\"shared\":true},")
        .anyMatch(
            line ->
                line.startsWith("{\"fact\":\"stored_in_place\"")
                    && line.contains("\"mass_kg\":219800,\"per_stack\":0,\"lane_m\":null"));
  }

  private static String broken(String text) {
    try {
      RecordFile.read("r.json", new StringReader(text));
      return "read";
    } catch (RecordFault fault) {
      return fault.getMessage();
    } catch (IOException other) {
      throw new AssertionError(other);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`` | r.json: it is no record of an answer; expected the record.json that run",
        "[] | r.json: it is no record of an answer; expected the record.json that run",
        "{} | r.json: it is no record of an answer; expected the record.json that run",
        "nonsense | r.json",
        "{\"record\": 1, \"verb\": \"run\", \"answer\": {}} | r.json: record is of format 1; expected 3. Ask the plant file again",
        "{\"record\": 4, \"verb\": \"run\", \"answer\": {}} | r.json: record is of format 4; expected 3.",
        "{\"record\": 3, \"verb\": \"bake\", \"answer\": {}} | r.json: verb \"bake\" is not known; expected run, check, compare",
        "{\"record\": 3, \"verb\": \"run\"} | r.json: answer is missing",
        "{\"record\": 3, \"verb\": \"run\", \"answer\": {}} | r.json: answer.header is missing; expected a record as it was written",
        "{\"record\": 3, \"verb\": \"run\", \"answer\": 7} | r.json: answer is no object",
      })
  void whatIsNoRecordIsRefused(String text, String message) {
    assertThat(broken(text)).startsWith(message.strip());
  }

  /** Wherever a record is cut off, the message says where it ends. */
  @ParameterizedTest
  @MethodSource("answers")
  void aTruncatedRecordIsToldAsOne(Answer answer) throws IOException {
    String whole = text(answer).strip();
    for (int length = 20; length < whole.length(); length += Math.max(1, whole.length() / 40)) {
      assertThat(broken(whole.substring(0, length)))
          .matches("(?s)r\\.json:\\d+:\\d+: it is no JSON or ends too soon; expected.*");
    }
  }

  /** No number that is missing or spelled otherwise becomes a 0. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"low_95\": | \"low95\": | .low_95 is missing",
        "\"replications\":40 | \"replications\":\"40\" | .replications is no number",
        "\"fact\":\"even_flow\" | \"fact\":\"odd_flow\" | .fact \"odd_flow\" is not known",
        "\"count\":1200 | \"count\":true | .count is no number",
        "\"from\": \"2027-01-04\" | \"from\": \"2027-13-04\" | 2027-13-04",
      })
  void anEditedRecordIsRefusedWithItsPlace(String before, String after, String said)
      throws IOException {
    String whole = text(SampleAnswer.year());
    String tried = before.endsWith(":") ? before.substring(0, before.length() - 1) : before;
    String edited =
        whole.replaceFirst(
            Pattern.quote(tried),
            Matcher.quoteReplacement(
                after.endsWith(":") ? after.substring(0, after.length() - 1) : after));
    assertThat(edited).isNotEqualTo(whole);
    assertThat(broken(edited))
        .startsWith("r.json: ")
        .contains(said)
        .contains("expected a record as it was written");
  }
}
