package hurdline.simulation;

import com.sun.management.ThreadMXBean;
import hurdline.plant.Change;
import hurdline.random.RandomStreams;
import java.lang.management.ManagementFactory;

/**
 * Says whether the engine has become slower than it was recorded to be: what comes due and is
 * solved in a year of the example, bytes for each event, and the time of a year in steps of the
 * hold loop in turn with it. {@code scripts/bench guard} ends with 1 where a figure is beyond its
 * bound. Counts and bytes are the same on every machine; the time is not, so its record is of the
 * one machine that {@code BENCHMARKS.md} names, and another needs a record of its own.
 *
 * <p>{@code scripts/bench guard slower} is the control: each year is simulated twice where one
 * counts, and an object is dropped at every eighth event. Every figure must then be beyond its
 * bound.
 *
 * <p>No part of the tests, for one figure is a time.
 */
public final class Guard {
  private static final double EVENTS_A_YEAR = 88_230;
  private static final double SOLVES_A_YEAR = 45_980;
  private static final double KB_A_YEAR = 300;
  private static final double THOUSAND_HOLDS_A_YEAR = 1_420;

  private static final int YEARS = 8;
  private static final int WARM_YEARS = 40;
  private static final int TURNS = 120;

  private final boolean slower;
  private Object planted;

  /** A figure and the range that it must lie in. */
  private record Figure(String what, double found, double low, double high) {
    private static Figure around(
        String what, double found, double recorded, double less, double more) {
      return new Figure(what, found, recorded * (1 - less), recorded * (1 + more));
    }

    private boolean isWithin() {
      return found >= low && found <= high; // not where it is no number
    }

    private String says() {
      return String.format(
          "%-3s  %-68s %12.5g   expected %.5g to %.5g",
          isWithin() ? "yes" : "NO", what, found, low, high);
    }
  }

  private Guard(boolean slower) {
    this.slower = slower;
  }

  public static void main(String[] args) {
    Figure[] all = new Guard(args.length > 0 && args[0].equals("slower")).figures();
    boolean sound = true;
    for (Figure figure : all) {
      System.out.println(figure.says());
      sound &= figure.isWithin();
    }
    System.exit(sound ? 0 : 1);
  }

  /**
   * What becomes less is no fault, but asks for a new record, or the bound above it means nothing.
   */
  private Figure[] figures() {
    Replication example = Example.replication();
    RandomStreams streams = new RandomStreams(1);
    for (int year = 1; year <= YEARS; year++) {
      year(example, streams, year);
    }
    return new Figure[] {
      Figure.around(
          "events a year of the example, mean of replications 1 to 8",
          mean(example.events()),
          EVENTS_A_YEAR,
          0.03,
          0.03),
      Figure.around("solves a year", mean(example.solves()), SOLVES_A_YEAR, 0.03, 0.03),
      Figure.around("bytes allocated a warm year, in kB", bytesAYear() / 1e3, KB_A_YEAR, 0.2, 0.05),
      new Figure(
          "bytes more for each event more, bags of 40 lb against 400 lb",
          bytesAnEvent(),
          -0.5,
          0.5),
      Figure.around(
          "a year in thousand steps of the hold loop, the quickest of each in 120",
          thousandHoldsAYear(),
          THOUSAND_HOLDS_A_YEAR,
          0.3,
          0.15)
    };
  }

  private static double mean(long ofAll) {
    return (double) ofAll / YEARS;
  }

  private int times() {
    return slower ? 2 : 1;
  }

  private void year(Replication replication, RandomStreams streams, int number) {
    for (int k = 0; k < times(); k++) {
      replication.run(streams, number, null);
    }
  }

  private static Replication bags(String mass) {
    return Example.replication(
        new Change.Value("packages.bulk_bag.mass", mass),
        new Change.Value("packages.bulk_bag.change", "1 s"));
  }

  private double bytesAYear() {
    return leastBytes(Example.replication());
  }

  /** An object is 16 bytes at the least, so one at every eighth event shows. */
  private double bytesAnEvent() {
    Replication coarse = bags("400 lb");
    Replication fine = bags("40 lb");
    double more = leastBytes(fine) - leastBytes(coarse);
    return more * WARM_YEARS / (fine.events() - coarse.events());
  }

  /**
   * The first years grow what is kept; after that each allocates the same, or this would show it.
   */
  private double leastBytes(Replication replication) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    RandomStreams streams = new RandomStreams(1);
    long least = Long.MAX_VALUE;
    for (int k = 0; k < WARM_YEARS; k++) {
      long due = replication.events();
      long before = threads.getThreadAllocatedBytes(self);
      year(replication, streams, 1);
      plantObjects((replication.events() - due) / 8);
      least = Math.min(least, threads.getThreadAllocatedBytes(self) - before);
    }
    return least;
  }

  private void plantObjects(long count) {
    for (long k = 0; slower && k < count; k++) {
      planted = new Object[0];
    }
  }

  private double thousandHoldsAYear() {
    HoldRatio pair = new HoldRatio(Example.replication(), 1);
    for (int k = 0; k < WARM_YEARS; k++) {
      pair.turn(times());
    }
    pair.reset();
    for (int k = 0; k < TURNS; k++) {
      pair.turn(times());
    }
    return pair.kept() > 0 ? pair.quickestHoldsAYear() / 1e3 : Double.NaN;
  }
}
