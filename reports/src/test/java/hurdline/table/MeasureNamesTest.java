package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MeasureNamesTest {
  private static List<String> askedFor() throws IOException {
    Path exact = Path.of(System.getProperty("hurdline.root"), "line-configs", "exact");
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(exact)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".expect.json")).toList()) {
        for (JsonElement check :
            JsonParser.parseString(Files.readString(file))
                .getAsJsonObject()
                .getAsJsonArray("checks")) {
          if (check.getAsJsonObject().has("measure")) {
            names.add(check.getAsJsonObject().get("measure").getAsString());
          }
        }
      }
    }
    return names;
  }

  /** In FORMAT.md the names that a user gives stand in capitals. */
  @Test
  void everyMeasureThatTheFormatReferenceListsHasAName() throws Exception {
    String page =
        Files.readString(Path.of(System.getProperty("hurdline.root"), "line-configs", "FORMAT.md"));
    String section =
        page.substring(page.indexOf("## Measures of the crop"), page.indexOf("## Settled"));
    List<String> rows = section.lines().filter(line -> line.startsWith("| `")).toList();
    assertThat(rows).hasSizeGreaterThan(7);
    assertThat(rows)
        .allSatisfy(
            row -> {
              MeasureName found =
                  Measure.find(row.split("`")[1]).orElseThrow(() -> new AssertionError(row));
              assertThat(row.contains("No dry twin.") || row.contains("drawn_over_mean"))
                  .as(row)
                  .isEqualTo(!found.measure().isMass());
            });
  }

  @Test
  void everyMeasureThatAnExactPlantAsksForHasAName() throws Exception {
    assertThat(askedFor())
        .hasSizeGreaterThan(100)
        .allSatisfy(name -> assertThat(Measure.find(name)).as(name).isPresent());
  }
}
