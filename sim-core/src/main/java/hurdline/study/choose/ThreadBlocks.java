package hurdline.study.choose;

import hurdline.answer.SimulatedBlock;
import hurdline.study.replicate.ReplicationRunner;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Simulates blocks on threads of this machine, each block on one. */
final class ThreadBlocks implements BlockRunner {
  private final BlockWatch watch;
  private final long seed;
  private final int threads;

  ThreadBlocks(BlockWatch watch, long seed, int threads) {
    this.watch = watch;
    this.seed = seed;
    this.threads = threads;
  }

  @Override
  public void run(
      List<PlanBlock> blocks, Consumer<SimulatedBlock> done, Runnable year, BooleanSupplier stop) {
    AtomicInteger next = new AtomicInteger();
    AtomicBoolean broken = new AtomicBoolean();
    Object one = new Object();
    int wanted = Math.max(1, Math.min(threads, blocks.size()));
    try (ReplicationRunner runner = new ReplicationRunner(seed, wanted)) {
      runner.share(
          thread -> {
            BooleanSupplier ending = () -> broken.get() || stop.getAsBoolean();
            Runnable counted =
                () -> {
                  synchronized (one) {
                    year.run();
                  }
                };
            try {
              int mine;
              while (!ending.getAsBoolean() && (mine = next.getAndIncrement()) < blocks.size()) {
                Optional<SimulatedBlock> block = watch.block(blocks.get(mine), counted, ending);
                synchronized (one) {
                  block.ifPresent(done);
                }
              }
            } catch (RuntimeException | Error fault) {
              broken.set(true);
              throw fault;
            }
          });
    }
  }
}
