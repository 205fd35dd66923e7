package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.RunAnswer;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.TestPlant;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Shipped plants asked as a verb would ask them. */
public final class Studied {
  public static final Path EXAMPLE = Path.of("../line-configs/sweetgum-bend.yaml");
  public static final Path SMALL = Path.of("../line-configs/small.yaml");
  static final Path STALK = Path.of("../line-configs/stalk.yaml");

  private Studied() {}

  public static PlantOrigin source(Path path) {
    PlantFile file = PlantFile.read(path);
    String name = path.getFileName().toString();
    return new PlantOrigin(file.variants(), name, file.contentHash(), "0", file.warnings());
  }

  /** The small plant's first four weeks: a life of an option simulates dozens of calendars. */
  public static PlantOrigin fourWeeks() {
    return fourWeeks("", "");
  }

  /** The same with other words in place of some that are there. */
  public static PlantOrigin fourWeeks(String from, String to) {
    String text = text(SMALL);
    assertThat(text).contains(from);
    PlantFile file =
        PlantFile.of("small.yaml", text.replace("2027-05-28", "2027-03-26").replace(from, to));
    return new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", file.warnings());
  }

  private static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static PlantOrigin source(TestPlant plant) {
    PlantFile file = plant.file();
    return new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", file.warnings());
  }

  public static PlantChanges option(String option) {
    List<Change> changes =
        Arrays.stream(option.split("\\+")).<Change>map(Change.Named::new).toList();
    return new PlantChanges(option, List.of(), changes);
  }

  public static PlantChanges set(String path, String value) {
    return new PlantChanges(
        PlantChanges.baseName(),
        List.of(path + "=" + value),
        List.of(new Change.Value(path, value)));
  }

  /**
   * The small plant's first days alone: a replication of it takes a fraction of a millisecond a
   * day.
   */
  public static PlantChanges smallUntil(String lastDay) {
    List<Change> changes =
        List.of(new Change.Value("calendar.to", lastDay), new Change.Value("season.0.to", lastDay));
    return new PlantChanges(PlantChanges.baseName(), List.of(), changes);
  }

  /** Of these options, with two lives of each. */
  public static CompareAsk ask(String... among) {
    return new CompareAsk(
        List.of(among),
        OptionalDouble.empty(),
        OptionalInt.of(2),
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  public static RunSettings effort(int replications, int threads) {
    return new RunSettings(replications, Optional.empty(), 1, threads, Optional.empty());
  }

  /** One replication of a plant. */
  public static ReplicationResults simulated(Plant plant) {
    return new ReplicationBudget(effort(1, 1), (done, of) -> {}, () -> false)
        .whole(CompiledPlant.of(plant), 1)
        .orElseThrow();
  }

  public static RunAnswer run(Path path, PlantChanges chosen, RunSettings effort) {
    return run(source(path), chosen, effort);
  }

  public static RunAnswer run(PlantOrigin plant, PlantChanges chosen, RunSettings effort) {
    return new Run(plant, chosen, effort).simulate((done, of) -> {}, () -> false).orElseThrow();
  }

  public static RunAnswer run(Path path, RunSettings effort) {
    return run(path, PlantChanges.base(), effort);
  }
}
