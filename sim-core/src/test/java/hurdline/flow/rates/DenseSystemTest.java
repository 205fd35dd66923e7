package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The one dense solver, with and without row exchange. */
class DenseSystemTest {
  /** 4x - y = 7, -2x + 5y - z = 0, -y + 3z = 7. */
  private static DenseSystem dominant() {
    DenseSystem system = new DenseSystem(4);
    system.clear(3);
    double[][] rows = {{4, -1, 0}, {-2, 5, -1}, {0, -1, 3}};
    double[] right = {7, 0, 7};
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        system.add(row, column, rows[row][column]);
      }
      system.addRight(row, right[row]);
    }
    return system;
  }

  private static void isSolved(DenseSystem system) {
    double x = system.answer(0);
    double y = system.answer(1);
    double z = system.answer(2);
    assertThat(4 * x - y).isCloseTo(7, within(1e-12));
    assertThat(-2 * x + 5 * y - z).isCloseTo(0, within(1e-12));
    assertThat(-y + 3 * z).isCloseTo(7, within(1e-12));
  }

  @Test
  void bothWaysSolveASystemThatNeedsNoExchange() {
    DenseSystem inOrder = dominant();
    inOrder.solveInOrder();
    isSolved(inOrder);
    DenseSystem exchanged = dominant();
    assertThat(exchanged.solve()).isTrue();
    isSolved(exchanged);
  }

  @Test
  void anUnknownThatIsLeftOpenHasNoAnswer() {
    DenseSystem system = new DenseSystem(2);
    system.clear(2);
    system.add(0, 0, 1);
    system.add(1, 0, 2);
    assertThat(system.solve()).isFalse();
  }
}
