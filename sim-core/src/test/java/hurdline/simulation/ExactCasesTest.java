package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.Yaml;

/** Plants without randomness whose figures follow by hand: each {@code NAME.md} says how. */
class ExactCasesTest {
  private static final Path CASES = Path.of("../line-configs/exact");

  static List<String> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files
          .map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".expect.json"))
          .map(n -> n.substring(0, n.length() - ".expect.json".length()))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void thePlantGivesTheFiguresThatFollowByHand(String name) {
    List<String> wrong = new ArrayList<>();
    assertThat(compare(name, wrong)).isPositive();
    if (!wrong.isEmpty()) {
      fail(name + "\n" + String.join("\n", wrong));
    }
  }

  /**
   * What one replication leaves behind must not be seen by the next: the same objects give the same
   * again.
   */
  @ParameterizedTest
  @MethodSource("cases")
  void theSameObjectsGiveTheSameAgain(String name) {
    Plant plant = PlantFile.read(CASES.resolve(name.replaceFirst("@.*", "") + ".yaml")).plant();
    Replication replication = Ready.replication(plant);
    double[] first = replication.run(new RandomStreams(1), 1, null).values().clone();
    assertThat(replication.run(new RandomStreams(1), 1, null).values()).containsExactly(first);
  }

  /**
   * Simulates a plant and looks at its figures.
   *
   * @param wrong filled with those that are not as by hand
   * @return how many there are
   */
  static int compare(String name, List<String> wrong) {
    Map<String, Object> expected = json(CASES.resolve(name + ".expect.json"));
    String option = (String) expected.get("option");
    Change[] changes =
        option == null
            ? new Change[0]
            : Stream.of(option.split("\\+")).map(Change.Named::new).toArray(Change[]::new);
    Plant plant =
        PlantFile.read(CASES.resolve((String) expected.get("plant"))).variants().with(changes);
    Map<String, Double> values = measures(plant, 1);
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> checks = (List<Map<String, Object>>) expected.get("checks");
    for (Map<String, Object> check : checks) {
      String measure = (String) check.get("measure");
      double value = ((Number) check.get("value")).doubleValue();
      double tolerance =
          check.containsKey("rel")
              ? ((Number) check.get("rel")).doubleValue() * Math.abs(value)
              : ((Number) check.get("abs")).doubleValue();
      Double got = values.get(measure);
      if (got == null || !(Math.abs(got - value) <= tolerance)) {
        wrong.add(measure + ": expected " + value + " but was " + got);
      }
    }
    return checks.size();
  }

  static Map<String, Double> measures(Plant plant, int replication) {
    Outcome outcome = Ready.replication(plant).run(new RandomStreams(1), replication, null);
    Map<String, Double> values = new HashMap<>();
    for (int k = 0; k < outcome.values().length; k++) {
      values.put(outcome.columns().get(k).name(), outcome.values()[k]);
    }
    return values;
  }

  private static Map<String, Object> json(Path file) {
    try {
      return new Yaml().load(Files.readString(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
