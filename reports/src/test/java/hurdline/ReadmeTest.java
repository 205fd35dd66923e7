package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What the README shows is what there is: its first plant is what is written, its commands and
 * files exist.
 */
class ReadmeTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));

  /** {@code CommandTest} holds that what {@code new} writes is right and runs at once. */
  @Test
  void theFirstPlantComesFromNewAndIsThenCheckedAndRun() throws IOException {
    assertThat(readme())
        .containsSubsequence(
            "`scripts/hurdline new my-plant`",
            "`scripts/hurdline check my-plant/small.yaml`",
            "`scripts/hurdline run my-plant/small.yaml`");
    assertThat(Files.readString(ROOT.resolve("line-configs/small.yaml"))).contains(block("yaml"));
    assertThat(PlantFile.read(ROOT.resolve("line-configs/small.yaml")).plant().name()).isNotEmpty();
  }

  @Test
  void itsTwoCommandsCanBeRun() throws IOException {
    List<String> commands = block("sh").lines().toList();
    assertThat(commands).hasSize(2);
    for (String command : commands) {
      String[] words = command.split(" ");
      assertThat(ROOT.resolve(words[0])).isExecutable();
      if (words.length > 1) assertThat(PlantFile.read(ROOT.resolve(words[2])).plant()).isNotNull();
    }
  }

  @Test
  void theFilesItNamesAreThere() throws IOException {
    Matcher name =
        Pattern.compile("`((?:line-configs|scripts)/[\\w./-]+|[A-Z]+(?:\\.md)?)[^`]*`")
            .matcher(readme());
    int names = 0;
    for (; name.find(); names++) assertThat(ROOT.resolve(name.group(1))).exists();
    assertThat(names).isGreaterThan(5);
  }

  private static String block(String language) throws IOException {
    Matcher block = Pattern.compile("(?s)```" + language + "\n(.*?)```").matcher(readme());
    assertThat(block.find()).as("a block of " + language).isTrue();
    return block.group(1);
  }

  private static String readme() throws IOException {
    return Files.readString(ROOT.resolve("README.md"));
  }
}
