package hurdline.study.replicate;

import hurdline.account.Trace;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;

/**
 * Simulates ranges of replications on several threads; no other class of the program starts a
 * thread.
 *
 * <p>Numbers are handed out in order and whoever has begun one ends it, so what is done is always
 * the beginning of the range without a gap, stopped early or not. Outcomes are handed on in the
 * order of their replications, so sums are the same on any number of threads. Each thread has one
 * replication of each plant that it uses again and again.
 */
public final class ReplicationRunner implements AutoCloseable {
  private final RandomStreams streams;
  private final int threads;
  private final ExecutorService pool;
  private final Map<CompiledPlant, Replication[]> replications =
      new IdentityHashMap<>(); // two equal plants may both be at work

  public ReplicationRunner(long seed, int threads) {
    streams = new RandomStreams(seed);
    this.threads = threads;
    pool = Executors.newFixedThreadPool(threads, task -> thread(task, "replications"));
  }

  /** None keeps the program from ending. */
  private static Thread thread(Runnable task, String name) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Has something made on a thread of its own while the caller goes on; the thread ends with it.
   */
  public static <T> Future<T> inBackground(String name, Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    thread(task, name).start();
    return task;
  }

  /**
   * Simulates a range, of which nobody is told event by event; see {@link #run(Stage,
   * ReplicationRange, IntFunction, Consumer, Runnable, BooleanSupplier)}.
   */
  public void run(
      CompiledPlant stage,
      ReplicationRange range,
      Consumer<Outcome> taker,
      Runnable done,
      BooleanSupplier stop) {
    run(stage, range, one -> null, taker, done, stop);
  }

  /**
   * Simulates a range until it is done or stop is asked for.
   *
   * @param traces who is told of a replication event by event; null for nobody
   * @param taker told of each outcome in the order of the replications, never of two at once
   * @param done told after each replication, in the order in which they end, never of two at once
   * @param stop asked before each replication
   */
  public void run(
      CompiledPlant stage,
      ReplicationRange range,
      IntFunction<Trace> traces,
      Consumer<Outcome> taker,
      Runnable done,
      BooleanSupplier stop) {
    Replication[] own = replications.computeIfAbsent(stage, plant -> new Replication[threads]);
    run(
        range,
        (thread, one) -> {
          if (own[thread] == null) {
            own[thread] = stage.replication();
          }
          return own[thread].run(streams, one, traces.apply(one));
        },
        taker,
        done,
        stop);
  }

  /** Simulates one replication on a thread; both by their numbers. */
  private interface Simulation {
    Outcome outcome(int thread, int replication);
  }

  private void run(
      ReplicationRange range,
      Simulation simulation,
      Consumer<Outcome> taker,
      Runnable done,
      BooleanSupplier stop) {
    AtomicInteger next = new AtomicInteger(range.from());
    InOrderConsumer inTurn = new InOrderConsumer(range.from(), taker);
    share(
        thread -> {
          try {
            while (!stop.getAsBoolean()) {
              int mine = next.getAndUpdate(number -> Math.min(number + 1, range.to()));
              if (mine >= range.to()) {
                return;
              }
              Outcome outcome = simulation.outcome(thread, mine);
              synchronized (inTurn) {
                inTurn.accept(outcome);
                done.run();
              }
            }
          } catch (RuntimeException | Error broken) {
            next.set(range.to());
            throw broken;
          }
        });
  }

  /**
   * Simulates a range of which each replication has a plant of its own; else as {@link
   * #run(CompiledPlant, ReplicationRange, Consumer, Runnable, BooleanSupplier)}.
   */
  public void run(
      DrawnPlants plants,
      ReplicationRange range,
      Consumer<Outcome> taker,
      Runnable done,
      BooleanSupplier stop) {
    run(plants, range, one -> null, taker, done, stop);
  }

  /**
   * The same, told event by event.
   *
   * @param traces who is told of a replication; null for nobody
   */
  public void run(
      DrawnPlants plants,
      ReplicationRange range,
      IntFunction<Trace> traces,
      Consumer<Outcome> taker,
      Runnable done,
      BooleanSupplier stop) {
    run(
        range,
        (thread, one) -> plants.plant(one).replication().run(streams, one, traces.apply(one)),
        taker,
        done,
        stop);
  }

  /**
   * Has each thread do its share, told its number, and waits for all of them.
   *
   * @throws RuntimeException what one of them threw, the first by its number
   */
  public void share(IntConsumer work) {
    List<Future<?>> all = new ArrayList<>();
    for (int t = 0; t < threads; t++) {
      int thread = t;
      all.add(pool.submit(() -> work.accept(thread)));
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
    pool.shutdownNow();
  }
}
