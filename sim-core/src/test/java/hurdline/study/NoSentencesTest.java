package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Studies give facts; all sentences are made where the reader's units and marks are known. */
class NoSentencesTest {
  private static final Path STUDIES = Path.of("src/main/java/hurdline/study");
  private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*\"");
  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\n]*", Pattern.DOTALL);
  private static final Pattern SENTENCE = Pattern.compile("\\b[a-z]+ [a-z]+ [a-z]+\\b");
  private static final Pattern MESSAGE =
      Pattern.compile("Exception\\(|refuse\\(|refusal\\(|wrong\\(|problem\\(|unlike\\(");

  private static List<String> sentences(String source) {
    String code = COMMENT.matcher(source).replaceAll("");
    String masked =
        LITERAL
            .matcher(code)
            .replaceAll(found -> "\"" + "x".repeat(found.group().length() - 2) + "\"");
    List<String> found = new ArrayList<>();
    int from = 0;
    while (from < code.length()) {
      int end = masked.indexOf(';', from);
      int to = end < 0 ? code.length() : end + 1;
      String statement = code.substring(from, to);
      if (!MESSAGE.matcher(masked.substring(from, to)).find()) {
        Matcher literal = LITERAL.matcher(statement);
        while (literal.find()) {
          if (SENTENCE.matcher(literal.group()).find()) {
            found.add(literal.group());
          }
        }
      }
      from = to;
    }
    return found;
  }

  @Test
  void noStudyWritesASentence() throws IOException {
    try (Stream<Path> files = Files.walk(STUDIES)) {
      List<Path> all = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(all).hasSizeGreaterThan(80);
      for (Path file : all) {
        assertThat(sentences(Files.readString(file))).as(file.toString()).isEmpty();
      }
    }
  }

  @Test
  void aSentenceIsSeenAndAMessageIsNot() {
    assertThat(
            sentences(
                "notes.add(\"Wet bales heat and rot; beware\"); // so it goes\nreturn \"a-b\";"))
        .hasSize(1);
    assertThat(
            sentences(
                "throw source.refusal(\"the file has no options\", \"an entry under options\");"))
        .isEmpty();
  }
}
