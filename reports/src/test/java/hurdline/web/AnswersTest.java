package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import hurdline.service.EngineStudies;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.Writer;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Answers in a folder as the page lists them and sets them side by side. */
class AnswersTest {
  private static final Header HEADER = SampleAnswer.header();
  private static final Outline OUTLINE = SampleAnswer.paper().outline();

  @TempDir Path folder;
  private PageServer server;
  private Raw raw;

  @BeforeEach
  void start() throws IOException {
    server = PageServer.start(folder, 0, new EngineStudies());
    URI address = URI.create(server.newAddress());
    raw = new Raw(address.getPort());
    raw.enter(address.getFragment());
  }

  @AfterEach
  void stop() throws IOException {
    server.close();
  }

  private Path put(String name, Answer answer) throws IOException {
    Path made = Files.createDirectory(folder.resolve(name));
    try (Writer out = Files.newBufferedWriter(made.resolve("record.json"))) {
      RecordFile.write(answer, out);
    }
    Files.writeString(made.resolve("report.html"), "<!DOCTYPE html><title>x</title>");
    return made;
  }

  static List<Answer> kinds() {
    return List.of(
        SampleAnswer.year(),
        SampleAnswer.paper(),
        SampleCompare.two(),
        SampleSeason.two(),
        SampleYard.tooSmall(),
        SampleGrid.line(),
        SampleChoose.budgets(),
        backtest(200),
        fit(1.5));
  }

  private static BacktestAnswer backtest(double mean) {
    return Draft.of(BacktestAnswer.class)
        .with(BacktestAnswer::header, HEADER)
        .with(BacktestAnswer::outline, OUTLINE)
        .with(BacktestAnswer::records, "last-year")
        .with(
            BacktestAnswer::series,
            List.of(
                Draft.of(BacktestAnswer.Series.class)
                    .with(BacktestAnswer.Series::kind, BacktestAnswer.Kind.FED)
                    .with(BacktestAnswer.Series::of, "stalk")
                    .with(BacktestAnswer.Series::unit, "bales")
                    .with(BacktestAnswer.Series::seen, 210.0)
                    .with(BacktestAnswer.Series::mean, mean)
                    .with(BacktestAnswer.Series::sd, 10.0)
                    .with(BacktestAnswer.Series::off, 210 / mean - 1)
                    .with(BacktestAnswer.Series::low95, -0.1)
                    .with(BacktestAnswer.Series::high95, 0.1)
                    .with(BacktestAnswer.Series::tolerance, 0.1)
                    .with(BacktestAnswer.Series::verdict, BacktestAnswer.Verdict.AGREES)
                    .made()))
        .made();
  }

  private static FitAnswer fit(double mean) {
    return Draft.of(FitAnswer.class)
        .with(FitAnswer::header, Draft.from(HEADER).with(Header::replications, 0).made())
        .with(FitAnswer::outline, OUTLINE)
        .with(FitAnswer::records, "last-year")
        .with(
            FitAnswer::figures,
            List.of(
                Draft.of(FitRow.class)
                    .with(FitRow::key, "machines.mill.stops.choke.every")
                    .with(FitRow::unit, "h")
                    .with(FitRow::saidMean, 2.0)
                    .with(FitRow::fitted, "x")
                    .with(FitRow::mean, mean)
                    .with(FitRow::low95, mean - 0.2)
                    .with(FitRow::high95, mean + 0.2)
                    .made()))
        .with(
            FitAnswer::checks,
            List.of(
                Draft.of(FitCheckRow.class)
                    .with(FitCheckRow::what, "share of hurd")
                    .with(FitCheckRow::unit, "%")
                    .with(FitCheckRow::found, 61.0)
                    .made()))
        .made();
  }

  private String side(Answer one, Answer other) throws IOException {
    put("one", one);
    put("other", other);
    return raw.post("side", "{\"a\": \"one\", \"b\": \"other\"}").body();
  }

