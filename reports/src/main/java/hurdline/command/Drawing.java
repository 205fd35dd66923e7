package hurdline.command;

import hurdline.chart.Figures;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * A thread that draws beside the other work: it gets font and libraries ready while the plant is
 * played, and draws while the tables are written. What comes out does not hang on it.
 */
final class Drawing implements AutoCloseable {
  private static final int LONGEST_S = 60;

  private final ExecutorService hand =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "drawing");
            thread.setDaemon(true);
            return thread;
          });
  private final Future<?> ready = hand.submit(Figures::getReady);

  private Drawing() {}

  static Drawing begin() {
    return new Drawing();
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
    return new Part<>(
        hand.submit(
            () -> {
              ready.get(); // if there is no font to draw with, that is what went wrong
              return maker.get();
            }));
  }

  /** Ends the thread, so that no file of the font's is left behind half made. */
  @Override
  public void close() {
    hand.shutdown();
    try {
      hand.awaitTermination(LONGEST_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
