package hurdline.simulation.yard;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BaleHeapTest {

  /**
   * Against a plain list that is searched; the parameter is how often a bale comes out of its
   * order.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.5, 1})
  void theNextBaleIsTheFirstOfAPlainList(double outOfOrder) {
    RandomStream chance = new RandomStreams(5).of(1, "heap " + outOfOrder);
    Bales bales = new Bales(1, 0);
    BaleHeap heap = new BaleHeap(bales);
    List<Integer> plain = new ArrayList<>();
    Comparator<Integer> order =
        Comparator.<Integer>comparingDouble(b -> bales.pickKey[b])
            .thenComparingInt(b -> bales.turn[b]);
    int taken = 0;
    for (int turn = 0; turn < 20_000; turn++) {
      boolean filling = turn / 500 % 2 == 0; // so that it runs empty now and then
      if (chance.next() < (filling ? 0.6 : 0.4)) {
        int bale = bales.add(0);
        bales.turn[bale] = turn;
        bales.pickKey[bale] = chance.next() < outOfOrder ? turn * chance.next() : turn / 7;
        heap.add(bale);
        plain.add(bale);
      } else if (!plain.isEmpty()) {
        Integer first = plain.stream().min(order).orElseThrow();
        assertThat(heap.top()).isEqualTo(first);
        assertThat(heap.takeTop()).isEqualTo(first);
        plain.remove(first);
        bales.free(first);
        taken++;
      }
      assertThat(heap.size()).isEqualTo(plain.size());
    }
    assertThat(taken).isGreaterThan(5_000);
  }
}
