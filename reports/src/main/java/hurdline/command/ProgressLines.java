package hurdline.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** A line now and then on how far the work has come, where standard error goes into a file. */
final class ProgressLines implements AutoCloseable {
  private static final double NANO = 1e-9;

  private final PrintWriter err;
  private final long begunNs = System.nanoTime();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "progress");
            thread.setDaemon(true);
            return thread;
          });
  private int done;
  private int of;

  /** @param every how long it is silent between two lines */
  ProgressLines(PrintWriter err, Duration every, int of) {
    this.err = err;
    this.of = of;
    clock.scheduleAtFixedRate(this::tell, every.toNanos(), every.toNanos(), TimeUnit.NANOSECONDS);
  }

  synchronized void done(int replications, int ofAll) {
    done = replications;
    of = Math.max(ofAll, replications);
  }

  private synchronized void tell() {
    double goneS = (System.nanoTime() - begunNs) * NANO;
    String left = done == 0 ? "" : ", about " + PlayTime.inWords(goneS * (of - done) / done) + " to go";
    err.println("After " + PlayTime.inWords(goneS) + ": " + done + " of " + of + " replications are done" + left + ".");
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
