package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** The plant with every key, one thing of it changed. */
record Edited(String text) {
  private static final Pattern PLACE =
      Pattern.compile("^p\\.yaml:([0-9]+):[0-9]+ (?:[^ :]*\\.)?([a-z_]+)(?:\\.[0-9]+)*:");

  static Edited plantFile() {
    try (InputStream in = Edited.class.getResourceAsStream("every-key.yaml")) {
      return new Edited(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts the new text where the old one stands, which must be in one place only. */
  static Edited with(String old, String now) {
    return plantFile().and(old, now);
  }

  Edited and(String old, String now) {
    int at = text.indexOf(old);
    assertThat(at).as("the file has \"%s\"", old).isNotNegative();
    assertThat(text.indexOf(old, at + 1)).as("\"%s\" stands there once", old).isNegative();
    return new Edited(text.replace(old, now));
  }

  /** The number of the one line that holds this. */
  int line(String words) {
    List<String> lines = text.lines().toList();
    List<Integer> holding =
        IntStream.range(0, lines.size())
            .filter(at -> lines.get(at).contains(words))
            .mapToObj(at -> at + 1)
            .toList();
    assertThat(holding).as("lines with \"%s\"", words).hasSize(1);
    return holding.get(0);
  }

  /**
   * A problem or warning without its place, after a look that the place is right: the line named
   * holds the last name of the path.
   */
  String placed(String said) {
    Matcher place = PLACE.matcher(said);
    assertThat(place.find()).as(said).isTrue();
    String line =
        text.lines().skip(Integer.parseInt(place.group(1)) - 1L).findFirst().orElseThrow();
    assertThat(line).as(said).contains(place.group(2));
    return said.replaceFirst(":[0-9]+:[0-9]+ ", " ");
  }

  PlantFile read() {
    return PlantFile.of("p.yaml", text);
  }

  Plant plant() {
    return read().plant();
  }

  List<String> problems() {
    try {
      read();
      return List.of();
    } catch (ProblemsException e) {
      return e.lines();
    }
  }

  /** The only problem, its place left out. */
  void saysOnly(String problem) {
    List<String> said =
        problems().stream()
            .map(line -> line.replaceFirst("^p\\.yaml(:[0-9]+:[0-9]+)? ?", ""))
            .toList();
    assertThat(said).containsExactly(problem);
  }

  /** The only problem, at the line that holds this text. */
  void saysOnlyAt(String held, String problem) {
    saysOnly(problem);
    int line =
        1 + (int) text.substring(0, text.indexOf(held)).chars().filter(c -> c == '\n').count();
    assertThat(problems()).allSatisfy(said -> assertThat(said).startsWith("p.yaml:" + line + ":"));
  }
}
