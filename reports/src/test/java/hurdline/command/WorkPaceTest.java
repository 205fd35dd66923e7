package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How long work takes, by how it goes once the program is warm. */
class WorkPaceTest {
  private double nowS;
  private double cpuS;

  /** So many done by now, of work that is slow until processors have spent 9 seconds on it. */
  private int done() {
    return (int) (cpuS < 9 ? cpuS * 2 : 18 + (cpuS - 9) * 20);
  }

  /** When it is said and how long one takes then, on processors that give so much a second. */
  private double[] told(double share) {
    WorkPace pace = new WorkPace(() -> nowS, () -> cpuS, 5);
    double begunS = nowS;
    cpuS = 0;
    for (int step = 0; step < 10_000; step++) {
      nowS += 0.1;
      cpuS += 0.1 * share;
      var each = pace.secondsEach(done());
      if (each.isPresent()) {
        return new double[] {nowS - begunS, each.getAsDouble()};
      }
    }
    throw new AssertionError("never said");
  }

  @Test
  void theSlowBeginCountsForNothing() {
    nowS = 1000;
    assertThat(told(2)[1]).isCloseTo(1 / 40.0, within(0.002));
    assertThat(told(1)[1]).isCloseTo(1 / 20.0, within(0.003));
  }

  @Test
  void whereOthersWorkTooItIsSaidLaterAndAsRight() {
    double[] shared = told(0.25);
    assertThat(shared[0]).isGreaterThan(70);
    assertThat(shared[1]).isCloseTo(1 / 5.0, within(0.01));
    assertThat(told(16)[0]).isBetween(10.0, 11.0);
  }
}
