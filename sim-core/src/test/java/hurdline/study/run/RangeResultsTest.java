package hurdline.study.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.RunAnswer;
import hurdline.study.PlantChanges;
import hurdline.study.Studied;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Ranges simulated apart and put together are the whole, to the last digit. */
class RangeResultsTest {
  private static final PlantChanges ONE_DAY = Studied.smallUntil("2027-03-01");

  private static Run run(PlantChanges chosen, int replications, int threads) {
    return new Run(Studied.source(Studied.SMALL), chosen, Studied.effort(replications, threads));
  }

  private static RangeResults simulated(Run run, int from, int to) {
    return run.simulate(new ReplicationRange(from, to), (done, of) -> {}, () -> false);
  }

  private static void same(RunAnswer one, RunAnswer other) {
    assertThat(one.samples().values()).isDeepEqualTo(other.samples().values());
    assertThat(one)
        .usingRecursiveComparison()
        .ignoringFields("samples.values")
        .withEqualsForType(Double::equals, Double.class)
        .isEqualTo(other);
  }

  /** Far beyond those whose weeks and levels are kept one by one. */
  @Test
  void rangesOfManyReplicationsGiveTheAnswerOfTheWhole() {
    int count = 2_400;
    RunAnswer whole = run(ONE_DAY, count, 2).simulate((done, of) -> {}, () -> false).orElseThrow();
    Run study = run(ONE_DAY, count, 1);
    RangeResults last = simulated(study, 2_150, count + 1);
    RangeResults first = simulated(run(ONE_DAY, count, 3), 1, 700);
    first.append(simulated(study, 700, 2_150));
    first.append(last);
    assertThat(first.range()).isEqualTo(ReplicationRange.first(count));
    same(study.answer(first), whole);
  }

  @Test
  void theTraceComesFromTheRangeThatHoldsItsReplication() {
    LocalDateTime day = LocalDateTime.parse("2027-03-01T00:00");
    RunSettings effort =
        new RunSettings(
            6, Optional.empty(), 1, 1, Optional.of(new TraceWindow(5, day, day.plusDays(1))));
    Run study = new Run(Studied.source(Studied.SMALL), ONE_DAY, effort);
    RangeResults first = simulated(study, 1, 4);
    first.append(simulated(study, 4, 7));
    RunAnswer whole = study.simulate((done, of) -> {}, () -> false).orElseThrow();
    assertThat(whole.trace().rows()).isNotEmpty();
    same(study.answer(first), whole);
  }

  @Test
  void aRangeThatWasStoppedIsTheBeginningOfItAndTheAnswerSaysSo() {
    AtomicInteger done = new AtomicInteger();
    Run study = run(ONE_DAY, 40, 2);
    RangeResults part =
        study.simulate(
            ReplicationRange.first(40), (now, of) -> done.set(now), () -> done.get() >= 7);
    assertThat(part.range().count()).isBetween(7, 8);
    RunAnswer answer = study.answer(part);
    assertThat(answer.header().stopped()).isTrue();
    part.append(simulated(study, part.range().to(), 41));
    same(
        study.answer(part),
        run(ONE_DAY, 40, 1).simulate((now, of) -> {}, () -> false).orElseThrow());
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    Run study = run(ONE_DAY, 9, 1);
    RangeResults first = simulated(study, 1, 4);
    assertThatThrownBy(() -> first.append(simulated(study, 5, 6)))
        .hasMessageContaining("begin with replication 5; expected 4");
    assertThatThrownBy(() -> first.append(simulated(run(PlantChanges.base(), 9, 1), 4, 5)))
        .hasMessageContaining("another plant");
    assertThatThrownBy(() -> first.append(simulated(study, 4, 4)))
        .hasMessageContaining("no finished replication");
    assertThatThrownBy(() -> study.answer(simulated(study, 4, 5)))
        .hasMessageContaining("from replication 1 on");
    RunSettings aimed =
        new RunSettings(
            9,
            Optional.of(new Precision("money.margin", 0.1, true, "money.margin:10%")),
            1,
            1,
            Optional.empty());
    assertThatThrownBy(
            () -> simulated(new Run(Studied.source(Studied.SMALL), ONE_DAY, aimed), 1, 4))
        .hasMessageContaining("without an aim");
  }
}
