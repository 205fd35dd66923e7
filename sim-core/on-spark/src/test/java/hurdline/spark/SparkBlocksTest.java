package hurdline.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.ChoiceRow;
import hurdline.plant.ProblemsException;
import hurdline.study.choose.BlockWatch;
import hurdline.study.choose.PlanSimulator;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Spark within this Java machine, with tasks that fail. */
class SparkBlocksTest {
  private static final int SLEEPER = 8; // the first of which a plant comes

  private static volatile boolean failing;

  private final Chosen chosen = Chosen.overDays(2);

  private SparkBlocks local(TaskFault fault) {
    return SparkBlocks.open(
        "local", "local[2,4]", chosen.file.texts(), chosen.choose.recipe(), fault);
  }

  @Test
  void theAnswerIsThatOfThreadsThoughTasksFail() {
    Chosen.Found threads = chosen.onThreads();
    assertThat(threads.answer().orElseThrow().plans())
        .extracting(ChoiceRow::status)
        .contains(ChoiceRow.Status.PROBLEM, ChoiceRow.Status.NEVER, ChoiceRow.Status.NAMED);
    try (SparkBlocks spark =
        local(
            (task, attempt) -> {
              if (task % 3 == 0 && attempt < 1 + task % 3 || task == 1 && attempt < 3) {
                throw new IllegalStateException("made to fail");
              }
            })) {
      assertThat(spark.cluster().orElseThrow().cores()).isEqualTo(2);
      Chosen.Found found = chosen.on(spark, new Chosen.Kept(block -> {}), () -> false);
      assertThat(found).isEqualTo(threads);
    }
  }

  @Test
  void inTwoStagesOnDrawsOfTheirOwnItIsThatOfThreadsToo() {
    Chosen independent = Chosen.independent();
    Chosen.Found threads = independent.onThreads();
    assertThat(threads.answer().orElseThrow().terms().independent()).isTrue();
    assertThat(threads.blocks().keySet()).anyMatch(block -> block.startsWith("1 "));
    try (SparkBlocks spark =
        SparkBlocks.open(
            "local",
            "local[2,4]",
            independent.file.texts(),
            independent.choose.recipe(),
            (task, attempt) -> {
              if (attempt == 0) {
                throw new IllegalStateException("made to fail");
              }
            })) {
      Chosen.Found found = independent.on(spark, new Chosen.Kept(block -> {}), () -> false);
      assertThat(found).isEqualTo(threads);
    }
  }

  /** The first year of all: nothing is known yet of how long one takes. */
  @Test
  void aPlanWhoseFirstYearHangsIsTriedElsewhereAndThenLeftOutAndTold() {
    Chosen.Found threads = chosen.onThreads();
    try (SparkBlocks spark =
        SparkBlocks.open(
            "local",
            "local[1,4]",
            chosen.file.texts(),
            chosen.choose.recipe(),
            new SleepingPlan(SLEEPER))) {
      Chosen.Found found = chosen.on(spark, new Chosen.Kept(block -> {}), () -> false);
      List<ChoiceRow> plans = new ArrayList<>(found.answer().orElseThrow().plans());
      ChoiceRow hung = plans.remove(SLEEPER);
      assertThat(hung.status()).isEqualTo(ChoiceRow.Status.PROBLEM);
      assertThat(hung.reason())
          .matches(
              "a year of plan " + SLEEPER + " took longer than \\d+ s and was given up, twice");
      List<ChoiceRow> others = new ArrayList<>(threads.answer().orElseThrow().plans());
      assertThat(others.remove(SLEEPER).status()).isEqualTo(ChoiceRow.Status.OUT);
      assertThat(plans).isEqualTo(others);
    }
  }

  /** A plan of which no year ends. */
  private record SleepingPlan(int plan) implements TaskFault {
    private static final double LEAST_S = 0.06;

    @Override
    public void before(int task, int attempt) {}

    @Override
    public BlockWatch watch(PlanSimulator simulator) {
      return new BlockWatch(
          (block, year, stop) -> {
            if (block.plans().contains(plan)) {
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
  }

  @Test
  void filesThatThePlantNamesTravelWithIt() {
    Chosen rainy = Chosen.withRain();
    try (SparkBlocks spark =
        SparkBlocks.open(
            "local", "local[2,4]", rainy.file.texts(), rainy.choose.recipe(), TaskFault.NONE)) {
      Chosen.Found found = rainy.on(spark, new Chosen.Kept(block -> {}), () -> false);
      assertThat(found).isEqualTo(rainy.onThreads());
      assertThat(found.answer().orElseThrow().plans())
          .extracting(ChoiceRow::status)
          .doesNotContain(ChoiceRow.Status.PROBLEM);
    }
  }

  @Test
  void whatIsStoppedGoesOnElsewhere() {
    Chosen.Kept kept = new Chosen.Kept(block -> {});
    try (SparkBlocks spark = local(TaskFault.NONE)) {
      assertThat(chosen.on(spark, kept, () -> kept.count() > 1).answer()).isEmpty();
    }
    int before = kept.count();
    assertThat(before).isPositive();
    Chosen.Found threads = chosen.onThreads();
    AtomicInteger done = new AtomicInteger();
    try (SparkBlocks spark = local(TaskFault.NONE)) {
      assertThat(chosen.on(spark, kept, () -> false)).isEqualTo(threads);
      done.set(kept.count() - before);
    }
    assertThat(done.get()).isPositive();
  }

  @Test
  void aTaskThatAlwaysFailsEndsItWithItsReason() {
    failing = false;
    try (SparkBlocks spark =
        local(
            (task, attempt) -> {
              if (failing && task == 1) {
                throw new IllegalStateException("made to fail always");
              }
            })) {
      failing = true;
      assertThatThrownBy(() -> chosen.on(spark, new Chosen.Kept(block -> {}), () -> false))
          .hasMessageContaining("failed 4 times")
          .hasMessageContaining("made to fail always");
    }
  }

  @Test
  void aMachineThatComputesOtherwiseIsRefused() {
    TaskResult here = new TaskResult("gin-2 (Java 17 on aarch64)", "ab", 1, 1, null);
    assertThat(SparkBlocks.checked(here, "ab")).isSameAs(here);
    assertThatThrownBy(() -> SparkBlocks.checked(here, "cd"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("a check year simulated on gin-2 (Java 17 on aarch64) differs")
        .hasMessageContaining("expected machines of one kind");
  }

  @Test
  void whereNoMasterRunsThatIsSaid() {
    System.setProperty("spark.driver.bindAddress", "no.such.machine.invalid");
    try {
      assertThatThrownBy(() -> local(TaskFault.NONE))
          .isInstanceOf(ProblemsException.class)
          .hasMessageContaining("Spark does not start on local (");
    } finally {
      System.clearProperty("spark.driver.bindAddress");
    }
  }
}
