package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import hurdline.service.Template;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that the page would never send. */
class AttackTest {
  @TempDir Path root;
  private Path folder;
  private PageServer server;
  private Raw raw;
  private String code;

  @BeforeEach
  void start() throws IOException {
    folder = Files.createDirectory(root.resolve("plants"));
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    server = PageServer.start(folder, 0, new EngineStudies());
    URI address = URI.create(server.newAddress());
    raw = new Raw(address.getPort());
    code = address.getFragment();
  }

  @AfterEach
  void stop() throws IOException {
    server.close();
  }

  private void enter() throws IOException {
    assertThat(raw.enter(code).status()).isEqualTo(200);
  }

  @Test
  void thePageItselfIsServedAndItsCallsWithTheKey() throws IOException {
    assertThat(raw.get("/").status()).isEqualTo(200);
    enter();
    assertThat(raw.get("/api/files").body()).contains("small.yaml");
  }

  @Test
  void aRequestNamesThisHostOnceAndInOneSpelling() throws IOException {
    int port = Integer.parseInt(raw.home().split(":")[1]);
    List<String> hosts =
        List.of(
            "evil.test",
            "evil.test:" + port,
            "localhost",
            "localhost:" + port,
            "127.0.0.1",
            "127.0.0.1:" + (port + 1),
            "127.1:" + port,
            "[::1]:" + port,
            raw.home() + ".evil.test",
            "user@" + raw.home());
    for (String host : hosts) {
      assertThat(raw.ask("GET", "/", "Host: " + host).status()).as(host).isEqualTo(421);
    }
    assertThat(raw.ask("GET", "/", "").status()).as("no host").isIn(400, 421);
    String two = "Host: " + raw.home() + "\r\nHost: evil.test";
    assertThat(raw.ask("GET", "/", two).status()).as("two hosts").isEqualTo(421);
    assertThat(raw.get("http://evil.test/").status()).as("absolute address").isEqualTo(400);
  }

  @Test
  void whatComesFromAnotherPageIsRefused() throws IOException {
    enter();
    int port = Integer.parseInt(raw.home().split(":")[1]);
    List<String> origins =
        List.of(
            "http://evil.test",
            "null",
            "http://127.0.0.1:" + (port + 1),
            "https://" + raw.home(),
            "http://localhost:" + port,
            "http://" + raw.home() + ".evil.test");
    for (String origin : origins) {
      String line = "Origin: " + origin + "\r\n";
      assertThat(raw.body("POST", "check", "application/json", "{}", line).status())
          .as(origin)
          .isEqualTo(403);
    }
    assertThat(raw.body("POST", "check", "application/json", "{}", "").status())
        .as("a change without origin")
        .isEqualTo(403);
    for (String site : List.of("cross-site", "same-site", "none")) {
      String header = "Sec-Fetch-Site: " + site;
      assertThat(raw.get("/api/files", header).status()).as(site).isEqualTo(403);
      assertThat(raw.get("/page.js", header, "Sec-Fetch-Mode: no-cors").status())
          .as(site)
          .isEqualTo(403);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"TRACE", "OPTIONS", "CONNECT", "PATCH", "HEAD", "FOO"})
  void noOtherMethodIsServed(String method) throws IOException {
    enter();
    assertThat(raw.ask(method, "/api/files", "Host: " + raw.home()).status()).isIn(400, 405);
  }

  @Test
  void withoutTheKeyNothingIsAnswered() throws IOException {
    assertThat(raw.get("/api/files").status()).isEqualTo(401);
    assertThat(raw.get("/api/files?key=" + code).status()).isEqualTo(401);
    assertThat(raw.get("/api/files", "X-Hurdline-Key: " + code).status()).isEqualTo(401);
    assertThat(raw.get("/api/files", "Cookie: key=" + code).status()).isEqualTo(401);
    for (int i = 0; i < 50; i++) {
      assertThat(raw.enter("guess" + i).status()).isEqualTo(401);
    }
    enter();
    assertThat(raw.get("/api/files", "X-Hurdline-Key: x").status()).as("two keys").isEqualTo(401);
    assertThat(raw.enter(code).status()).as("the code again").isEqualTo(401);
  }

