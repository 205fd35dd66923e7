package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules of the house that can be read off the files, without a compiler. */
class HouseTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));
  private static final List<String> TRACKED = tracked();
  private static final int LONGEST_FILE = 400;
  private static final int LONG_FILE = 300;

  @Test
  void theFilesAreFound() {
    assertThat(javaOf("main")).hasSizeGreaterThan(40);
    assertThat(javaOf("test")).hasSizeGreaterThan(10);
  }

  @Test
  void noMainFileIsLongerThanTheHouseAllows() {
    assertThat(javaOf("main")).filteredOn(file -> lines(file) > LONGEST_FILE).isEmpty();
  }

  @Test
  void aLongFileSaysWhyItIsOne() {
    assertThat(javaOf("main"))
        .filteredOn(file -> lines(file) > LONG_FILE)
        .isNotEmpty()
        .allMatch(file -> text(file).contains("One file because"));
    assertThat(javaOf("main"))
        .filteredOn(file -> text(file).contains("One file because"))
        .allMatch(file -> lines(file) > LONG_FILE - 50);
  }

  @Test
  void everyPackageSaysWhatItIsFor() {
    var packages = new TreeSet<String>();
    javaOf("main").forEach(file -> packages.add(file.substring(0, file.lastIndexOf('/'))));
    var odd = new TreeMap<String, Integer>();
    for (String folder : packages) {
      int words = wordsOf(folder + "/package-info.java");
      if (words < 40 || words > 120) odd.put(folder, words);
    }
    assertThat(odd).as("words in package-info, 40 to 120 wanted, 0 where there is none").isEmpty();
  }

  /** A factor that stands twice can be mended once. */
  @Test
  void factorsOfUnitsStandInOneFile() {
    String factors =
        "(?<![0-9])(0\\.45359|0\\.3048|907\\.18|4046\\.8|745\\.69|0\\.0254|0\\.0283168|0\\.0929)";
    assertThat(having(javaOf("main"), factors))
        .isNotEmpty()
        .allMatch(found -> found.contains("/FileUnit.java: "));
  }

  @Test
  void noTestIsSwitchedOff() {
    assertThat(having(javaOf("test"), "@Dis" + "abled")).isEmpty();
  }

  /**
   * One class starts threads, so one place decides how many there are and how they end; Ctrl-C
   * comes on a thread of Java's own.
   */
  @Test
  void onlyTheReplicationRunnerStartsThreads() {
    String starts =
        "new Thread\\b|extends Thread\\b|ofVirtual|ofPlatform|\\bExecutors?\\b|ExecutorService|ThreadPoolExecutor|CompletableFuture|ForkJoin"
            + "|\\bparallel\\(\\)|parallelStream|\\bTimer\\b|sun\\.misc\\.Signal\\b";
    assertThat(having(javaOf("main"), starts))
        .extracting(found -> found.replaceAll(".*/(\\w+)\\.java: .*", "$1"))
        .containsExactlyInAnyOrder("ReplicationRunner", "StopRequest");
  }

  @Test
  void nothingIsSignedOrDated() {
    assertThat(having(javaOf(""), "@au" + "thor\\b|@si" + "nce\\b")).isEmpty();
  }

  @Test
  void noTypeHasANameThatSaysNothing() {
    var empty =
        Pattern.compile(
            "(?i)(^|/)(util|utils|common|helpers?|managers?)/|(Util|Utils|Common|Helper|Manager)\\.java$");
    assertThat(javaOf("")).filteredOn(file -> empty.matcher(file).find()).isEmpty();
  }

  @Test
  void noFileNamesAFolderOfSomeonesMachine() {
    String homes =
        "/ho" + "me/\\w|/Us" + "ers/\\w|\\\\Us" + "ers\\\\|(^|[\\s\"'(=:])/wo" + "rk/\\w";
    assertThat(having(TRACKED, homes + "|" + Pattern.quote(ROOT.toString() + "/"))).isEmpty();
  }

  @Test
  void noPomNamesAServerToFetchFrom() {
    var poms = matching(file -> file.endsWith("pom.xml"));
    assertThat(poms).hasSize(6);
    assertThat(having(poms, "<(repositor|pluginRepositor|mirror|distributionManagement)"))
        .isEmpty();
  }

  /** Its module is built in its own profile, so no class path of these tests holds it. */
  @Test
  void sparkIsKnownInItsOwnModuleAlone() {
    String spark = "org\\.apache\\.spark|\\bimport scala\\.";
    assertThat(having(javaOf(""), spark))
        .hasSizeGreaterThan(2)
        .allMatch(found -> found.startsWith("sim-core/on-spark/"));
    assertThat(having(matching(file -> file.endsWith("pom.xml")), "org\\.apache\\.spark"))
        .singleElement()
        .asString()
        .startsWith("sim-core/on-spark/pom.xml");
    assertThat(text("pom.xml").replaceAll("(?s)<profile>.*?</profile>", ""))
        .contains("<module>sim-core</module>")
        .doesNotContain("on-spark");
  }

  /** As the table of walls says it for the rooms that are always built. */
  @Test
  void theRoomThatKnowsSparkUsesWhatItNeeds() {
    var used = new TreeSet<String>();
    matching(file -> file.startsWith("sim-core/on-spark/src/main/java/"))
        .forEach(
            file ->
                text(file)
                    .lines()
                    .filter(line -> line.startsWith("import "))
                    .map(line -> line.replaceAll("import (static )?|\\.[A-Z].*", ""))
                    .forEach(used::add));
    assertThat(used)
        .filteredOn(room -> room.startsWith("hurdline"))
        .containsExactly(
            "hurdline.answer",
            "hurdline.plant",
            "hurdline.plant.yaml",
            "hurdline.problem",
            "hurdline.study",
            "hurdline.study.choose",
            "hurdline.study.replicate");
    assertThat(used)
        .filteredOn(room -> !room.startsWith("hurdline"))
        .allMatch(
            room ->
                room.matches(
                    "(java\\.(io|net|nio\\.charset|security|util)|org\\.apache\\.spark|scala).*"));
  }

  @Test
  void theReadmesCommandsAreThereAndCanBeRun() {
    String readme = text("README.md");
    for (String script : List.of("scripts/hurdline", "scripts/test")) {
      assertThat(readme).contains(script);
      assertThat(ROOT.resolve(script)).isExecutable();
    }
  }

  /** A second grammar would read "2e1 hp" or "0x10" otherwise than the first. */
  @Test
  void numbersOfUsersAreReadInOnePlace() {
    assertThat(
            having(
                javaOf("main"),
                "Double\\.(parseDouble|valueOf)\\(|new Scanner\\(|NumberFormat.*parse\\("))
        .as("a table of the program's own is the one exception")
        .singleElement()
        .asString()
        .contains("table/Proof.java");
  }

  private static List<String> javaOf(String kind) {
    return matching(file -> file.endsWith(".java") && file.contains("/src/" + kind));
  }

  private static List<String> matching(Predicate<String> wanted) {
    return TRACKED.stream().filter(wanted).toList();
  }

  /** Files in which the pattern is found, each with the first line that has it. */
  private static List<String> having(List<String> files, String pattern) {
    var wanted = Pattern.compile(pattern);
    var found = new ArrayList<String>();
    for (String file : files) {
      text(file)
          .lines()
          .filter(line -> wanted.matcher(line).find())
          .findFirst()
          .ifPresent(line -> found.add(file + ": " + line.strip()));
    }
    return found;
  }

  private static int wordsOf(String packageInfo) {
    if (!TRACKED.contains(packageInfo)) return 0;
    String comment =
        text(packageInfo).replaceAll("(?s)\\*/.*", "").replaceAll("<[^>]*>|[/*{}]", " ");
    return (int) Stream.of(comment.split("\\s+")).filter(word -> !word.isBlank()).count();
  }

  /** Bytes that are no UTF-8, as in a font, read as Latin-1: only ASCII is searched for. */
  private static String text(String file) {
    try {
      return Files.readString(ROOT.resolve(file), StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> tracked() {
    try {
      var git =
          new ProcessBuilder("git", "-c", "safe.directory=*", "ls-files", "-z")
              .directory(ROOT.toFile())
              .start();
      String names = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return Stream.of(names.split("\0"))
          .filter(name -> Files.isRegularFile(ROOT.resolve(name)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lines with something on them, imports left out. */
  private static long lines(String file) {
    return text(file)
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("import "))
        .count();
  }
}
