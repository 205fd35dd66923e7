package hurdline.simulation;

import com.sun.management.ThreadMXBean;
import hurdline.plant.Change;
import hurdline.random.RandomStreams;
import java.lang.management.ManagementFactory;
import java.util.Arrays;

/**
 * Says whether the engine has become slower, by figures that no other load on the machine disturbs: what comes due and is
 * solved in a year of the example, bytes for each event, and the time of a year beside the hold loop in turn with it. Run
 * {@code scripts/bench guard}; it ends with 1 where a figure is beyond its bound. No part of the tests: the ratio is one
 * of times, though with a bound so wide that only a slower engine reaches it.
 */
public final class Guard {
  private static final int YEARS = 8;
  private static final int WARM_YEARS = 60;
  private static final int TURNS = 9;
  private static final int YEARS_A_TURN = 5;

  /** A figure and the range that it must lie in. */
  private record Figure(String what, double found, double low, double high) {
    private boolean isWithin() {
      return found >= low && found <= high; // not where it is no number
    }

    private String says() {
      return String.format(
          "%-3s  %-68s %12.4g   expected %.4g to %.4g", isWithin() ? "yes" : "NO", what, found, low, high);
    }
  }

  private Guard() {}

  public static void main(String[] args) {
    RandomStreams streams = new RandomStreams(1);
    Replication example = Example.replication();
    for (int year = 1; year <= YEARS; year++) {
      example.run(streams, year, null);
    }
    double events = (double) example.events() / YEARS;
    double solves = (double) example.solves() / YEARS;
    Figure[] all = {
      new Figure("events a year of the example, mean of replications 1 to 8", events, 60_000, 135_000),
      new Figure("solves a year", solves, 20_000, 60_000),
      new Figure("bytes allocated a warm year, in kB", bytes("260 lb") / 1e3, 1, 2_000),
      new Figure("bytes more for each event more, bags of 40 lb against 400 lb", bytesAnEvent(), -2, 2),
      new Figure("time of a year in thousand steps of the hold loop, median of 9 turns", holdsAYear() / 1e3, 10, 2_500)
    };
    boolean sound = true;
    for (Figure figure : all) {
      System.out.println(figure.says());
      sound &= figure.isWithin();
    }
    System.exit(sound ? 0 : 1);
  }

  private static Change[] bags(String mass) {
    return new Change[] {
      new Change.Value("packages.bulk_bag.mass", mass), new Change.Value("packages.bulk_bag.change", "1 s")
    };
  }

  /** An object is 16 bytes at the least, so one at every eighth event shows. */
  private static double bytesAnEvent() {
    Replication coarse = Example.replication(bags("400 lb"));
    Replication fine = Example.replication(bags("40 lb"));
    double more = leastBytes(fine) - leastBytes(coarse);
    return more * WARM_YEARS / (fine.events() - coarse.events());
  }

  private static double bytes(String bag) {
    return leastBytes(Example.replication(bags(bag)));
  }

  /** The first years grow what is kept; after that each allocates the same, or this would show it. */
  private static double leastBytes(Replication replication) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    RandomStreams streams = new RandomStreams(1);
    long least = Long.MAX_VALUE;
    for (int k = 0; k < WARM_YEARS; k++) {
      long before = threads.getThreadAllocatedBytes(self);
      replication.run(streams, 1, null);
      least = Math.min(least, threads.getThreadAllocatedBytes(self) - before);
    }
    return least;
  }

  private static double holdsAYear() {
    HoldRatio pair = new HoldRatio();
    for (int k = 0; k < WARM_YEARS; k++) {
      pair.turn();
    }
    double[] holds = new double[TURNS];
    for (int turn = 0; turn < TURNS; turn++) {
      pair.reset();
      for (int k = 0; k < YEARS_A_TURN; k++) {
        pair.turn();
      }
      holds[turn] = pair.holdsAYear();
    }
    Arrays.sort(holds);
    return pair.kept() > 0 ? holds[TURNS / 2] : Double.NaN;
  }
}
