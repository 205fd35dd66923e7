package hurdline.command;

import hurdline.study.replicate.ReplicationRunner;
import java.io.PrintWriter;
import java.time.Duration;

/** A line now and then on how far the work has come, where standard error goes into a file. */
final class ProgressLines implements AutoCloseable {
  private static final double NANO = 1e-9;
  private static final long MILLI_NS = 1_000_000;

  private final PrintWriter err;
  private final long begunNs = System.nanoTime();
  private boolean closed;
  private int done;
  private int of;

  /**
   * @param every how long it is silent between two lines
   */
  ProgressLines(PrintWriter err, Duration every, int of) {
    this.err = err;
    this.of = of;
    ReplicationRunner.inBackground(
        "progress",
        () -> {
          tellEvery(every.toNanos());
          return null;
        });
  }

  synchronized void done(int replications, int ofAll) {
    done = replications;
    of = Math.max(ofAll, replications);
  }

  private synchronized void tellEvery(long everyNs) throws InterruptedException {
    for (long due = begunNs + everyNs; !closed; due += everyNs) {
      for (long left = due - System.nanoTime();
          left > 0 && !closed;
          left = due - System.nanoTime()) {
        wait(1 + left / MILLI_NS);
      }
      if (!closed) {
        tell();
      }
    }
  }

  private void tell() {
    double goneS = (System.nanoTime() - begunNs) * NANO;
    String left =
        done == 0 ? "" : ", about " + SimulationTime.inWords(goneS * (of - done) / done) + " to go";
    err.println(
        "After "
            + SimulationTime.gone(goneS)
            + ": "
            + done
            + " of "
            + of
            + " replications are done"
            + left
            + ".");
  }

  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }
}
