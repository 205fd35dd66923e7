package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What people read is in the field's words: string literals of all modules, plant files, and the
 * pages beside them.
 */
class FieldWordsTest {
  private static final Path ROOT =
      Path.of(System.getProperty("hurdline.root", "..")).toAbsolutePath().normalize();

  /** Words that the field has better ones for, and which. */
  private static final List<Old> OLD =
      List.of(
          old("\\bplay(s|ed|ing)?\\b", "simulate, run"),
          old("\\btold apart\\b|\\btells? apart\\b|\\btold from\\b", "significant difference"),
          old("\\bholders?\\b", "bottleneck"),
          old("\\bthe same chance\\b|\\ball chance\\b", "the same random draws"),
          old("\\bon paper\\b", "rated capacity"),
          old("\\bhangs? on\\b", "depends on, sensitivity"),
          old("\\bworth nothing\\b", "break-even"),
          old("\\banew\\b", "again"),
          old("\\bscreen swaps?\\b", "screen change"),
          old("\\bnot said\\b", "not available"),
          old("\\badded up\\b", "in total"),
          old("\\btenth more\\b", "10 % more"),
          old("\\bon the mean\\b", "on average"),
          old(
              "\\bnine (years )?in ten\\b|\\bnine years of ten\\b|\\b9 of 10 lives\\b|\\bhalf below\\b",
              "5th to 95th percentile, median"),
          old(
              "\\b(holds?|held) (the|a|its|each) (\\w+ )?line\\b|^\"holds \"$",
              "limits, is the bottleneck"),
          old("\\bworth at its end\\b", "salvage value"),
          old("\\bnot earned\\b", "margin forgone"),
          old("\\bwithout chance\\b", "without randomness"),
          old("\\bas ever\\b|\\bof itself\\b|\\bso many (lives|seasons|years)\\b", "nothing"),
          old("\\bstand(s|ing)? down\\b", "send home"),
          old("\\b(lab|col|neighb)our", "American spelling"));

  /**
   * Former keys of the plant file; in code they stand where the reader names what took their place.
   */
  private static final List<Old> FORMER_KEYS =
      List.of(
          old("\\bstand_down\\b", "send_home"),
          old("\\bset_on_table\\b", "lift"),
          old("\\bpaid_at\\b", "moisture_basis"),
          old("\\bcomposition_spread\\b", "composition_cv"),
          old(
              "money\\.(growth|crops|discount)\\b",
              "money.escalation, .crop_prices, .discount_rate"),
          old(
              "`(hold at field|turn away|while up|with flow|oldest first)`",
              "the words with hyphens"));

  /** Places that may keep a word, each with its reason. */
  private static final List<String> ALLOWED = List.of("a web page that is on paper");

  /** A text block, or a string in one line. */
  private static final Pattern LITERAL =
      Pattern.compile("\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);

  private record Old(Pattern pattern, String instead) {}

  private static Old old(String pattern, String instead) {
    return new Old(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE), instead);
  }

  @Test
  void noStringThatPeopleReadHasAnOldWord() throws IOException {
    var found = new TreeSet<String>();
    for (String module : List.of("shared", "sim-core", "reports")) {
      for (Path file : files(ROOT.resolve(module).resolve("src/main/java"), ".java")) {
        Matcher literal = LITERAL.matcher(withoutComments(Files.readString(file)));
        while (literal.find()) {
          note(found, file, literal.group());
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void noPageThatPeopleReadHasAnOldWord() throws IOException {
    var found = new TreeSet<String>();
    for (String page :
        List.of(
            "README.md",
            "line-configs/FORMAT.md",
            "line-configs/SEASONS.md",
            "line-configs/README.md",
            "line-configs/PROOF.md",
            "line-configs/plant.schema.json")) {
      for (String line : Files.readAllLines(ROOT.resolve(page))) {
        note(found, ROOT.resolve(page), line);
        note(FORMER_KEYS, found, ROOT.resolve(page), line);
      }
    }
    for (Path file : files(ROOT.resolve("line-configs"), ".yaml")) {
      if (!file.startsWith(ROOT.resolve("line-configs/target"))) {
        for (String line : Files.readAllLines(file)) {
          note(found, file, line);
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void anOldWordIsSeen() {
    var found = new TreeSet<String>();
    note(found, ROOT.resolve("x"), "the two are not told apart");
    assertThat(found).hasSize(1);
  }

  private static void note(TreeSet<String> found, Path file, String text) {
    note(OLD, found, file, text);
  }

  private static void note(List<Old> words, TreeSet<String> found, Path file, String text) {
    for (Old old : words) {
      if (old.pattern().matcher(text).find() && ALLOWED.stream().noneMatch(text::contains)) {
        found.add(ROOT.relativize(file) + ": \"" + text.strip() + "\"; better: " + old.instead());
      }
    }
  }

  private static String withoutComments(String code) {
    return code.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
  }

  private static List<Path> files(Path below, String ending) throws IOException {
    try (Stream<Path> walk = Files.walk(below)) {
      return walk.filter(path -> path.toString().endsWith(ending))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