  @Test
  void anotherStartOfTheProgramGetsAnAddressOnlyByTheWordInTheLockedFile() throws IOException {
    assertThat(raw.post("door", "{\"word\": \"guess\"}").status()).isEqualTo(401);
    Path lock = folder.resolve(".hurdline-open");
    assertThat(Files.getPosixFilePermissions(lock)).hasSize(2);
    String word = Files.readString(lock).strip().split(" ")[1];
    assertThat(raw.post("door", "{\"word\": \"" + word + "\"}").body()).contains("/#");
  }

  @Test
  void noFormAndNoPlainTextReachesACall() throws IOException {
    enter();
    for (String type :
        List.of("application/x-www-form-urlencoded", "text/plain", "multipart/form-data")) {
      assertThat(raw.body("POST", "check", type, "{\"text\": \"a\"}").status())
          .as(type)
          .isEqualTo(415);
    }
  }

  @Test
  void noNameLeadsOutOfTheFolder() throws IOException {
    enter();
    Files.writeString(root.resolve("outside.yaml"), "secret: 1");
    Files.createSymbolicLink(folder.resolve("link.yaml"), root.resolve("outside.yaml"));
    Files.createSymbolicLink(folder.resolve("way"), root);
    Files.createDirectory(folder.resolve("dir.yaml"));
    List<String> names =
        List.of(
            "../outside.yaml",
            "/etc/passwd",
            "link.yaml",
            "way/outside.yaml",
            "dir.yaml",
            "..",
            ".",
            "",
            "small.yaml/",
            "./small.yaml",
            "small.yaml\\u0000.txt",
            "..\\\\outside.yaml",
            "SMALL.YAML",
            "small.yaml:x",
            "%2e%2e/outside.yaml",
            "file:///etc/passwd",
            "a".repeat(5000) + ".yaml");
    for (String name : names) {
      Raw.Reply read = raw.post("read", "{\"name\": \"" + name + "\"}");
      assertThat(read.status()).as(name).isEqualTo(404);
      assertThat(read.body()).doesNotContain("secret");
      String saved = "{\"name\": \"" + name + "\", \"text\": \"x\", \"version\": \"\"}";
      assertThat(raw.body("PUT", "plant", "application/json", saved).status())
          .as(name)
          .isEqualTo(404);
    }
    assertThat(raw.get("/api/files").body()).doesNotContain("link").doesNotContain("dir.yaml");
    assertThat(Files.readString(root.resolve("outside.yaml"))).isEqualTo("secret: 1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "..",
        "../x",
        "/x",
        "a/b",
        "a\\\\b",
        "CON",
        "nul",
        "com1.yaml",
        ".hidden",
        "-x",
        "x ",
        " x",
        "a.b",
        "x\\u202ey",
        "x\\u0000y",
        "x\\ny",
        ".yaml",
        "\\ud83c\\udf3e"
      })
  void aNewFileGetsAPlainName(String name) throws IOException {
    enter();
    String values = "{\"name\": \"" + name + "\", \"text\": \"x\"}";
    assertThat(raw.post("create", values).status()).isEqualTo(400);
    assertThat(folder).isDirectoryNotContaining(file -> file.toString().contains("x.yaml"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../page.js",
        "/%2e%2e/etc/passwd",
        "/lib/../page.js",
        "//etc/passwd",
        "/report/",
        "/report/../api/files",
        "/report/x",
        "/page.js%00",
        "/index.html",
        "/page.js/",
        "/lib/",
        "/WEB-INF/"
      })
  void aPathIsLookedUpInAListAndNeverJoined(String path) throws IOException {
    enter();
    assertThat(raw.get(path).status()).isIn(400, 404);
  }

  @Test
  void whatIsTooLargeOrNoJsonIsRefused() throws IOException {
    enter();
    String large = "{\"text\": \"" + "x".repeat(9_000_000) + "\"}";
    assertThat(raw.post("check", large).status()).isEqualTo(413);
    for (String body :
        List.of(
            "{", "[]", "1", "", "{\"text\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}")) {
      assertThat(raw.post("check", body).status())
          .as(body.substring(0, Math.min(9, body.length())))
          .isEqualTo(400);
    }
    assertThat(raw.post("check", "{\"name\": \"small.yaml\", \"text\": {\"a\": 1}}").status())
        .isEqualTo(200);
    String both =
        "POST /api/check HTTP/1.1\r\nHost: "
            + raw.home()
            + "\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n";
    assertThat(raw.send(both).status()).isEqualTo(400);
  }

  @Test
  void hostilePlantsAreProblemsAndNoMore() throws IOException {
    enter();
    StringBuilder laughs = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x]\\n");
    for (char c = 'b'; c < 'k'; c++) {
      String before = "*" + (char) (c - 1);
      laughs.append(
          c + ": &" + c + " [" + String.join(",", Collections.nCopies(9, before)) + "]\\n");
    }
    List<String> plants =
        List.of(
            laughs.toString(),
            "[".repeat(3000),
            "a: !!javax.script.ScriptEngineManager [x]",
            "plant: \\\"<img src=x onerror=alert(1)>\\\"",
            "",
            "a: " + "x".repeat(200_000),
            "\\uFEFFa: 1",
            "a: \\u0000",
            "a: \\ud800",
            "deliveries: {x: {weather: {file: ../../../../etc/passwd}}}");
    for (String plant : plants) {
      Raw.Reply reply =
          raw.post("check", "{\"name\": \"small.yaml\", \"text\": \"" + plant + "\"}");
      assertThat(reply.status())
          .as(plant.substring(0, Math.min(30, plant.length())))
          .isEqualTo(200);
      assertThat(reply.body()).contains("\"warning\":false").doesNotContain("root:");
      assertThat(reply.headers().get("content-type")).startsWith("application/json");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a.b.c|1",
        "|",
        "plant|*x",
        "plant|!!java.net.URL [x]",
        "plant|x\\ny: 2",
        "plant|{a: {a: {a: {a:",
        "machines.mill.power|",
        "machines.mill.power|twenty hp",
        "machines.mill.power|<img src=x>"
      })
  void hostileEditsAreRefusedOrSetAsText(String edit) throws IOException {
    enter();
    String[] parts = edit.split("\\|", -1);
    String text =
        Template.SMALL.text().replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    Raw.Reply reply =
        raw.post(
            "set",
            "{\"text\": \""
                + text
                + "\", \"path\": \""
                + parts[0]
                + "\", \"value\": \""
                + parts[1]
                + "\"}");
    assertThat(reply.status()).isEqualTo(200);
    assertThat(reply.body()).containsAnyOf("\"refused\"", "\"with\"");
    assertThat(reply.body()).doesNotContain("\ny: 2");
  }

