package hurdline.spark;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.ChosenLimit;
import hurdline.answer.SimulatedBlock;
import hurdline.plant.Change;
import hurdline.plant.InputDraws;
import hurdline.plant.PlantTexts;
import hurdline.study.choose.ChoiceChange;
import hurdline.study.choose.PlanBlock;
import hurdline.study.choose.PlanRecipe;
import hurdline.study.replicate.ReplicationRange;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What travels arrives as it was. */
class WorkTextTest {
  private static Object sent(Object thing) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(thing);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }

  @Test
  void aPlantWithItsRainAndItsPlansDoes() throws IOException, ClassNotFoundException {
    PlantTexts plant =
        new PlantTexts("p.yaml", "name: Ginnery — naß", Map.of("rain.csv", "date,mm\n"));
    PlanRecipe recipe =
        new PlanRecipe(
            -7,
            List.of(new Change.Named("bigger_mill"), new Change.Value("a.b", "x1.2")),
            List.of(new ChoiceChange("mill", List.of("25 hp", "45 hp"))),
            List.of("money.margin", "mass.stalk.fed"),
            Optional.of(
                new InputDraws(
                    "draws.csv",
                    List.of("a.b", "c"),
                    List.of(List.of("1", "2"), List.of("3", "4")))));
    WorkText work = (WorkText) sent(WorkText.of("one", plant, recipe));
    assertThat(work.plant()).isEqualTo(plant);
    assertThat(work.recipe()).isEqualTo(recipe);
    PlanRecipe undrawn = new PlanRecipe(1, List.of(), List.of(), List.of("a"), Optional.empty());
    assertThat(((WorkText) sent(WorkText.of("two", plant, undrawn))).recipe()).isEqualTo(undrawn);
  }

  @Test
  void blocksDoToTheBit() {
    PlanBlock due =
        new PlanBlock(3, 12, List.of(5, 900_000, 7), new ReplicationRange(11, 51), true, false);
    assertThat(BlockBytes.due(BlockBytes.of(due))).isEqualTo(due);
    double[] odd = {
      -0.0, Double.longBitsToDouble(0x7ff8_0000_0000_0123L), Double.MIN_VALUE, 1.0 / 3
    };
    SimulatedBlock done =
        new SimulatedBlock(
            3,
            12,
            11,
            List.of(
                new SimulatedBlock.Plan(5, "no plant — naß", List.of(), List.of()),
                new SimulatedBlock.Plan(
                    7,
                    "",
                    List.of(
                        new SimulatedBlock.Series(odd), new SimulatedBlock.Series(new double[0])),
                    List.of(new ChosenLimit("stalk_line", "mill", 0.56)))));
    SimulatedBlock arrived = BlockBytes.simulated(BlockBytes.of(done));
    assertThat(BlockBytes.of(arrived)).isEqualTo(BlockBytes.of(done));
    assertThat(arrived.plans().get(0).problem()).isEqualTo("no plant — naß");
    assertThat(arrived.plans().get(1).limits()).isEqualTo(done.plans().get(1).limits());
    double[] values = arrived.plans().get(1).measured().get(0).values();
    assertThat(Double.doubleToRawLongBits(values[1])).isEqualTo(0x7ff8_0000_0000_0123L);
  }

  /** Blocks of 160 years each; an example's year of 30 ms, a small plant's of 30 µs. */
  @Test
  void tasksTakeSomeSeconds() {
    List<PlanBlock> blocks =
        Collections.nCopies(
            10_000,
            new PlanBlock(
                0, 0, Collections.nCopies(16, 1), ReplicationRange.first(10), false, false));
    assertThat(new TaskPace(4, 0.030).wave(blocks, 0))
        .hasSize(160)
        .first()
        .matches(task -> task.size() == 3);
    assertThat(new TaskPace(4, 30e-6).wave(blocks, 0)).hasSize(12);
    assertThat(new TaskPace(4, 0.030).wave(blocks, 9_990)).hasSize(10);
    TaskPace quicker = new TaskPace(4, 0.300);
    assertThat(quicker.wave(blocks, 0)).first().matches(task -> task.size() == 1);
    quicker.took(160 * 0.01, 160);
    quicker.took(160 * 0.01, 160);
    quicker.took(160 * 0.01, 160);
    quicker.took(160 * 0.01, 160);
    assertThat(quicker.wave(blocks, 0)).first().matches(task -> task.size() == 3);
    List<PlanBlock> large =
        Collections.nCopies(
            500_000,
            new PlanBlock(
                0, 0, Collections.nCopies(16, 1), ReplicationRange.first(10), false, false));
    assertThat(
            new TaskPace(4, 1e-9)
                .wave(large, 0).stream()
                    .flatMap(List::stream)
                    .mapToLong(PlanBlock::planYears)
                    .sum())
        .isBetween(5_000_000L, 12_000_000L);
  }

  @Test
  void addressesOfSparkAreKnown() {
    SparkCluster cluster = new SparkCluster();
    assertThat(List.of("local", "local[2,4]", "spark://gin-1:7077")).allMatch(cluster::knows);
    assertThat(List.of("locale", "gin-1:7077", "spark://gin-1", "yarn", ""))
        .noneMatch(cluster::knows);
  }
}
