package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import hurdline.flow.LimitSharingNet;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** Counts the bytes that this thread allocates while it solves. */
class RateSolverAllocationTest {
  private static final int SOLVES = 10_000;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static Object seen; // keeps the control's arrays from being optimised away

  private static long bytesOf(Runnable once) {
    for (int i = 0; i < SOLVES; i++) {
      once.run(); // classes load and code compiles before the count
    }
    long thread = Thread.currentThread().getId();
    THREADS.getThreadAllocatedBytes(thread);
    long before = THREADS.getThreadAllocatedBytes(thread);
    for (int i = 0; i < SOLVES; i++) {
      once.run();
    }
    return THREADS.getThreadAllocatedBytes(thread) - before;
  }

  private static void assertAllocatesNothing(LimitSharingNet net) {
    RateSolver solver = net.newSolver();
    long bytes =
        bytesOf(
            () -> {
              solver.coefficientsChanged(0);
              solver.solve();
              solver.isHolder(0, 0);
            });
    assertThat(bytes).isZero();
  }

  @Test
  void aSolveAllocatesNothing() {
    assertAllocatesNothing(LimitSharingNet.reaching(1, 2, 3).limit(0, 6, 1, 1));
    assertAllocatesNothing(LimitSharingNet.reaching(1, 6, 2).limit(0, 0, 0.8, -1));
    assertAllocatesNothing(
        LimitSharingNet.reaching(2, 6, 6, 40)
            .precedence(1, 0, 1)
            .limit(0, 6, 1, 1, 0)
            .limit(1, 0, -1, 0, 1));
  }

  @Test
  void untyingAKnotAllocatesNothing() {
    LimitSharingNet net = LimitSharingNet.reaching(2, 3, 2.5).limit(0, 6, 2, 1).limit(1, 0, 1, -1);
    assertThat(net.solved().knotRounds()).isPositive();
    assertAllocatesNothing(net);
  }

  @Test
  void aControlThatAllocatesIsNoticed() {
    RateSolver solver = LimitSharingNet.reaching(1, 2, 3).limit(0, 6, 1, 1).newSolver();
    long bytes =
        bytesOf(
            () -> {
              solver.solve();
              seen = new double[2];
            });
    assertThat(seen).isNotNull();
    assertThat(bytes).isGreaterThanOrEqualTo(SOLVES * 32L);
  }
}
