package hurdline.command;

import hurdline.chart.run.RunCharts;
import hurdline.study.replicate.ReplicationRunner;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Draws beside the other work: gets font and libraries ready while the plant is simulated, and
 * draws while the tables are written. What comes out does not depend on it.
 */
final class ChartThread implements AutoCloseable {
  private static final int LONGEST_S = 60;
  private static final String THREAD = "drawing";

  private final Future<?> ready =
      ReplicationRunner.inBackground(
          THREAD,
          () -> {
            RunCharts.getReady();
            return null;
          });
  private Future<?> last = ready;

  private ChartThread() {}

  static ChartThread begin() {
    return new ChartThread();
  }

  /** Something that is made beside the caller's work. */
  record Part<T>(Future<T> made) {
    /** Waits for it; what went wrong in making it is thrown here. */
    T get() {
      try {
        return made.get();
      } catch (InterruptedException e) {
        throw new IllegalStateException("interrupted while drawing", e);
      } catch (ExecutionException e) {
        throw fault(e);
      }
    }

    private static RuntimeException fault(ExecutionException wrapped) {
      Throwable cause = wrapped.getCause();
      if (cause instanceof ExecutionException inner) {
        return fault(inner);
      }
      if (cause instanceof Error error) {
        throw error;
      }
      return cause instanceof RuntimeException fault ? fault : new IllegalStateException(cause);
    }
  }

  /** Parts are made one after the other, in the order in which they are asked for. */
  <T> Part<T> of(Supplier<T> maker) {
    Future<?> before = last;
    Future<T> part =
        ReplicationRunner.inBackground(
            THREAD,
            () -> {
              settle(before);
              ready.get(); // if there is no font to draw with, that is what went wrong
              return maker.get();
            });
    last = part;
    return new Part<>(part);
  }

  /** Waits until it has ended, well or not. */
  private static void settle(Future<?> part) throws InterruptedException {
    try {
      part.get(LONGEST_S, TimeUnit.SECONDS);
    } catch (ExecutionException | CancellationException | TimeoutException e) {
      // Whoever asked for that part is told what went wrong with it.
    }
  }

  /** Waits for the last part, so that no file of the font's is left behind half made. */
  @Override
  public void close() {
    try {
      settle(last);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
