package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.command.CommandCall;
import hurdline.service.EngineStudies;
import hurdline.service.Template;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Studies that the page asks for, in processes of their own, and their answers. */
@Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class StudiesTest {
  private static final String RUN =
      "{\"name\": \"small.yaml\", \"question\": \"RUN\", \"replications\": \"%d\", \"seed\":"
          + " \"1\"}";

  private static final String PLANS =
      """
      plans:
        shorter:
          description: a week less
          with: {season: [{line: stalk_line, from: 2027-03-01, to: 2027-03-05, shifts: [day]}]}
      """;

  private static final String CHOICES =
      """
      choices:
        motor: {key: machines.mill.power, values: [15 hp, 30 hp, 45 hp], cost: [0 USD, 60000 USD, 90000 USD], life: 12 yr}
      """;

  @TempDir Path folder;
  private PageServer server;
  private Raw raw;

  @BeforeEach
  void start() throws IOException {
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    server = PageServer.start(folder, 0, new EngineStudies());
    URI address = URI.create(server.newAddress());
    raw = new Raw(address.getPort());
    raw.enter(address.getFragment());
  }

  @AfterEach
  void stop() throws IOException {
    server.close();
  }

  private void until(String said) throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(100);
    String studies = raw.get("/api/studies").body();
    while (!studies.contains(said)) {
      assertThat(System.nanoTime()).as(studies).isLessThan(end);
      assertThat(studies).doesNotContain("\"failed\"");
      LockSupport.parkNanos(100_000_000L);
      studies = raw.get("/api/studies").body();
    }
  }

  private Path answer() throws IOException {
    String body = raw.post("answers", "{}").body();
    return folder.resolve(body.replaceAll(".*?\"name\":\"([^\"]*)\".*", "$1"));
  }

  /** An answer as a call in a terminal leaves it, of the plant as it is now. */
  private String called(String name, int replications) {
    CommandCall call =
        CommandCall.of(
            "run",
            folder.resolve("small.yaml").toString(),
            "--replications=" + replications,
            "--out=" + folder.resolve(name));
    assertThat(call.code()).as(call.err()).isZero();
    return name;
  }

  @Test
  void aStudyWritesWhatTheTerminalWritesAndKeepsItsPlant() throws IOException {
    assertThat(raw.post("studies", RUN.formatted(3)).status()).isEqualTo(200);
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    until("\"state\":\"done\"");
    Path answer = answer();
    assertThat(answer.resolve("plant.yaml")).hasContent(Template.SMALL.text());
    called("terminal", 3);
    assertThat(folder.resolve("terminal/record.json"))
        .hasSameBinaryContentAs(answer.resolve("record.json"));
    assertThat(folder.resolve("terminal/plant.yaml")).hasContent(Template.SMALL.text());
  }

  @Test
  void aStopKeepsWhatIsDoneAndTheNextStudyBegins() throws IOException {
    raw.post("studies", RUN.formatted(100_000));
    String second = raw.post("studies", RUN.formatted(2)).body();
    assertThat(second).contains("\"waiting\"");
    until("\"low\":");
    assertThat(raw.get("/api/studies").body())
        .contains("\"figure\":\"margin\"", "\"of\":\"100000\"");
    String id = raw.get("/api/studies").body().replaceAll(".*?\"id\":\"([^\"]*)\".*", "$1");
    assertThat(
            raw.body("DELETE", "studies", "application/json", "{\"id\": \"" + id + "\"}").status())
        .isEqualTo(200);
    until("\"state\":\"stopped\"");
    until("\"state\":\"done\"");
    String answers = raw.post("answers", "{}").body();
    assertThat(answers).contains("stopped early", "2 replications, seed 1");
  }

  /** Whatever is asked, one figure is told with its interval while it runs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GRID | 40 | machines.mill.power=x0.5..x2..x0.5 | \"figure\":\"highest margin of ",
        "CHOOSE | 10 | | \"figure\":\"the best is above the leader by at most\"",
      })
  void aFigureIsToldWhileItRuns(String question, int replications, String vary, String said)
      throws IOException {
    String twoWeeks = Template.SMALL.text().replace("2027-05-28", "2027-03-12");
    Files.writeString(folder.resolve("small.yaml"), twoWeeks + PLANS + CHOICES);
    raw.post(
        "studies",
        RUN.formatted(replications)
            .replace("RUN", question)
            .replace(
                "}",
                ", \"best\": \"money.margin:5000\", \"vary\": \""
                    + (vary == null ? "" : vary)
                    + "\"}"));
    until(said);
    String id = raw.get("/api/studies").body().replaceAll(".*?\"id\":\"([^\"]*)\".*", "$1");
    raw.body("DELETE", "studies", "application/json", "{\"id\": \"" + id + "\"}");
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (raw.get("/api/studies").body().contains("\"running\"")) {
      assertThat(System.nanoTime()).isLessThan(end);
      LockSupport.parkNanos(100_000_000L);
    }
  }

  /** The same of questions whose processes take long to begin. */
  @Tag("proof")
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "COMPARE | \"figure\":\"margin, ",
        "YARD | \"figure\":\"mean room needed\"",
        "SEASON | \"figure\":\"margin, ",
      })
  void soItIsOfOtherQuestions(String question, String said) throws IOException {
    aFigureIsToldWhileItRuns(question, 100_000, null, said);
  }

  @Test
  void eightStudiesMayWaitAndOneThatWaitsEndsAtOnce() throws IOException {
    int refused = 0;
    for (int i = 0; i < 11; i++) {
      refused += raw.post("studies", RUN.formatted(100_000)).status() == 429 ? 1 : 0;
    }
    assertThat(refused).isEqualTo(2);
    String studies = raw.get("/api/studies").body();
    assertThat(all("answer", studies)).hasSize(9).doesNotHaveDuplicates();
    List<String> lastFirst = new ArrayList<>(all("id", studies));
    Collections.reverse(lastFirst);
    for (String id : lastFirst) {
      raw.body("DELETE", "studies", "application/json", "{\"id\": \"" + id + "\"}");
    }
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(40);
    while (raw.get("/api/studies").body().matches("(?s).*\"state\":\"(waiting|running)\".*")) {
      assertThat(System.nanoTime()).isLessThan(end);
      LockSupport.parkNanos(100_000_000L);
    }
  }

  private static List<String> all(String field, String studies) {
    return Pattern.compile("\"" + field + "\":\"([^\"]*)\"")
        .matcher(studies)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void aStudyThatCannotBeSaysWhyAndTakesNothingAlong() throws IOException {
    raw.post(
        "studies",
        "{\"name\": \"small.yaml\", \"question\": \"RUN\", \"replications\": \"2\", \"seed\":"
            + " \"1\", \"option\": [\"nothing\"]}");
    until("\"state\":\"failed\"");
    assertThat(raw.get("/api/studies").body()).contains("nothing");
    assertThat(raw.get("/api/files").status()).isEqualTo(200);
    assertThat(raw.post("answers", "{}").body()).contains("\"answers\":[]");
  }

  /** A field has a name on the page, and the terminal's flag stands nowhere on it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "RUN | until | abc | Go on until known to",
        "COMPARE | lives | -1 | Simulated service lives",
        "COMPARE | break_even | no such key | no such key",
        "YARD | overflow | often | It may overflow in",
      })
  void whatCannotBeIsToldInTheWordsOfThePage(
      String question, String field, String typed, String said) throws IOException {
    raw.post(
        "studies",
        RUN.formatted(2)
            .replace("RUN", question)
            .replace("}", ", \"" + field + "\": \"" + typed + "\"}"));
    until("\"state\":\"failed\"");
    assertThat(raw.get("/api/studies").body())
        .contains(said, "expected")
        .doesNotContain("--", "See hurdline", "hurdline: ");
  }

  @Test
  void fewerReplicationsThanAnswerAnythingAreRefused() throws IOException {
    Files.createDirectory(folder.resolve("\u00dcbersicht 26"));
    String asked =
        RUN.replace("RUN", "BACKTEST").replace("}", ", \"records\": \"\u00dcbersicht 26\"}");
    assertThat(raw.post("studies", asked.formatted(98)).body()).contains("from 99 to");
    assertThat(raw.post("studies", asked.formatted(99)).status()).isEqualTo(200);
    assertThat(raw.post("questions", "{\"name\": \"small.yaml\"}").body())
        .contains("\"fewest\":99", "\"fewest\":1,");
  }

  @Test
  void noValueOfAQuestionBecomesAFlag() throws IOException {
    raw.post(
        "studies",
        "{\"name\": \"small.yaml\", \"question\": \"RUN\", \"replications\": \"2\", \"seed\":"
            + " \"1\", \"until\": \"--out="
            + folder.resolve("elsewhere")
            + "\"}");
    until("\"state\":\"failed\"");
    assertThat(folder.resolve("elsewhere")).doesNotExist();
    assertThat(raw.post("studies", RUN.replace("%d", "1e9")).status()).isEqualTo(400);
    assertThat(raw.post("studies", RUN.formatted(2).replace("RUN", "NEW")).status()).isEqualTo(400);
  }

  @Test
  void aReportIsShownUnderAWordThatCannotBeGuessedAndReachesNothing() throws IOException {
    String name = called("one", 2);
    String address =
        raw.post("report", "{\"name\": \"" + name + "\"}")
            .body()
            .replaceAll(".*\"(/report/[^\"]+)\".*", "$1");
    raw.forgetKey();
    Raw.Reply report = raw.get(address);
    assertThat(report.status()).isEqualTo(200);
    assertThat(report.headers().get("content-security-policy"))
        .startsWith("sandbox ")
        .contains("default-src 'none'")
        .doesNotContain("script", "allow-same-origin");
    assertThat(raw.get("/report/" + name).status()).isEqualTo(404);
  }

  /**
   * What was filled in comes back, also from a call that a terminal made; seed and number go on.
   */
  @Test
  void anAnswerCanBeAskedForAgain() throws IOException {
    raw.post(
        "studies",
        RUN.formatted(3)
            .replace("RUN", "GRID")
            .replace("}", ", \"vary\": \"machines.mill.power=x1..x2..x1\", \"vary2\": \"\"}"));
    until("\"state\":\"done\"");
    assertThat(Files.readString(answer().resolve("call.txt")))
        .contains("--vary=machines.mill.power=x1..x2..x1\n")
        .doesNotContain("steered");
    String list = raw.post("answers", "{}").body();
    assertThat(list)
        .contains(
            "\"question\":\"GRID\"",
            "\"fields\":{\"vary\":\"machines.mill.power=x1..x2..x1\"},\"other\":\"\"",
            "\"asOnDisk\":true");
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text() + "# more\n");
    assertThat(raw.post("answers", "{}").body()).contains("\"asOnDisk\":false");
    assertThat(raw.post("folder", "{\"name\": \"..\"}").status()).isEqualTo(404);
  }

  /** Records are read from below the folder of the plants and from nowhere else. */
  @Test
  void recordsLieBelowTheFolder() throws IOException {
    Path elsewhere = Files.createTempDirectory("elsewhere");
    Files.createSymbolicLink(folder.resolve("link"), elsewhere);
    for (String records :
        new String[] {"link", "..", "../" + elsewhere.getFileName(), "/tmp", "-x", "none", ""}) {
      String asked =
          RUN.formatted(99)
              .replace("RUN", "BACKTEST")
              .replace("}", ", \"records\": \"" + records + "\"}");
      assertThat(raw.post("studies", asked).status()).as(records).isEqualTo(400);
    }
    Files.delete(elsewhere);
  }

  @Test
  void anAnswerIsNotedSetBesideAnotherAndDeletedWithNothingElse() throws IOException {
    String first = called("first", 2);
    String changed = Template.SMALL.text().replace("power: 15 hp", "power: 20 hp");
    Files.writeString(folder.resolve("small.yaml"), changed);
    String second = called("second", 2);
    String both = raw.post("side", "{\"a\": \"" + first + "\", \"b\": \"" + second + "\"}").body();
    assertThat(both).contains("so the same random draws", "power: 15 hp", "power: 20 hp", "margin");
    raw.body(
        "PUT",
        "note",
        "application/json",
        "{\"name\": \"" + first + "\", \"star\": \"true\", \"note\": \"the old mill\"}");
    assertThat(raw.post("answers", "{}").body())
        .contains("\"star\":true,\"note\":\"the old mill\"");
    assertThat(folder.resolve(first).resolve("note.txt")).hasContent("* the old mill");
    Files.createSymbolicLink(folder.resolve(first).resolve("link"), folder.resolve(second));
    assertThat(
            raw.body("DELETE", "answers", "application/json", "{\"name\": \"" + first + "\"}")
                .status())
        .isEqualTo(200);
    assertThat(folder.resolve(first)).doesNotExist();
    assertThat(folder.resolve(second).resolve("record.json")).exists();
    assertThat(raw.body("DELETE", "answers", "application/json", "{\"name\": \"..\"}").status())
        .isEqualTo(404);
  }
}
