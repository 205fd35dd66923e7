package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** How long something will take, by its first few trials. */
class SimulationTimeTest {
  /** The first 15 trials take as long as a program that is not warm, all others next to nothing. */
  private static Runnable warming(AtomicInteger trials) {
    return () -> {
      try {
        Thread.sleep(trials.incrementAndGet() <= 15 ? 30 : 1);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    };
  }

  @Test
  void longWorkIsTriedUntilTheProgramIsWarm() {
    AtomicInteger trials = new AtomicInteger();
    assertThat(SimulationTime.secondsEach(warming(trials), 25_000)).isBetween(0.001, 0.02);
    assertThat(trials.get()).isGreaterThan(15);
  }

  /** 300 calendars of 30 ms, two at a time, and what comes with every call. */
  @Test
  void theTimeOfACallHasItsStartAndItsPageToo() {
    double each = SimulationTime.secondsEach(warming(new AtomicInteger()), 150);
    String said = SimulationTime.ofCall(150 * each);
    assertThat(said).matches("([78]|9|1[0-9]) s");
  }

  @Test
  void shortWorkIsNotHeldUp() {
    AtomicInteger trials = new AtomicInteger();
    assertThat(SimulationTime.secondsEach(warming(trials), 20)).isGreaterThanOrEqualTo(0.03);
    assertThat(trials.get()).isEqualTo(2);
  }
}
