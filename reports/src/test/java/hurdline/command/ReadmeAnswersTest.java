package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the README says that a command answers is what it answers. */
class ReadmeAnswersTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));
  private static final int WIDTH = 80;
  private static final String CUT = "…";

  @TempDir Path dir;

  /** A row of the table of questions. */
  private record Row(List<String> call, String sentence) {}

  static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(ROOT.resolve("README.md"))) {
      String[] cells = line.split("\\|");
      if (cells.length == 4 && cells[2].contains("`scripts/hurdline ")) {
        String call = cells[2].strip().replace("`", "").replace("scripts/hurdline ", "");
        rows.add(new Row(List.of(call.split(" ")), cells[3].strip()));
      }
    }
    return rows;
  }

  @Test
  void theTableHasACommandForEveryQuestion() throws IOException {
    assertThat(rows()).hasSizeGreaterThan(7);
    assertThat(rows())
        .extracting(row -> row.call().get(0))
        .contains("run", "check", "compare", "yard", "season");
  }

  /** A line of its own with three points stands for lines left out. */
  @Test
  void thePrintedAnswerIsWhatTheFirstCommandPrints() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    String block = readme.substring(readme.indexOf("```\nSweetgum") + 4);
    List<String> parts =
        Arrays.stream(block.substring(0, block.indexOf("```")).split(CUT + "\n"))
            .map(String::strip)
            .toList();
    assertThat(parts).hasSizeGreaterThan(1).allMatch(part -> part.length() > 50);
    assertThat(answer(rows().get(0).call())).containsSubsequence(parts);
  }

  @ParameterizedTest
  @MethodSource("rows")
  @Tag("proof")
  void eachCommandAnswersWhatStandsBesideIt(Row row) {
    assertThat(answer(row.call()).replaceAll("\\s+", " ")).contains(row.sentence());
  }

  private String answer(List<String> call) {
    List<String> all = new ArrayList<>(call);
    all.replaceAll(word -> word.startsWith("line-configs/") ? ROOT.resolve(word).toString() : word);
    if (!call.get(0).equals("check")) {
      all.addAll(List.of("--out", dir.resolve("answer").toString()));
    }
    StringWriter out = new StringWriter();
    CommandContext terminal =
        new CommandContext(
            new PrintWriter(out, true),
            new PrintWriter(new StringWriter()),
            false,
            new EngineStudies(),
            Locale.ROOT,
            false,
            WIDTH);
    assertThat(Hurdline.call(terminal, all.toArray(String[]::new))).isZero();
    return out.toString();
  }
}