  @Test
  void headersKeepOthersOutAndNoCookieIsSet() throws IOException {
    var headers = raw.get("/").headers();
    assertThat(headers.get("content-security-policy"))
        .contains(
            "default-src 'none'", "require-trusted-types-for 'script'", "trusted-types 'none'")
        .contains("frame-ancestors 'none'", "base-uri 'none'", "form-action 'none'")
        .doesNotContain("unsafe", "http:", "*");
    assertThat(headers)
        .containsEntry("x-content-type-options", "nosniff")
        .containsEntry("referrer-policy", "no-referrer")
        .containsEntry("cross-origin-opener-policy", "same-origin")
        .containsEntry("cross-origin-resource-policy", "same-origin")
        .containsEntry("cache-control", "no-store")
        .doesNotContainKey("set-cookie")
        .doesNotContainKey("access-control-allow-origin");
    assertThat(raw.get("/nothing").headers()).containsKey("content-security-policy");
  }

  @Test
  void theLoopbackAddressAloneIsListenedOn() throws IOException {
    int port = Integer.parseInt(raw.home().split(":")[1]);
    var addresses = new ArrayList<InetAddress>();
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      addresses.addAll(Collections.list(each.getInetAddresses()));
    }
    for (InetAddress address : addresses) {
      if (!address.getHostAddress().equals("127.0.0.1")) {
        assertThat(answers(address, port)).as(address.toString()).isFalse();
      }
    }
    assertThat(answers(InetAddress.getByName("127.0.0.1"), port)).isTrue();
    assertThat(answers(InetAddress.getByName("127.0.0.2"), port)).isFalse();
  }

  private static boolean answers(InetAddress address, int port) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(address, port), 1000);
      return true;
    } catch (IOException closed) {
      return false;
    }
  }

  @Test
  void aHundredHalfRequestsHoldNobodyUp() throws IOException {
    enter();
    List<Socket> half = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Socket socket =
          new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(raw.home().split(":")[1]));
      socket.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes());
      half.add(socket);
    }
    long begun = System.nanoTime();
    assertThat(raw.get("/api/files").status()).isEqualTo(200);
    assertThat((System.nanoTime() - begun) / 1e9).isLessThan(10);
    for (Socket socket : half) {
      socket.close();
    }
  }
}
