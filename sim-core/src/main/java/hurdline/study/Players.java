package hurdline.study;

import hurdline.account.Trace;
import hurdline.chance.Streams;
import hurdline.work.Outcome;
import hurdline.work.Replication;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Plays replications on several threads, each thread with a replication of its own that it uses again
 * and again.
 *
 * <p>Numbers are handed out in turn and whoever has begun one ends it, so what is done is always 1 to k
 * without a gap, stopped early or not.
 */
final class Players implements AutoCloseable {
  private final Stage stage;
  private final Streams streams;
  private final Replication[] replications;
  private final Workers workers;
  private final AtomicInteger begun = new AtomicInteger();
  private final Consumer<Outcome> taker;
  private final IntFunction<Trace> traces;

  /**
   * @param taker told of each outcome, never of two at once
   * @param traces who is told of a replication; null for nobody
   */
  Players(Stage stage, long seed, int threads, Consumer<Outcome> taker, IntFunction<Trace> traces) {
    this.stage = stage;
    this.taker = taker;
    this.traces = traces;
    streams = new Streams(seed);
    replications = new Replication[threads];
    workers = new Workers(threads, "replications");
  }

  /** Leaves out what is known already, up to this replication; before anything is played. */
  void skipTo(int known) {
    begun.set(known);
  }

  /** Plays on until replication {@code last} is done, or stop is asked for. */
  void playTo(int last, Runnable done, BooleanSupplier stop) {
    workers.work(player -> play(player, last, done, stop));
  }

  private void play(int player, int last, Runnable done, BooleanSupplier stop) {
    if (replications[player] == null) {
      replications[player] = stage.replication();
    }
    while (!stop.getAsBoolean()) {
      int mine = begun.getAndUpdate(before -> before < last ? before + 1 : before) + 1;
      if (mine > last) {
        return;
      }
      try {
        Outcome outcome = replications[player].run(streams, mine, traces.apply(mine));
        synchronized (this) {
          taker.accept(outcome);
          done.run();
        }
      } catch (RuntimeException | Error broken) {
        begun.set(Integer.MAX_VALUE - 1);
        throw broken;
      }
    }
  }

  @Override
  public void close() {
    workers.close();
  }
}
