package hurdline.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.spark.SparkContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spark on a cluster of three processes, of which one is lost while it works. */
class SparkOnProcessesTest {
  @TempDir Path folder;

  @Test
  void theAnswerIsThatOfThreadsThoughAWorkerIsLost() throws IOException {
    Chosen chosen = Chosen.overDays(12);
    Path home = Path.of(System.getProperty("spark.home.test", "target/spark")).toAbsolutePath();
    try (StandaloneCluster cluster = new StandaloneCluster(folder, home);
        SparkBlocks spark = open(cluster, chosen)) {
      awaitMachines(2);
      AtomicBoolean killed = new AtomicBoolean();
      Chosen.Kept kept =
          new Chosen.Kept(
              block -> {
                if (killed.compareAndSet(false, true)) {
                  cluster.kill(1);
                }
              });
      Chosen.Found found = chosen.on(spark, kept, () -> false);
      assertThat(killed).isTrue();
      assertThat(cluster.isAlive(1)).isFalse();
      assertThat(cluster.isAlive(2)).as(cluster.logs()).isTrue();
      awaitMachines(1);
      assertThat(found).isEqualTo(chosen.onThreads());
    }
  }

  /** Machines that take tasks, the driver left out. */
  private static void awaitMachines(int count) {
    long endNs = System.nanoTime() + 60_000_000_000L;
    int last = -1;
    while (last != count && System.nanoTime() < endNs) {
      last = SparkContext.getOrCreate().statusTracker().getExecutorInfos().length - 1;
    }
    assertThat(last).isEqualTo(count);
  }

  private static SparkBlocks open(StandaloneCluster cluster, Chosen chosen) {
    try {
      SparkBlocks spark =
          (SparkBlocks)
              new SparkCluster()
                  .open(cluster.address(), 2, chosen.file.texts(), chosen.choose.recipe());
      assertThat(spark.cluster().orElseThrow().address()).isEqualTo(cluster.address());
      return spark;
    } catch (RuntimeException broken) {
      throw new AssertionError(cluster.logs(), broken);
    }
  }
}
