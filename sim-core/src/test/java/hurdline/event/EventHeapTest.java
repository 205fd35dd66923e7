package hurdline.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class EventHeapTest {
  private record Thing(double atS, int order, int what) {}

  @Test
  void tiesGoByOrderThenByEntry() {
    EventHeap table = new EventHeap(1);
    table.add(5, 2, 20);
    table.add(5, 1, 10);
    table.add(5, 1, 11);
    table.add(4, 9, 90);
    assertThat(List.of(table.poll(), table.poll(), table.poll(), table.poll()))
        .containsExactly(90, 10, 11, 20);
    assertThat(table.peekS()).isEqualTo(Double.POSITIVE_INFINITY);
  }

  @Test
  void ofThoseDueTheLowestOrderIsTakenWhateverItsTime() {
    EventHeap table = new EventHeap(4);
    table.add(7, 3, 30);
    table.add(7 + 1e-7, 1, 10);
    table.add(8, 0, 0);
    assertThat(table.pollDue(6)).isEqualTo(-1);
    assertThat(table.pollDue(7 + 1e-6)).isEqualTo(10);
    assertThat(table.pollDue(7 + 1e-6)).isEqualTo(30);
    assertThat(table.pollDue(7 + 1e-6)).isEqualTo(-1);
    assertThat(table.size()).isEqualTo(1);
  }

  @Test
  void itAgreesWithAPlainList() {
    SplittableRandom chance = new SplittableRandom(42);
    EventHeap table = new EventHeap(2);
    List<Thing> plain = new ArrayList<>();
    for (int step = 0; step < 20_000; step++) {
      if (chance.nextInt(5) < 3 && plain.size() < 60) {
        Thing thing = new Thing(chance.nextInt(30), chance.nextInt(4), step);
        plain.add(thing);
        table.add(thing.atS(), thing.order(), thing.what());
      } else {
        double untilS = chance.nextInt(30);
        assertThat(table.pollDue(untilS)).isEqualTo(pollDue(plain, untilS));
      }
      assertThat(table.peekS())
          .isEqualTo(plain.stream().mapToDouble(Thing::atS).min().orElse(Double.POSITIVE_INFINITY));
    }
  }

  private static int pollDue(List<Thing> plain, double untilS) {
    Thing due =
        plain.stream()
            .filter(thing -> thing.atS() <= untilS)
            .min(Comparator.comparingInt(Thing::order).thenComparingInt(Thing::what))
            .orElse(null);
    plain.remove(due);
    return due == null ? -1 : due.what();
  }
}
