package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.EventKind;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is left out because it cannot have changed, and packages that are counted instead of
 * simulated, against the twin that works out everything at every solve and simulates every package.
 *
 * <p>Both carry the same amounts; they differ in when a due time was last worked out, hence by the
 * clock's grain and by which of two events within one microsecond came first: 1e-9 of an hour or a
 * tonne is allowed, and 1e-9 of the value.
 */
class ShortCutsTest {
  private static final double GRAIN = 1e-9;

  static List<Path> plants() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("../line-configs"), 2)) {
      return files
          .filter(p -> p.toString().endsWith(".yaml") && !p.toString().contains("wrong"))
          .filter(p -> !p.toString().contains("records"))
          .filter(p -> !p.toString().contains("target"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("plants")
  void theShortCutsGiveWhatThePlainWayGives(Path file) {
    Plant plant = PlantFile.read(file).plant();
    assertSame(outcome(plant, true, 1), outcome(plant, false, 1));
  }

  /** Bins full, empty and shut, returns and splits, by chance. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void theShortCutsGiveThePlainMonthOfAnyLine(long seed) {
    for (long part = 0; part < 5; part++) {
      Plant plant = new AnyLine(AnyLine.Kind.RANDOM, 100 * seed + part).plant();
      assertSame(outcome(plant, true, 1), outcome(plant, false, 1));
    }
  }

  /**
   * When the saw stops, the mill takes the room that it leaves in the cyclone, with the bin between
   * full and empty.
   */
  @Test
  void aSharedMachineLetsOneStretchFeelTheOther() {
    Plant plant =
        TestPlant.oneLine()
            .days(31)
            .says("components", "[hurd, fines]")
            .says(
                "crops", "{stalk: {bale: {mass: 500 kg}, composition: {hurd: 60 %, fines: 40 %}}}")
            .says(
                "machines",
                """
                feeder: {kind: bale-feeder}
                saw: {kind: separating-saw, stops: {choke: {every: {exponential: {mean: 2 h}}, counted: running, lasts: 20 min}}}
                store: {kind: bin, holds: 60 t}
                shaker: {kind: conveyor, stops: {jam: {every: {exponential: {mean: 3 h}}, counted: running, lasts: 40 min}}}
                dust_cyclone: {kind: cyclone, collects: 100 %}
                """)
            .says("products", "{hurd_pile: {}, dust: {}}")
            .steps(
                """
                feeder: {rate: 4 t/h, to: saw}
                saw: {rate: 4 t/h, outlets: [{to: dust_cyclone, takes: {fines: 50 %}}, {to: store}]}
                store: {to: shaker}
                shaker: {rate: 5 t/h, outlets: [{to: dust_cyclone, takes: {fines: 60 %}}, {to: hurd_pile}]}
                dust_cyclone: {rate: 1 t/h, to: dust}
                """)
            .plant();
    Outcome plain = outcome(plant, true, 1);
    assertSame(plain, outcome(plant, false, 1));
    assertThat(plain.values()[column(plain, "machine.shaker.hours.slowed")]).isGreaterThan(100);
    assertThat(plain.values()[column(plain, "machine.shaker.hours.full_rate")]).isGreaterThan(10);
  }

  @Test
  void whoeverFollowsTheTraceSeesTheSameYear() {
    Plant plant = PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml")).plant();
    int[] packages = new int[1];
    Outcome traced =
        Ready.replication(plant)
            .run(
                new RandomStreams(3),
                2,
                (clockS, where, what, amount) ->
                    packages[0] += what == EventKind.PACKAGE_FULL ? 1 : 0);
    Outcome alone = Ready.replication(plant).run(new RandomStreams(3), 2, null);
    assertSame(traced, alone);
    assertThat(packages[0]).isGreaterThan(30_000);
    for (int k = 0; k < alone.columns().size(); k++) {
      String name = alone.columns().get(k).name();
      if (name.startsWith("product.") && name.endsWith(".packages")) {
        packages[0] -= (int) alone.values()[k];
      }
    }
    assertThat(packages[0]).as("packages seen less packages counted").isZero();
  }

  /**
   * A press whose change takes longer than a package can take to fill is no easy filler, and is
   * simulated.
   */
  @Test
  void aSlowChangeIsSimulated() {
    Plant slow =
        PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml"))
            .variants()
            .with(new Change.Value("packages.lint_bale.change", "9 min"));
    Outcome plain = outcome(slow, true, 1);
    assertSame(plain, outcome(slow, false, 1));
    int column = column(plain, "machine.bale_press.hours.changing");
    assertThat(plain.values()[column]).isGreaterThan(10);
  }

  @Test
  void theComparisonNoticesAnotherChance() {
    Plant plant = PlantFile.read(Path.of("../line-configs/stalk.yaml")).plant();
    assertThat(differences(outcome(plant, true, 1), outcome(plant, false, 2))).isNotEmpty();
  }

  private static int column(Outcome outcome, String name) {
    List<String> names = outcome.columns().stream().map(Outcome.Column::name).toList();
    assertThat(names).contains(name);
    return names.indexOf(name);
  }

  private static Outcome outcome(Plant plant, boolean plainly, int number) {
    Replication one = Ready.replication(plant);
    if (plainly) {
      one.withoutShortCuts();
    }
    return one.run(new RandomStreams(7), number, null);
  }

  private static void assertSame(Outcome plain, Outcome quick) {
    assertThat(differences(plain, quick)).isEmpty();
    assertThat(Arrays.deepEquals(plain.levels(), quick.levels())).as("yard levels").isTrue();
  }

  private static List<String> differences(Outcome plain, Outcome quick) {
    Stream.Builder<String> all = Stream.builder();
    for (int k = 0; k < plain.values().length; k++) {
      differ(plain.columns().get(k).name(), plain.values()[k], quick.values()[k], all);
    }
    differ("week", plain.weeks(), quick.weeks(), all);
    differ("month", plain.months(), quick.months(), all);
    return all.build().toList();
  }

  private static void differ(
      String what, double[][] plain, double[][] quick, Stream.Builder<String> to) {
    for (int period = 0; period < plain.length; period++) {
      for (int k = 0; k < plain[period].length; k++) {
        differ(what + " " + period + " column " + k, plain[period][k], quick[period][k], to);
      }
    }
  }

  private static void differ(String what, double plain, double quick, Stream.Builder<String> to) {
    boolean same =
        Double.compare(plain, quick) == 0
            || Math.abs(plain - quick) <= GRAIN * Math.max(1, Math.abs(plain));
    if (!same) {
      to.add(what + ": " + plain + " and " + quick);
    }
  }
}
