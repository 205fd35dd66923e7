package hurdline.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ResourcesTest {

  @Test
  void whoIsServedAtOnceNeverWaits() {
    Resources one = oneServerAlwaysOpen();
    one.ask(0, 7, 0, 0, 0, 10);
    assertThat(one.begins()).isTrue();
    assertThat(one.nextToBegin(10)).isEqualTo(7);
    one.release(0, 15);
    one.finish(20);
    assertThat(one.books().waitingPeak(0)).isZero();
    assertThat(one.books().waitsS(0)).isZero();
    assertThat(one.books().busyS(0)).isEqualTo(5);
    assertThat(one.books().hoursS(0)).isEqualTo(20);
  }

  @Test
  void jobsOfNoTimeOneAfterTheOtherInOneInstantLeaveNoPeak() {
    Resources one = oneServerAlwaysOpen();
    one.ask(0, 1, 0, 0, 0, 3);
    one.ask(0, 2, 0, 1, 0, 3);
    assertThat(one.nextToBegin(3)).isEqualTo(1);
    assertThat(one.nextToBegin(3)).isEqualTo(-1);
    one.release(0, 3);
    assertThat(one.nextToBegin(3)).isEqualTo(2);
    one.finish(9);
    assertThat(one.books().waitingPeak(0)).isZero();
  }

  @Test
  void rankGoesBeforeTheInstantAndTheInstantBeforeTheOrder() {
    Resources one = oneServerAlwaysOpen();
    one.ask(0, 1, 1, 5, 0, 1);
    one.ask(0, 2, 1, 4, 0, 1);
    one.ask(0, 3, 1, 1, 0, 2);
    one.ask(0, 4, 0, 9, 0, 3);
    List<Integer> served = new ArrayList<>();
    while (one.begins()) {
      served.add(one.nextToBegin(4));
      one.release(0, 4);
    }
    assertThat(served).containsExactly(4, 2, 1, 3);
  }

  @Test
  void aJobBehindAClosedGateIsPassedOverAndItsWaitCountsInTheResourcesHoursOnly() {
    Resources one = new Resources(new int[] {1}, 3);
    one.hoursOf(0, 1);
    one.hoursOf(0, 2);
    one.ask(0, 1, 0, 0, 1, 0);
    one.ask(0, 2, 0, 1, 2, 0);
    one.open(2, true, 10);
    assertThat(one.nextToBegin(10)).isEqualTo(2);
    one.open(2, false, 14);
    one.release(0, 16);
    one.open(1, true, 30);
    assertThat(one.nextToBegin(30)).isEqualTo(1);
    one.finish(33);
    assertThat(one.books().hoursS(0)).isEqualTo(7);
    assertThat(one.books().busyS(0)).isEqualTo(7);
    assertThat(one.books().waitsS(0)).isEqualTo(4);
    assertThat(one.books().waitingPeak(0)).isEqualTo(2);
  }

  @Test
  void aWithdrawnRequestAndOneThatNeverBeganCountWithWhatTheyWaited() {
    Resources none = new Resources(new int[] {0}, 1);
    none.hoursOf(0, 0);
    none.ask(0, 1, 0, 0, 0, 0);
    none.ask(0, 2, 0, 1, 0, 4);
    none.withdraw(1, 5);
    none.withdraw(1, 5);
    none.finish(6);
    assertThat(none.begins()).isFalse();
    assertThat(none.books().waitsS(0)).isEqualTo(7);
    assertThat(none.books().requests(0)).isEqualTo(2);
    assertThat(none.books().waitingPeak(0)).isEqualTo(2);
  }

  @Test
  void whatNeedsNoResourceBeginsAsSoonAsItsGateIsOpen() {
    Resources bare = new Resources(new int[0], 2);
    bare.ask(bare.endless(), 1, 0, 0, 1, 0);
    bare.ask(bare.endless(), 2, 0, 0, 0, 0);
    assertThat(bare.nextToBegin(0)).isEqualTo(2);
    assertThat(bare.nextToBegin(0)).isEqualTo(-1);
    bare.open(1, true, 8);
    assertThat(bare.nextToBegin(8)).isEqualTo(1);
    assertThat(bare.busy(bare.endless())).isEqualTo(2);
  }

  @Test
  void whoWaitsCannotAskAgainAndNothingIsGivenBackTwice() {
    Resources one = oneServerAlwaysOpen();
    one.ask(0, 1, 0, 0, 0, 0);
    assertThatThrownBy(() -> one.ask(0, 1, 0, 0, 0, 0)).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> one.release(0, 0)).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void itAgreesWithPlainListsAlsoWhenUsedAgain() {
    Resources resources = new Resources(new int[] {1, 2}, 4);
    resources.hoursOf(0, 1);
    resources.hoursOf(0, 3);
    resources.hoursOf(1, 2);
    SplittableRandom chance = new SplittableRandom(43);
    for (int replication = 0; replication < 4; replication++) {
      resources.reset();
      agreeOnce(resources, chance);
    }
  }

  private static void agreeOnce(Resources resources, SplittableRandom chance) {
    PlainQueues plain = new PlainQueues(1, 2);
    double nowS = 0;
    int nextJob = 0;
    for (int step = 0; step < 3_000; step++) {
      double laterS = nowS + chance.nextInt(3);
      plain.pass(nowS, laterS);
      nowS = laterS;
      switch (chance.nextInt(6)) {
        case 0 -> {
          int gate = 1 + chance.nextInt(3);
          boolean open = chance.nextBoolean();
          plain.open[gate] = open;
          resources.open(gate, open, nowS);
        }
        case 1 -> {
          int job = chance.nextInt(nextJob + 1);
          plain.waiting.removeIf(waits -> waits.job() == job);
          resources.withdraw(job, nowS);
        }
        case 2 -> {
          int resource = chance.nextInt(2);
          if (plain.busy[resource] > 0) {
            plain.busy[resource]--;
            resources.release(resource, nowS);
          }
        }
        default -> {
          PlainQueues.Waits waits =
              new PlainQueues.Waits(
                  nextJob++,
                  chance.nextInt(2),
                  chance.nextInt(3),
                  nowS,
                  chance.nextInt(100) * 10_000L + nextJob,
                  chance.nextInt(4));
          plain.waiting.add(waits);
          resources.ask(
              waits.resource(), waits.job(), waits.rank(), waits.order(), waits.gate(), nowS);
        }
      }
      int begun = plain.nextToBegin();
      assertThat(resources.begins()).isEqualTo(begun >= 0);
      for (; begun >= 0; begun = plain.nextToBegin()) {
        assertThat(resources.nextToBegin(nowS)).isEqualTo(begun);
      }
      assertThat(resources.nextToBegin(nowS)).isEqualTo(-1);
    }
    plain.pass(nowS, nowS + 5);
    resources.finish(nowS + 5);
    for (int resource = 0; resource < 2; resource++) {
      assertThat(resources.books().hoursS(resource))
          .isCloseTo(plain.hoursS[resource], within(1e-9));
      assertThat(resources.books().busyS(resource)).isCloseTo(plain.busyS[resource], within(1e-9));
      assertThat(resources.books().waitsS(resource))
          .isCloseTo(plain.waitsS[resource], within(1e-9));
      assertThat(resources.books().waitingPeak(resource)).isEqualTo(plain.peak[resource]);
      assertThat(resources.waiting(resource)).isEqualTo((int) plain.waiting(resource));
    }
  }

  private static Resources oneServerAlwaysOpen() {
    Resources one = new Resources(new int[] {1}, 1);
    one.hoursOf(0, 0);
    return one;
  }
}
