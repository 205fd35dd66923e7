package hurdline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/** Threads that play side by side; none of them keeps the program from ending. */
final class Workers implements AutoCloseable {
  private final int threads;
  private final ExecutorService service;

  Workers(int threads, String name) {
    this.threads = threads;
    service =
        Executors.newFixedThreadPool(
            threads,
            task -> {
              Thread thread = new Thread(task, name);
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Has each thread work, told its number, and waits for all of them.
   *
   * @throws RuntimeException what one of them threw, the first by its number
   */
  void work(IntConsumer what) {
    List<Future<?>> all = new ArrayList<>();
    for (int t = 0; t < threads; t++) {
      int worker = t;
      all.add(service.submit(() -> what.accept(worker)));
    }
    RuntimeException worst = null;
    for (Future<?> one : all) {
      RuntimeException failed = failure(one);
      worst = worst == null ? failed : worst;
    }
    if (worst != null) {
      throw worst;
    }
  }

  private static RuntimeException failure(Future<?> one) {
    try {
      one.get();
      return null;
    } catch (ExecutionException broken) {
      if (broken.getCause() instanceof RuntimeException known) {
        return known;
      }
      if (broken.getCause() instanceof Error fatal) {
        throw fatal;
      }
      return new IllegalStateException(broken.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return new IllegalStateException("interrupted while replications were running", interrupted);
    }
  }

  @Override
  public void close() {
    service.shutdownNow();
  }
}
