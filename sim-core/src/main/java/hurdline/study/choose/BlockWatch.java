package hurdline.study.choose;

import hurdline.answer.SimulatedBlock;
import hurdline.study.replicate.ReplicationRunner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/**
 * Simulates blocks and gives up a year that takes far longer than the others, be the machine ill or
 * the plant one that never ends: 200 times the mean of the years so far and a minute at least. Its
 * block is tried once more; a plan that is given up twice comes back with that as its problem.
 *
 * <p>Java cannot end a thread that does not listen: one that is given up is left to itself, and
 * what it still does is not counted. Time is counted while this program runs, not while it is
 * stopped. Of any number of threads at once.
 */
public final class BlockWatch {
  private static final double TIMES_THE_MEAN = 200;
  private static final double LEAST_S = 60;

  /** So many times the least where no year is known yet: the program is cold, its machine too. */
  private static final double FIRST = 10;

  private static final double NANO = 1e-9;
  private static final int SLICES =
      100; // of the least time, in which it is looked whether a year was done

  private final Simulation simulation;
  private final double leastS;
  private final AtomicLong years = new AtomicLong();
  private final AtomicLong slices = new AtomicLong(); // waited for those years, of all threads

  /** What simulates a block in one go. */
  @FunctionalInterface
  public interface Simulation {
    Optional<SimulatedBlock> block(PlanBlock block, Runnable year, BooleanSupplier stop);
  }

  /** A year that is given up. */
  public static final class HungYearException extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int plan;

    HungYearException(int plan, double limitS) {
      super(
          String.format(
              Locale.ROOT,
              "a year of plan %d took longer than %.0f s and was given up",
              plan,
              limitS));
      this.plan = plan;
    }
  }

  public BlockWatch(PlanSimulator simulator) {
    this(simulator::block, LEAST_S);
  }

  /**
   * @param leastS seconds that a year may always take
   */
  public BlockWatch(Simulation simulation, double leastS) {
    this.simulation = simulation;
    this.leastS = leastS;
  }

  /** A block, tried again where a year hangs; empty if stop was asked for before it was whole. */
  public Optional<SimulatedBlock> block(PlanBlock block, Runnable year, BooleanSupplier stop) {
    Set<Integer> once = new HashSet<>();
    Map<Integer, String> givenUp = new HashMap<>();
    while (true) {
      try {
        return attempt(block, givenUp, year, stop);
      } catch (HungYearException hung) {
        if (!once.add(hung.plan)) {
          givenUp.put(hung.plan, hung.getMessage() + ", twice");
        }
      }
    }
  }

  /**
   * A block, tried once.
   *
   * @throws HungYearException if a year hangs
   */
  public Optional<SimulatedBlock> once(PlanBlock block, Runnable year, BooleanSupplier stop) {
    return attempt(block, Map.of(), year, stop);
  }

  private Optional<SimulatedBlock> attempt(
      PlanBlock block, Map<Integer, String> givenUp, Runnable year, BooleanSupplier stop) {
    Attempt attempt = new Attempt(block, givenUp, year, stop);
    Future<Optional<SimulatedBlock>> work = ReplicationRunner.inBackground("plans", attempt::plans);
    double sliceS = leastS / SLICES;
    long seen = 0;
    int waited = 0; // slices since the last year
    try {
      while (true) {
        try {
          return work.get((long) (sliceS / NANO), TimeUnit.NANOSECONDS);
        } catch (TimeoutException stillAtIt) {
          waited++;
          long done = attempt.done;
          if (done != seen) {
            slices.addAndGet(waited); // a year that hangs is in no mean
          }
          waited = done == seen && !attempt.telling ? waited : 0;
          seen = done;
          if (waited * sliceS > limitS()) {
            throw new HungYearException(attempt.plan, waited * sliceS);
          }
        }
      }
    } catch (ExecutionException broken) {
      if (broken.getCause() instanceof Error fatal) {
        throw fatal;
      }
      throw broken.getCause() instanceof RuntimeException known
          ? known
          : new IllegalStateException(broken.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while plans were simulated", interrupted);
    } finally {
      attempt.givenUp = true;
      work.cancel(true);
    }
  }

  private double limitS() {
    long known = years.get();
    return known == 0
        ? FIRST * leastS
        : Math.max(leastS, TIMES_THE_MEAN * slices.get() * leastS / SLICES / known);
  }

  /** A block under way, plan by plan. */
  private final class Attempt {
    private final PlanBlock block;
    private final Map<Integer, String> problems;
    private final Runnable year;
    private final BooleanSupplier stop;
    private volatile int plan;
    private volatile long done;
    private volatile boolean givenUp;
    private volatile boolean
        telling; // whoever is told may take his time, as a halted terminal does

    Attempt(PlanBlock block, Map<Integer, String> problems, Runnable year, BooleanSupplier stop) {
      this.block = block;
      this.problems = problems;
      this.year = year;
      this.stop = stop;
    }

    Optional<SimulatedBlock> plans() {
      List<SimulatedBlock.Plan> plans = new ArrayList<>();
      for (int due : block.plans()) {
        plan = due;
        if (problems.containsKey(due)) {
          plans.add(new SimulatedBlock.Plan(due, problems.get(due), List.of(), List.of()));
          continue;
        }
        Optional<SimulatedBlock> one =
            simulation.block(block.of(due), this::tick, () -> givenUp || stop.getAsBoolean());
        if (one.isEmpty()) {
          return Optional.empty();
        }
        plans.addAll(one.get().plans());
      }
      return Optional.of(
          new SimulatedBlock(block.stage(), block.number(), block.years().from(), plans));
    }

    private void tick() {
      if (givenUp) {
        return;
      }
      years.incrementAndGet();
      done++;
      telling = true;
      year.run();
      telling = false;
    }
  }
}
