package hurdline.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FutureEventsTest {

  @Test
  void nothingIsDueAtFirst() {
    FutureEvents pending = new FutureEvents(3);
    assertThat(pending.nextS()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(pending.firstDue(1e300)).isEqualTo(-1);
  }

  @Test
  void theLowestSlotIsTakenEvenIfAHigherOneIsEarlierWithinTheInstant() {
    FutureEvents pending = new FutureEvents(5);
    pending.set(4, 10);
    pending.set(2, 10 + 1e-7);
    assertThat(pending.nextS()).isEqualTo(10);
    assertThat(pending.firstDue(10 + 1e-6)).isEqualTo(2);
    assertThat(pending.firstDue(10)).isEqualTo(4);
  }

  @Test
  void aSlotOutOfRangeOrATimeThatIsNoNumberIsRefused() {
    FutureEvents pending = new FutureEvents(2);
    assertThatThrownBy(() -> pending.set(2, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> pending.set(0, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new FutureEvents(0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void itAgreesWithAPlainScan() {
    SplittableRandom chance = new SplittableRandom(41);
    for (int slots : new int[] {1, 2, 3, 7, 8, 33}) {
      FutureEvents pending = new FutureEvents(slots);
      double[] plain = new double[slots];
      Arrays.fill(plain, Double.POSITIVE_INFINITY);
      for (int step = 0; step < 5_000; step++) {
        int slot = chance.nextInt(slots);
        double atS = chance.nextInt(10) == 0 ? Double.POSITIVE_INFINITY : chance.nextInt(20);
        plain[slot] = atS;
        pending.set(slot, atS);
        double untilS = chance.nextInt(20);
        assertThat(pending.nextS()).isEqualTo(Arrays.stream(plain).min().getAsDouble());
        assertThat(pending.firstDue(untilS)).isEqualTo(firstDue(plain, untilS));
        assertThat(pending.atS(slot)).isEqualTo(atS);
      }
    }
  }

  private static int firstDue(double[] plain, double untilS) {
    for (int slot = 0; slot < plain.length; slot++) {
      if (plain[slot] <= untilS) {
        return slot;
      }
    }
    return -1;
  }
}
