package hurdline.study.replicate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.Studied;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReplicationRunnerTest {
  private static final Plant WEEK =
      Studied.source(Studied.SMALL).variants().with(Studied.smallUntil("2027-03-05").asArray());

  private static List<Integer> numbers(int from, int to) {
    return IntStream.range(from, to).boxed().toList();
  }

  @Test
  void outcomesComeInTheirOrderOnAnyNumberOfThreads() {
    CompiledPlant stage = CompiledPlant.of(WEEK);
    List<double[]> alone = new ArrayList<>();
    for (int threads : new int[] {1, 2, 7}) {
      List<Integer> came = new ArrayList<>();
      List<double[]> values = new ArrayList<>();
      AtomicInteger done = new AtomicInteger();
      try (ReplicationRunner runner = new ReplicationRunner(1, threads)) {
        runner.run(
            stage,
            new ReplicationRange(5, 65),
            outcome -> {
              came.add(outcome.replication());
              values.add(outcome.values());
            },
            done::incrementAndGet,
            () -> false);
      }
      assertThat(came).isEqualTo(numbers(5, 65));
      assertThat(done).hasValue(60);
      alone = threads == 1 ? values : alone;
      assertThat(values.toArray(double[][]::new)).isDeepEqualTo(alone.toArray(double[][]::new));
    }
  }

  @Test
  void aStopKeepsTheBeginningOfTheRangeWithoutAGap() {
    List<Integer> came = new ArrayList<>();
    AtomicInteger done = new AtomicInteger();
    try (ReplicationRunner runner = new ReplicationRunner(1, 3)) {
      runner.run(
          CompiledPlant.of(WEEK),
          new ReplicationRange(11, 1_000),
          outcome -> came.add(outcome.replication()),
          done::incrementAndGet,
          () -> done.get() >= 20);
    }
    assertThat(came).hasSizeBetween(20, 22).isEqualTo(numbers(11, 11 + came.size()));
  }

  @Test
  void aFaultEndsTheRangeAndIsThrown() {
    AtomicInteger done = new AtomicInteger();
    try (ReplicationRunner runner = new ReplicationRunner(1, 2)) {
      assertThatThrownBy(
              () ->
                  runner.run(
                      CompiledPlant.of(WEEK),
                      new ReplicationRange(1, 100_000),
                      outcome -> {
                        if (outcome.replication() == 4) {
                          throw new IllegalStateException("broken on purpose");
                        }
                      },
                      done::incrementAndGet,
                      () -> false))
          .hasMessage("broken on purpose");
    }
    assertThat(done.get()).isLessThan(100);
  }

  @Test
  void aRangeOfNoneSimulatesNothing() {
    try (ReplicationRunner runner = new ReplicationRunner(1, 2)) {
      runner.run(
          CompiledPlant.of(WEEK),
          new ReplicationRange(9, 9),
          outcome -> {
            throw new AssertionError("nothing was asked for");
          },
          () -> {},
          () -> false);
    }
    assertThatThrownBy(() -> new ReplicationRange(0, 3)).hasMessageContaining("from 1 on");
    assertThatThrownBy(() -> new ReplicationRange(5, 4))
        .hasMessageContaining("no end before its start");
  }

  @Test
  void whatIsMadeInTheBackgroundIsThereWhenItIsAskedFor() throws Exception {
    Future<Boolean> made =
        ReplicationRunner.inBackground("test", () -> Thread.currentThread().isDaemon());
    assertThat(made.get()).isTrue();
    Future<Object> fails =
        ReplicationRunner.inBackground(
            "test",
            () -> {
              throw new IllegalStateException("broken on purpose");
            });
    assertThatThrownBy(fails::get)
        .isInstanceOf(ExecutionException.class)
        .hasMessageContaining("broken on purpose");
  }
}
