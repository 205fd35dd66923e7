package hurdline.study.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.SimulatedBlock;
import hurdline.answer.SimulatedBlock.Series;
import hurdline.study.replicate.ReplicationRange;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class BlockWatchTest {
  private static final double LEAST_S = 0.2;
  private static final PlanBlock BLOCK =
      new PlanBlock(1, 4, List.of(7, 8, 9), ReplicationRange.first(5), false, false);

  private final AtomicInteger hung = new AtomicInteger();
  private final AtomicInteger told = new AtomicInteger();

  /** Plan 8 sleeps in its third year, as often as is said. */
  private BlockWatch sleeping(int times) {
    return new BlockWatch(
        (block, year, stop) -> {
          int plan = block.plans().get(0);
          for (int r = 0; r < block.years().count(); r++) {
            if (plan == 8 && r == 2 && hung.get() < times) {
              hung.incrementAndGet();
              sleep();
            }
            year.run();
          }
          return Optional.of(done(block, plan));
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

  private static SimulatedBlock done(PlanBlock block, int plan) {
    Series years = new Series(new double[block.years().count()]);
    return new SimulatedBlock(
        block.stage(),
        block.number(),
        block.years().from(),
        List.of(new SimulatedBlock.Plan(plan, "", List.of(years), List.of())));
  }

  private SimulatedBlock simulated(BlockWatch watch) {
    return watch.block(BLOCK, told::incrementAndGet, () -> false).orElseThrow();
  }

  @Test
  void aBlockWhoseYearHangsIsTriedAgain() {
    SimulatedBlock found = simulated(sleeping(1));
    assertThat(hung).hasValue(1);
    assertThat(told).hasValue(7 + 15);
    assertThat(found.stage()).isEqualTo(1);
    assertThat(found.number()).isEqualTo(4);
    assertThat(found.plans()).extracting(SimulatedBlock.Plan::plan).containsExactly(7, 8, 9);
    assertThat(found.plans()).extracting(SimulatedBlock.Plan::problem).containsOnly("");
  }

  @Test
  void aPlanThatHangsTwiceIsToldAsData() {
    SimulatedBlock found = simulated(sleeping(9));
    assertThat(hung).hasValue(2);
    SimulatedBlock.Plan plan = found.plans().get(1);
    assertThat(plan.problem())
        .matches("a year of plan 8 took longer than \\d+ s and was given up, twice");
    assertThat(plan.measured()).isEmpty();
    assertThat(found.plans().get(2).measured().get(0).values()).hasSize(5);
  }

  @Test
  void triedOnceItFailsWithThePlansNumber() {
    BlockWatch watch = sleeping(9);
    assertThatThrownBy(() -> watch.once(BLOCK, told::incrementAndGet, () -> false))
        .isInstanceOf(BlockWatch.HungYearException.class)
        .hasMessageContaining("a year of plan 8 took longer than");
  }

  @Test
  void whatGoesWrongOtherwiseIsThrownAsItIs() {
    BlockWatch watch =
        new BlockWatch(
            (block, year, stop) -> {
              throw new IllegalArgumentException("made to fail");
            },
            LEAST_S);
    assertThatThrownBy(() -> watch.block(BLOCK, () -> {}, () -> false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("made to fail");
  }

  @Test
  void whatIsStoppedIsNotWhole() {
    BlockWatch watch = new BlockWatch((block, year, stop) -> Optional.empty(), LEAST_S);
    assertThat(watch.block(BLOCK, () -> {}, () -> true)).isEmpty();
  }
}
