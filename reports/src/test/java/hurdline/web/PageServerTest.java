package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hurdline.service.EngineStudies;
import hurdline.service.Template;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageServerTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));

  @TempDir Path folder;

  private static Raw entered(PageServer server) throws IOException {
    URI address = URI.create(server.newAddress());
    Raw raw = new Raw(address.getPort());
    raw.enter(address.getFragment());
    return raw;
  }

  @Test
  void aSecondStartOfTheSameFolderGetsAPageOfTheFirst() throws IOException {
    try (PageServer first = PageServer.start(folder, 0, new EngineStudies())) {
      AlreadyOpenException second =
          catchThrowableOfType(
              AlreadyOpenException.class, () -> PageServer.start(folder, 0, new EngineStudies()));
      URI address = URI.create(second.newAddress());
      Raw raw = new Raw(address.getPort());
      assertThat(raw.enter(address.getFragment()).status()).isEqualTo(200);
      assertThat(first.awaitsPages()).isFalse();
    }
    try (PageServer after = PageServer.start(folder, 0, new EngineStudies())) {
      assertThat(after.isIdle()).isFalse();
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void anEmptyFolderOffersPlantsToStartFrom() throws IOException {
    Path fresh = folder.resolve("not/there/yet");
    try (PageServer server = PageServer.start(fresh, 0, new EngineStudies())) {
      Raw raw = entered(server);
      assertThat(raw.get("/api/files").body())
          .contains("\"plants\":[]", "small", "sweetgum-bend", "stalk");
      raw.post("create", "{\"template\": \"SMALL\", \"name\": \"mine\"}");
      assertThat(fresh.resolve("mine.yaml")).hasContent(Template.SMALL.text());
    }
  }

  @Test
  void aFileThatIsNamedIsShownFirst() throws IOException {
    Path file = folder.resolve("b.yaml");
    Files.writeString(file, Template.SMALL.text());
    try (PageServer server = PageServer.start(file, 0, new EngineStudies())) {
      assertThat(entered(server).get("/api/files").body()).contains("\"first\":\"b.yaml\"");
    }
  }

  @Test
  void aTextIsCheckedWithItsPlacesAndItsNearestWord() throws IOException {
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    try (PageServer server = PageServer.start(folder, 0, new EngineStudies())) {
      Raw raw = entered(server);
      String wrong = "# \uD83C\uDF3E\nhurdline: 1\nplnt: x\n";
      String body =
          raw.post(
                  "check",
                  "{\"name\": \"small.yaml\", \"text\": \"" + wrong.replace("\n", "\\n") + "\"}")
              .body();
      int from = wrong.indexOf("plnt");
      assertThat(body)
          .contains("\"line\":3,\"from\":" + from + ",\"to\":" + (from + 4), "\"fix\":\"plant\"");
    }
  }

  /** A word processor's line end ends a line of YAML too, though no editor shows that. */
  @ParameterizedTest
  @ValueSource(strings = {"\\u2028", "\\u2029", "\\u0085"})
  void aPlaceIsRightBehindEveryEndOfALine(String end) throws IOException {
    try (PageServer server = PageServer.start(folder, 0, new EngineStudies())) {
      String wrong = "hurdline: 1\n# one" + end + "\nplnt: x\n";
      String body =
          entered(server)
              .post("check", "{\"text\": \"" + wrong.replace("\n", "\\n") + "\"}")
              .body();
      int from = "hurdline: 1\n# one.\n".length();
      assertThat(body).contains("\"from\":" + from + ",\"to\":" + (from + 4));
    }
  }

  /** The page fetches nothing from anywhere. */
  @Test
  void noFileOfThePageNamesAnotherHost() throws IOException {
    Path files = ROOT.resolve("reports/src/main/resources/hurdline/web");
    try (var all = Files.list(files)) {
      for (Path file : all.toList()) {
        assertThat(Files.readString(file).replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
            .as(file + ", the name of SVG itself left out")
            .doesNotContainPattern("https?://|//[a-z]+\\.");
        assertThat(Files.readAllLines(file)).as(file.toString()).hasSizeLessThan(300);
      }
    }
  }

  @Test
  void theIconIsAPictureOfOurOwn() throws IOException {
    try (PageServer server = PageServer.start(folder, 0, new EngineStudies())) {
      Raw.Reply icon = entered(server).get("/icon.svg");
      assertThat(icon.headers().get("content-type")).isEqualTo("image/svg+xml");
      assertThat(icon.body()).startsWith("<svg").contains("<title>hurdline</title>");
    }
  }

  /** Versions stand in the build and in the list of modules. */
  @Test
  void theEditorsModulesAreThoseOfTheBuild() throws IOException {
    String pom = Files.readString(ROOT.resolve("reports/pom.xml"));
    var jar = Pattern.compile(".*/webjars/([^/]+)/([^/]+)/.*");
    assertThat(EditorModules.byName())
        .hasSize(13)
        .allSatisfy(
            (name, file) -> {
              var parts = jar.matcher(file);
              assertThat(parts.matches()).isTrue();
              assertThat(pom)
                  .contains(
                      "<artifactId>"
                          + parts.group(1)
                          + "</artifactId><version>"
                          + parts.group(2)
                          + "</version><exclusions>");
              assertThat(PageServer.class.getResource(file)).as(file).isNotNull();
            });
  }
}
