package hurdline.study;

import hurdline.answer.RunAnswer;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Shipped plants asked as a verb would ask them. */
final class Studied {
  static final Path EXAMPLE = Path.of("../line-configs/sweetgum-bend.yaml");
  static final Path SMALL = Path.of("../line-configs/small.yaml");
  static final Path STALK = Path.of("../line-configs/stalk.yaml");

  private Studied() {}

  static Source source(Path path) {
    PlantFile file = PlantFile.read(path);
    String name = path.getFileName().toString();
    return new Source(file.variants(), name, file.contentHash(), "0", file.warnings());
  }

  static Chosen option(String option) {
    List<Change> changes =
        Arrays.stream(option.split("\\+")).<Change>map(Change.Named::new).toList();
    return new Chosen(option, List.of(), changes);
  }

  static Chosen set(String path, String value) {
    return new Chosen(
        Chosen.BASE, List.of(path + "=" + value), List.of(new Change.Value(path, value)));
  }

  /** The small plant's first days alone: a replication of it takes a fraction of a millisecond a day. */
  static Chosen smallUntil(String lastDay) {
    List<Change> changes =
        List.of(new Change.Value("calendar.to", lastDay), new Change.Value("season.0.to", lastDay));
    return new Chosen(Chosen.BASE, List.of(), changes);
  }

  /** Of these options, with two lives of each. */
  static CompareAsk ask(String... among) {
    return new CompareAsk(
        List.of(among), OptionalDouble.empty(), OptionalInt.of(2), false, Optional.empty(), List.of(), Optional.empty());
  }

  static Effort effort(int replications, int threads) {
    return new Effort(replications, Optional.empty(), 1, threads, Optional.empty());
  }

  static RunAnswer run(Path path, Chosen chosen, Effort effort) {
    return new Run(source(path), chosen, effort).play((done, of) -> {}, () -> false).orElseThrow();
  }

  static RunAnswer run(Path path, Effort effort) {
    return run(path, Chosen.base(), effort);
  }
}