  @Test
  void onlyFiguresOfRecordsGoIntoATextAndOnlyWhereItHasAPlaceForThem() throws IOException {
    put("year", SampleAnswer.year());
    put("fitted", fit(1.5));
    assertThat(raw.post("fitted", "{\"name\": \"year\", \"text\": \"\"}").body())
        .isEqualTo("That answer has no figures for a plant.");
    Raw.Reply nowhere = raw.post("fitted", "{\"name\": \"fitted\", \"text\": \"a: 1\"}");
    assertThat(nowhere.status()).as(nowhere.body()).isEqualTo(409);
    Raw.Reply broken = raw.post("fitted", "{\"name\": \"fitted\", \"text\": \"a: [\"}");
    assertThat(broken.status()).as(broken.body()).isEqualTo(409);
    assertThat(raw.post("fitted", "{\"name\": \"none\"}").status()).isEqualTo(404);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void eachKindHasSentencesInTheListAndRowsBesideAnother(Answer answer) throws IOException {
    String both = side(answer, answer);
    assertThat(both).contains("{\"rows\":[{\"a\":\"");
    assertThat(Pattern.compile("\"a\":\"([^\"]+)\",\"b\":\"\\1\"").matcher(both).results().count())
        .as("every row has both figures: " + both)
        .isEqualTo(both.split("\"label\":").length - 1);
    assertThat(raw.post("answers", "{}").body()).doesNotContain("\"sentences\":[]");
  }

  @Test
  void whatChangedBetweenTwoBacktestsStandsInARow() throws IOException {
    assertThat(side(backtest(200), backtest(220)))
        .contains(
            "\"a\":\"200 bales (records 210, off by +5.0 %: agrees)\"",
            "\"b\":\"220 bales (records 210, off by -4.5 %: agrees)\"", "\"label\":\"Stalk fed\"");
  }

  @Test
  void whatChangedBetweenTwoFitsStandsInARow() throws IOException {
    assertThat(side(fit(1.5), fit(1.7)))
        .contains(
            "\"a\":\"1.5 h (1.3 to 1.7)\",\"b\":\"1.7 h (1.5 to 1.9)\"",
            "\"a\":\"61 %\",\"b\":\"61 %\",\"label\":\"share of hurd\"",
            "Nothing is simulated in either");
  }

  @Test
  void answersOfDifferentQuestionsSaySo() throws IOException {
    assertThat(side(backtest(200), SampleYard.tooSmall())).contains("different questions");
  }

  @Test
  void oneAnswerThatCannotBeReadTakesNoOtherAlong() throws IOException {
    put("good", SampleAnswer.year());
    Files.write(put("bytes", SampleAnswer.year()).resolve("record.json"), new byte[] {-1, -2, -3});
    Files.writeString(put("half", SampleAnswer.year()).resolve("record.json"), "{\"record\": 3,");
    Files.writeString(put("nothing", SampleAnswer.year()).resolve("record.json"), "");
    Files.delete(put("bare", SampleAnswer.year()).resolve("report.html"));
    Files.createDirectory(put("odd", SampleAnswer.year()).resolve("note.txt"));
    String list = raw.post("answers", "{}").body();
    assertThat(list)
        .contains(
            "\"name\":\"good\"", "\"name\":\"bytes\"", "\"name\":\"half\"", "\"name\":\"odd\"")
        .contains("\"name\":\"nothing\"", "another version of hurdline, or damaged")
        .doesNotContain("\"name\":\"bare\"");
    for (String call : Stream.of("report", "folder").toList()) {
      assertThat(raw.post(call, "{\"name\": \"gone\"}").body())
          .isEqualTo("There is no answer of that name.");
    }
  }

  @Test
  void aNoteThatCannotBeWrittenIsTold() throws IOException {
    Path answer = put("one", SampleAnswer.year());
    Files.createDirectory(answer.resolve("note.txt"));
    Files.writeString(answer.resolve("note.txt").resolve("x"), "in the way");
    String note = "{\"name\": \"one\", \"star\": \"false\", \"note\": \"mine\"}";
    Raw.Reply reply = raw.body("PUT", "note", "application/json", note);
    assertThat(reply.status()).isEqualTo(500);
    assertThat(reply.body()).startsWith("This was not done: ");
    try (Stream<Path> all = Files.list(answer)) {
      assertThat(all.map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("record.json", "report.html", "note.txt");
    }
  }
}
