package hurdline.spark;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.SimulatedBlock;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.choose.BlockRunner;
import hurdline.study.choose.BlockStore;
import hurdline.study.choose.ChoiceChange;
import hurdline.study.choose.Choose;
import hurdline.study.choose.ChooseAsk;
import hurdline.study.choose.ChooseProgress;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Choices among plans of small plants, some of which make no plant. */
final class Chosen {
  private static final String OPEN =
      """

      choices:
        mill: {key: machines.mill.power, from: 10 hp, to: 60 hp, step: 5 hp}
        rest: {key: calendar.shifts.day.rests.0.lasts, values: [30 min, 20 h]}
        spout: {option: [base, second_spout]}
        never: [{mill: 10 hp, rest: 30 min}]
      """;

  final PlantFile file;
  final Choose choose;

  private Chosen(PlantFile file, PlantChanges changed, ChooseAsk ask) {
    this.file = file;
    PlantOrigin source =
        new PlantOrigin(file.variants(), file.texts().name(), file.contentHash(), "0", List.of());
    RunSettings effort = new RunSettings(6, Optional.empty(), 1, 2, Optional.empty());
    choose = new Choose(source, changed, file.choices(), ask, effort);
  }

  /** The plant to start from, for some days of March. */
  static Chosen overDays(int days) {
    String last = String.format(Locale.ROOT, "2027-03-%02d", days);
    String text = text("small.yaml").replace("2027-05-28", last);
    ChooseAsk ask =
        new ChooseAsk(
            List.of(new ChoiceChange("lines.stalk_line.steps.feeder.rate", List.of("x1", "x0.5"))),
            new IndifferenceZone("money.margin", 100, false, "money.margin:100 USD"),
            true,
            List.of(),
            List.of(20000.0),
            false,
            0,
            false);
    PlantChanges changed =
        new PlantChanges(
            "bigger_mill",
            List.of("resources.loader.count=2"),
            List.of(
                new Change.Named("bigger_mill"), new Change.Value("resources.loader.count", "2")));
    return new Chosen(PlantFile.of("small.yaml", text + OPEN), changed, ask);
  }

  /** The same plant for two days, of few plans that are judged in two stages. */
  static Chosen independent() {
    String text = text("small.yaml").replace("2027-05-28", "2027-03-02");
    ChooseAsk ask =
        new ChooseAsk(
            List.of(new ChoiceChange("machines.mill.power", List.of("15 hp", "25 hp", "40 hp"))),
            new IndifferenceZone("money.margin", 15, false, "money.margin:15 USD"),
            true,
            List.of(),
            List.of(),
            false,
            0,
            true);
    return new Chosen(PlantFile.of("small.yaml", text), PlantChanges.base(), ask);
  }

  /** A plant whose weather is that of a file. */
  static Chosen withRain() {
    String text = text("exact/station_rain.yaml");
    Map<String, String> rain = Map.of("station_rain.csv", text("exact/station_rain.csv"));
    ChooseAsk ask =
        new ChooseAsk(
            List.of(
                new ChoiceChange(
                    "deliveries.stalk.weather.wet_threshold", List.of("2 mm", "200 mm"))),
            new IndifferenceZone("mass.stalk.fed", 10, false, "mass.stalk.fed:10 kg"),
            false,
            List.of(),
            List.of(),
            false,
            0,
            false);
    return new Chosen(PlantFile.of("station.yaml", text, rain), PlantChanges.base(), ask);
  }

  private static String text(String name) {
    try {
      return Files.readString(Path.of(System.getProperty("hurdline.root"), "line-configs", name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What came of it: the answer, and each block to the bit. */
  record Found(Optional<ChooseAnswer> answer, Map<String, String> blocks) {}

  Found onThreads() {
    Kept kept = new Kept(block -> {});
    return new Found(choose.simulate(kept, SILENT, () -> false, () -> false), kept.bits());
  }

  Found on(BlockRunner runner, Kept kept, BooleanSupplier stop) {
    return new Found(choose.simulate(runner, kept, SILENT, stop, () -> false), kept.bits());
  }

  /** Blocks in memory, each of which comes once. */
  static final class Kept implements BlockStore {
    private final Map<String, SimulatedBlock> all = new TreeMap<>();
    private final Consumer<SimulatedBlock> told;

    Kept(Consumer<SimulatedBlock> told) {
      this.told = told;
    }

    @Override
    public Optional<SimulatedBlock> kept(int stage, int number) {
      return Optional.ofNullable(all.get(stage + " " + number));
    }

    @Override
    public void keep(SimulatedBlock block) {
      assertThat(all.put(block.stage() + " " + block.number(), block)).isNull();
      told.accept(block);
    }

    int count() {
      return all.size();
    }

    private Map<String, String> bits() {
      Map<String, String> bits = new TreeMap<>();
      all.forEach((name, block) -> bits.put(name, Arrays.toString(BlockBytes.of(block))));
      return bits;
    }
  }

  private static final ChooseProgress SILENT =
      new ChooseProgress() {
        @Override
        public void done(int done, int of) {
          assertThat(done).isBetween(1, of);
        }

        @Override
        public void stage(Stage said) {}
      };
}
