package hurdline.command;

import hurdline.answer.RunAnswer;
import hurdline.sample.SampleAnswer;
import hurdline.service.PreparedStudy;
import hurdline.service.Studies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * Calls of the command on a plant file in a folder of its own, of engines that do as they are told.
 */
abstract class Calls {
  @TempDir Path dir;

  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();
  Path plant;

  @BeforeEach
  void aPlantFileLiesThere() throws IOException {
    plant = Files.writeString(dir.resolve("plant.yaml"), "hurdline: 1\n");
  }

  int call(Studies studies, String... args) {
    return Hurdline.call(
        new CommandContext(new PrintWriter(out, true), new PrintWriter(err, true), false, studies),
        args);
  }

  int call(PreparedStudy.Simulation<RunAnswer> engine, String... args) {
    return call(studies(engine), args);
  }

  int call(String... args) {
    return call((done, stop) -> Optional.of(SampleAnswer.year()), args);
  }

  /** An engine that takes any plant and effort and simulates as it is told. */
  static Studies studies(PreparedStudy.Simulation<RunAnswer> engine) {
    return new Simulating(engine, (chosen, effort) -> {});
  }

  static List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
