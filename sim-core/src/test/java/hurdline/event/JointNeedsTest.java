package hurdline.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Jobs that need several resources at once, against plain lists. */
class JointNeedsTest {
  private static final int[] SERVERS = {1, 2, 1};

  private record Needs(int number, int[] parts, int[] ranks) {
    int rank(int resource) {
      int at =
          IntStream.range(0, parts.length).filter(k -> parts[k] == resource).findFirst().orElse(-1);
      return at < 0 ? -1 : ranks[at];
    }
  }

  private record Waits(int job, Needs needs, int gate, double askedS, long order) {}

  private final Resources resources = new Resources(SERVERS.clone(), 3);
  private final List<Needs> known = new ArrayList<>();
  private final List<Waits> waiting = new ArrayList<>();
  private final List<Needs> begun = new ArrayList<>();
  private final int[] free = SERVERS.clone();
  private final boolean[] open = {true, false, false};

  private void know(int[] parts, int... ranks) {
    known.add(new Needs(resources.together(parts, ranks), parts, ranks));
  }

  /** The first in the queue of the first resource that can serve anybody. */
  private int plainNext() {
    for (int r = 0; r < SERVERS.length; r++) {
      int resource = r;
      var next =
          waiting.stream()
              .filter(one -> open[one.gate()] && one.needs().rank(resource) >= 0)
              .filter(one -> IntStream.of(one.needs().parts()).allMatch(part -> free[part] > 0))
              .min(
                  Comparator.<Waits>comparingInt(one -> one.needs().rank(resource))
                      .thenComparingDouble(Waits::askedS)
                      .thenComparingLong(Waits::order));
      if (next.isPresent()) {
        waiting.remove(next.get());
        begun.add(next.get().needs());
        IntStream.of(next.get().needs().parts()).forEach(part -> free[part]--);
        return next.get().job();
      }
    }
    return -1;
  }

  @Test
  void whoBeginsIsWhoBeginsInPlainListsAlsoWhenUsedAgain() {
    know(new int[] {0}, 1);
    know(new int[] {1}, 0);
    know(new int[] {2}, 2);
    know(new int[] {0, 1}, 0, 1);
    know(new int[] {2, 0}, 1, 1);
    know(new int[] {0, 2}, 2, 0);
    know(new int[] {1, 2, 0}, 0, 0, 0);
    SplittableRandom chance = new SplittableRandom(28);
    int together = 0;
    for (int replication = 0; replication < 3; replication++) {
      resources.reset();
      waiting.clear();
      begun.clear();
      System.arraycopy(SERVERS, 0, free, 0, free.length);
      open[1] = false;
      open[2] = false;
      together += agreeOnce(chance);
    }
    assertThat(together).as("jobs with several resources that began").isGreaterThan(300);
  }

  private int agreeOnce(SplittableRandom chance) {
    double nowS = 0;
    int together = 0;
    for (int step = 0; step < 2_000; step++) {
      nowS += chance.nextInt(3);
      switch (chance.nextInt(6)) {
        case 0 -> {
          int gate = 1 + chance.nextInt(2);
          open[gate] = chance.nextBoolean();
          resources.open(gate, open[gate], nowS);
        }
        case 1 -> {
          int job = chance.nextInt(step + 1);
          waiting.removeIf(one -> one.job() == job);
          resources.withdraw(job, nowS);
        }
        case 2, 3 -> {
          if (!begun.isEmpty()) {
            Needs done = begun.remove(chance.nextInt(begun.size()));
            resources.release(done.number(), nowS);
            IntStream.of(done.parts()).forEach(part -> free[part]++);
          }
        }
        default -> {
          Needs needs = known.get(chance.nextInt(known.size()));
          Waits one =
              new Waits(
                  step, needs, chance.nextInt(3), nowS, chance.nextInt(1_000) * 10_000L + step);
          waiting.add(one);
          int rank = needs.parts().length == 1 ? needs.ranks()[0] : 0;
          resources.ask(needs.number(), step, rank, one.order(), one.gate(), nowS);
        }
      }
      int job = plainNext();
      for (; job >= 0; job = plainNext()) {
        assertThat(resources.nextToBegin(nowS)).isEqualTo(job);
        together += begun.get(begun.size() - 1).parts().length > 1 ? 1 : 0;
      }
      assertThat(resources.begins()).isFalse();
      assertThat(resources.nextToBegin(nowS)).isEqualTo(-1);
      for (int r = 0; r < SERVERS.length; r++) {
        assertThat(resources.busy(r)).isEqualTo(SERVERS[r] - free[r]);
      }
    }
    return together;
  }

  @Test
  void theSameNeedsHaveOneNumberAndOneResourceIsItself() {
    assertThat(resources.together(new int[] {1}, new int[] {4})).isEqualTo(1);
    assertThat(resources.together(new int[0], new int[0])).isEqualTo(resources.endless());
    int both = resources.together(new int[] {0, 2}, new int[] {1, 1});
    assertThat(resources.together(new int[] {0, 2}, new int[] {1, 1})).isEqualTo(both);
    assertThat(resources.together(new int[] {2, 0}, new int[] {1, 1})).isNotEqualTo(both);
  }
}
