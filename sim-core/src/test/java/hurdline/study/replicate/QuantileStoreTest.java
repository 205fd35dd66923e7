package hurdline.study.replicate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuantileStoreTest {
  private static final int NEVER_MOVES = 0;
  private static final int MOVES = 1;
  private static final int MOVES_LATE = 2;

  /**
   * Replication k of n: one cell stands at 3, one counts, one stands at 5 and is 7 from replication
   * 60 on.
   */
  private static QuantileStore simulated(int n, int most) {
    QuantileStore cells = new QuantileStore(3, 1, most);
    for (int k = 1; k <= n; k++) {
      cells.next();
      cells.put(NEVER_MOVES, 3);
      cells.put(MOVES, k);
      cells.put(MOVES_LATE, k < 60 ? 5 : 7);
    }
    return cells;
  }

  @Test
  void aCellThatNeverMovesKeepsItsValue() {
    assertThat(simulated(100, 2_000).figures(NEVER_MOVES))
        .isEqualTo(new QuantileStore.Spread(3, 3, 3, 3));
  }

  @Test
  void meansRestOnAllReplicationsAndQuantilesOnThoseKept() {
    QuantileStore.Spread all = simulated(100, 2_000).figures(MOVES);
    QuantileStore.Spread kept = simulated(100, 50).figures(MOVES);
    assertThat(all.mean()).isEqualTo(50.5);
    assertThat(kept.mean()).isEqualTo(50.5);
    assertThat(all.p50()).isBetween(50.0, 51.0);
    assertThat(kept.p50()).isBetween(25.0, 26.0);
  }

  @Test
  void aCellThatMovesAfterTheLastOneKeptHasItsMeanAllTheSame() {
    QuantileStore.Spread late = simulated(100, 50).figures(MOVES_LATE);
    assertThat(late.mean()).isEqualTo((59 * 5 + 41 * 7) / 100.0, within(1e-12));
    assertThat(late.p95()).isEqualTo(5);
  }

  /**
   * The whole against two ranges that meet before, at, and after the last replication whose values
   * are kept.
   */
  @Test
  void rangesPutBehindEachOtherAreTheWhole() {
    QuantileStore whole = uneven(1, 120);
    for (int split = 2; split <= 120; split++) {
      QuantileStore ranges = uneven(1, split - 1);
      ranges.append(uneven(split, 120));
      for (int cell = 0; cell < 4; cell++) {
        assertThat(ranges.figures(cell))
            .as("cell %d, second range from %d", cell, split)
            .isEqualTo(whole.figures(cell));
        assertThat(ranges.sum(cell)).isEqualTo(whole.sum(cell));
        assertThat(ranges.isZero(cell)).isEqualTo(whole.isZero(cell));
      }
    }
  }

  /** Values of which plain sums depend on how they are grouped. */
  private static QuantileStore uneven(int from, int last) {
    QuantileStore cells = new QuantileStore(4, from, 50);
    for (int k = from; k <= last; k++) {
      cells.next();
      cells.put(0, 0);
      cells.put(1, 0.1);
      cells.put(2, Math.exp(Math.sin(k)));
      cells.put(3, k < 80 ? 0 : 0.3);
    }
    return cells;
  }
}
