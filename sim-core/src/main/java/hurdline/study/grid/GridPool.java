package hurdline.study.grid;

import hurdline.random.RandomStreams;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import hurdline.study.replicate.ReplicationRunner;
import hurdline.study.replicate.RunSettings;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Simulates the plants of many cells on several threads. Blocks of replications are handed out in
 * the order of the cells, so that few cells are begun at a time and a grid that is stopped loses
 * little; a thread changes its plant only with a new block.
 */
final class GridPool {
  private static final int BLOCK = 8;

  private final List<CellStage> stages;
  private final RunSettings effort;
  private final Taker taker;
  private final BooleanSupplier stop;
  private final int[] left;
  private int nextStage;
  private int nextReplication = 1;
  private boolean broken;

  /** Told how it goes, never of two things at once. */
  interface Taker {
    /** One replication is done. */
    void simulated();

    /** All replications of a plant are done. */
    void finished(CellStage stage);
  }

  GridPool(List<CellStage> stages, RunSettings effort, Taker taker, BooleanSupplier stop) {
    this.stages = stages;
    this.effort = effort;
    this.taker = taker;
    this.stop = stop;
    left = new int[stages.size()];
    Arrays.fill(left, effort.replications());
  }

  private record Block(int stage, int first, int last) {}

  private synchronized Block next() {
    if (broken || nextStage == stages.size()) {
      return null;
    }
    int last = Math.min(effort.replications(), nextReplication + BLOCK - 1);
    Block block = new Block(nextStage, nextReplication, last);
    nextReplication = last + 1;
    if (last == effort.replications()) {
      nextStage++;
      nextReplication = 1;
    }
    return block;
  }

  /** Simulates until all is done or stop is asked for. */
  void simulate() {
    try (ReplicationRunner runner = new ReplicationRunner(effort.seed(), effort.threads())) {
      runner.share(thread -> work());
    }
  }

  private void work() {
    RandomStreams streams = new RandomStreams(effort.seed());
    Replication replication = null;
    int of = -1;
    Block block;
    while (!stop.getAsBoolean() && (block = next()) != null) {
      try {
        if (block.stage() != of) {
          of = block.stage();
          replication = stages.get(of).stage().replication();
        }
        for (int r = block.first(); r <= block.last() && !stop.getAsBoolean(); r++) {
          done(of, replication.run(streams, r, null));
        }
      } catch (RuntimeException | Error fault) {
        fail();
        throw fault;
      }
    }
  }

  private synchronized void done(int stage, Outcome outcome) {
    stages.get(stage).take(outcome);
    taker.simulated();
    if (--left[stage] == 0) {
      taker.finished(stages.get(stage));
    }
  }

  private synchronized void fail() {
    broken = true;
  }
}
