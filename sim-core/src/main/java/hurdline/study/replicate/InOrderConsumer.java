package hurdline.study.replicate;

import hurdline.simulation.results.Outcome;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Hands outcomes on in the order of their replications, whoever finishes first, so that every sum
 * is the same on any number of threads.
 */
public final class InOrderConsumer implements Consumer<Outcome> {
  private final Consumer<Outcome> next;
  private final TreeMap<Integer, Outcome> early = new TreeMap<>();
  private int due;

  /**
   * @param first replication that comes
   */
  public InOrderConsumer(int first, Consumer<Outcome> next) {
    this.next = next;
    due = first;
  }

  /** Takes an outcome; kept waiting until all before it have come. */
  @Override
  public synchronized void accept(Outcome outcome) {
    early.put(outcome.replication(), outcome);
    Outcome one;
    while ((one = early.remove(due)) != null) {
      due++;
      next.accept(one);
    }
  }
}
