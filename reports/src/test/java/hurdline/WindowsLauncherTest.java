package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What can be said of {@code hurdline.cmd} by reading it; nobody has run it on Windows yet. */
class WindowsLauncherTest {
  private static final Path SCRIPTS = Path.of(System.getProperty("hurdline.root"), "scripts");

  private static String text() throws IOException {
    return Files.readString(SCRIPTS.resolve("packaged/hurdline.cmd"));
  }

  private static List<String> lines() throws IOException {
    return List.of(text().split("\r\n"));
  }

  /** A label behind a line that ends in a line feed alone may not be found. */
  @Test
  void everyLineEndsAsWindowsHasIt() throws IOException {
    assertThat(text()).endsWith("\r\n").matches("(?s)\\p{ASCII}*");
    assertThat(text().replace("\r\n", "")).doesNotContain("\r", "\n", "\t");
  }

  @Test
  void itSaysThatItIsNotTried() throws IOException {
    assertThat(text()).contains("rem Written with care but NOT TRIED on Windows.");
    assertThat(Files.readString(SCRIPTS.resolve("packaged/README-jdk.txt")))
        .contains("NOT TRIED on Windows");
  }

  @Test
  void nothingInItIsOfAnotherShell() throws IOException {
    assertThat(text())
        .doesNotContain("$", "#!", "/dev/null", "&>", "`", "fi\r\n", "then", "esac", "||", "&&");
    assertThat(lines())
        .as("no block in brackets, in which a folder such as (x86) would end too soon")
        .noneMatch(line -> line.strip().matches(".*[()]") || line.startsWith(")"));
  }

  @Test
  void everyLabelThatIsGoneToIsThere() throws IOException {
    String text = text();
    Pattern.compile("goto (\\w+)")
        .matcher(text)
        .results()
        .forEach(found -> assertThat(text).contains("\r\n:" + found.group(1) + "\r\n"));
    assertThat(text).contains("goto page", "goto found");
  }

  /** Folders have spaces; {@code %*} keeps the user's own quotation marks. */
  @Test
  void pathsStandInQuotationMarksAndWordsGoOnAsTheyWere() throws IOException {
    List<String> starts = lines().stream().filter(line -> line.contains(" -jar ")).toList();
    assertThat(starts).hasSize(2);
    assertThat(starts)
        .allMatch(line -> line.startsWith("\"%java%\" ") && line.contains(" -jar \"%jar%\" "))
        .allMatch(line -> line.contains(" %flags% %HURDLINE_JVM% "));
    assertThat(starts.get(0)).endsWith(" %*");
    assertThat(starts.get(1)).endsWith(" open \"%USERPROFILE%\\hurdline-plants\"");
    assertThat(lines())
        .contains("set \"jar=%~dp0hurdline.jar\"")
        .noneMatch(line -> line.matches("set \\w+=.*%(~dp0|JAVA_HOME|USERPROFILE).*"));
  }

  @Test
  void theNumberWithWhichJavaEndsIsHandedOn() throws IOException {
    List<String> lines = lines();
    int words = lines.indexOf(":found") + 2;
    assertThat(lines.get(words)).endsWith(" %*");
    assertThat(lines.get(words + 1)).isEqualTo("exit /b %ERRORLEVEL%");
    int page = lines.indexOf(":page") + 1;
    assertThat(lines.subList(page + 1, page + 4))
        .containsExactly("set code=%ERRORLEVEL%", "if not %code%==0 pause", "exit /b %code%");
  }

  @Test
  void javaGetsTheFlagsOfTheOtherLaunchers() throws IOException {
    String start = Files.readString(SCRIPTS.resolve("start.sh"));
    String launch = start.substring(start.indexOf("run_hurdline() {"));
    List<String> flags =
        Pattern.compile("(?<= )-[XD][\\w:.+=-]+(?=[ \\n])")
            .matcher(launch)
            .results()
            .map(found -> found.group())
            .filter(flag -> !flag.startsWith("-XX:SharedArchive") && !flag.startsWith("-Xlog"))
            .distinct()
            .toList();
    assertThat(flags).contains("-Xmx1g", "-XX:+UseSerialGC", "-Dfile.encoding=UTF-8").hasSize(9);
    String set = lines().stream().filter(l -> l.startsWith("set \"flags=")).findAny().orElseThrow();
    for (String flag : flags) {
      assertThat(set).contains(flag);
    }
    assertThat(set.split(" -")).as("and no other").hasSameSizeAs(flags);
    for (String compiler : List.of("-XX:CompileThresholdScaling=10", "-XX:TieredStopAtLevel=1")) {
      assertThat(launch).contains(compiler);
      assertThat(text()).contains(compiler);
    }
  }
}
