package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import hurdline.measure.Measure;
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

  @Test
  void everyMeasureThatAnExactPlantAsksForHasAName() throws Exception {
    assertThat(askedFor())
        .hasSizeGreaterThan(100)
        .allSatisfy(name -> assertThat(Measure.find(name)).as(name).isPresent());
  }
}
