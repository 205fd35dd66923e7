package hurdline.study.choose;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.SimulatedBlock;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A plan whose very first year hangs, when nothing is known yet of how long a year takes. */
class HungYearTest {
  private static final double LEAST_S = 0.08;
  private static final long SEED = 6;
  private static final BlockStore NOTHING_KEPT =
      new BlockStore() {
        @Override
        public Optional<SimulatedBlock> kept(int stage, int number) {
          return Optional.empty();
        }

        @Override
        public void keep(SimulatedBlock block) {}
      };
  private static final ChooseProgress SILENT =
      new ChooseProgress() {
        @Override
        public void done(int done, int of) {}

        @Override
        public void stage(Stage said) {}
      };

  private final AtomicInteger hung = new AtomicInteger();
  private Choose choose;
  private PlanSimulator simulator;

  @BeforeEach
  void read() throws IOException {
    String small = Files.readString(Path.of("../line-configs/small.yaml"));
    PlantFile file =
        PlantFile.of(
            "small.yaml",
            small.replace("2027-05-28", "2027-03-02")
                + """

                choices:
                  rate: {key: lines.stalk_line.steps.feeder.rate, values: [0.9 t/h, 2.2 t/h]}
                  mill: {key: machines.mill.power, values: [15 hp, 40 hp]}
                """);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    IndifferenceZone best = new IndifferenceZone("money.margin", 500, false, "money.margin:500");
    choose =
        new Choose(
            source,
            PlantChanges.base(),
            file.choices(),
            new ChooseAsk(List.of(), best, false, List.of(), List.of(), false, 0, false),
            new RunSettings(4, Optional.empty(), SEED, 1, Optional.empty()));
    simulator = PlanSimulator.of(source, file.choices(), choose.recipe());
  }

  private ChooseAnswer answer(BlockRunner runner) {
    return choose.simulate(runner, NOTHING_KEPT, SILENT, () -> false, () -> false).orElseThrow();
  }

  private BlockWatch sleepingInPlan(int plan) {
    return new BlockWatch(
        (block, year, stop) -> {
          if (block.plans().contains(plan)) {
            hung.incrementAndGet();
            sleep();
          }
          return simulator.block(block, year, stop);
        },
        LEAST_S);
  }

  private static void sleep() {
    try {
      Thread.sleep(60_000);
    } catch (InterruptedException givenUp) {
      throw new IllegalStateException(givenUp);
    }
  }

  @Test
  void itsPlanIsLeftOutAndToldAndAllOthersAreAsEver() {
    List<ChoiceRow> due =
        new ArrayList<>(
            answer(new ThreadBlocks(new BlockWatch(simulator), SEED, 1)).plans()); // warms up too
    ChooseAnswer found = answer(new ThreadBlocks(sleepingInPlan(0), SEED, 1));
    List<ChoiceRow> plans = new ArrayList<>(found.plans());
    assertThat(hung).hasValue(2);
    ChoiceRow left = plans.remove(0);
    assertThat(left.status()).isEqualTo(ChoiceRow.Status.PROBLEM);
    assertThat(left.reason())
        .matches("a year of plan 0 took longer than \\d+ s and was given up, twice");
    assertThat(left.years()).isZero();
    assertThat(due.remove(0).status()).isEqualTo(ChoiceRow.Status.OUT);
    assertThat(plans).isEqualTo(due);
  }
}
