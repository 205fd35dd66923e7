package hurdline.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.ChoiceRow;
import hurdline.plant.ProblemsException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Spark within this Java machine, with tasks that fail. */
class SparkBlocksTest {
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
  void filesThatThePlantNamesTravelWithIt() {
    Chosen rainy = Chosen.withRain();
    try (SparkBlocks spark =
        SparkBlocks.open("local", "local[2,4]", rainy.file.texts(), rainy.choose.recipe(), null)) {
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
    try (SparkBlocks spark = local(null)) {
      assertThat(chosen.on(spark, kept, () -> kept.count() > 1).answer()).isEmpty();
    }
    int before = kept.count();
    assertThat(before).isPositive();
    Chosen.Found threads = chosen.onThreads();
    AtomicInteger done = new AtomicInteger();
    try (SparkBlocks spark = local(null)) {
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
      assertThatThrownBy(() -> local(null))
          .isInstanceOf(ProblemsException.class)
          .hasMessageContaining("Spark does not start on local (");
    } finally {
      System.clearProperty("spark.driver.bindAddress");
    }
  }
}
