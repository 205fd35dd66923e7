package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Records changed anywhere are read, with an entry for every row, or refused in words with the
 * file's name.
 */
class HostileRecordsTest {
  private static final Path SHIPPED =
      Path.of(System.getProperty("hurdline.root"), "line-configs/records");

  /** The bills of a year with their head. */
  private static final int SHORTEST = 13;

  private static final int CHANGED = 120;
  private static final String MARKS = "\",;\t\n\r'-/.:%0917AaZ \0\uFEFF#({[é";

  @TempDir private Path temp;

  @Test
  void whateverIsChangedIsReadOrRefusedInWords() throws Exception {
    Plant plant = Folder.plant();
    RandomStream stream = new RandomStreams(3).of(1, "hostile");
    Map<RecordKind, String> texts = new EnumMap<>(RecordKind.class);
    for (RecordKind kind : RecordKind.values()) {
      texts.put(
          kind,
          String.join("\n", Files.readAllLines(SHIPPED.resolve(kind.file())).subList(0, SHORTEST))
              + "\n");
      Files.writeString(temp.resolve(kind.file()), texts.get(kind));
    }
    int read = 0;
    for (int round = 0; round < CHANGED; round++) {
      RecordKind kind = RecordKind.values()[round % RecordKind.values().length];
      Files.writeString(temp.resolve(kind.file()), changed(texts.get(kind), stream));
      try {
        Records records = RecordsFolder.read(temp, plant);
        read++;
        assertThat(records.account().entries())
            .hasSize(records.account().rows().values().stream().mapToInt(Integer::intValue).sum());
      } catch (ProblemsException refused) {
        assertThat(refused.lines())
            .isNotEmpty()
            .allMatch(
                line -> line.matches("(?s)[a-z]+\\.csv(:\\d+)?: .*; expected .*"),
                "names the file");
      }
      Files.writeString(temp.resolve(kind.file()), texts.get(kind));
    }
    assertThat(read).as("most slips are one row's").isGreaterThan(CHANGED / 3);
  }

  /** Some letters put in, taken out or changed. */
  private static String changed(String text, RandomStream stream) {
    StringBuilder out = new StringBuilder(text);
    int slips = 1 + (int) (stream.next() * 6);
    for (int i = 0; i < slips; i++) {
      int at = (int) (stream.next() * out.length());
      char mark = MARKS.charAt((int) (stream.next() * MARKS.length()));
      double how = stream.next();
      if (how < 0.3) {
        out.deleteCharAt(at);
      } else if (how < 0.6) {
        out.insert(at, mark);
      } else {
        out.setCharAt(at, mark);
      }
    }
    return out.toString();
  }
}
