package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ReplicationAllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /**
   * A warm replication allocates its streams and its outcome; four times the events cost no more.
   */
  @Test
  void moreEventsCostNoMoreMemory() {
    Plant coarse = plant("400 lb");
    Plant fine = plant("40 lb");
    long few = warmBytes(coarse);
    long many = warmBytes(fine);
    // ten times the bags make some 170,000 events more; a single byte for each would show
    assertThat(many - few).isLessThan(60_000);
  }

  /** Bags that wait in a store and leave by trucks are events of their own. */
  @Test
  void morePackagesInAStoreCostNoMoreMemory() {
    long few = warmBytes(stored("400 lb"));
    long many = warmBytes(stored("100 lb"));
    assertThat(many - few).isLessThan(60_000);
  }

  private static Plant stored(String bag) {
    String trucks = "{at: \"09:00\", load: 4 ton}";
    return PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml"))
        .variants()
        .with(
            new Change.Value("packages.bulk_bag.mass", bag),
            new Change.Value("packages.bulk_bag.change", "1 s"),
            new Change.Value("stores", "{shed: {holds: 60 ton}}"),
            new Change.Value("products.coarse_hurd.store", "shed"),
            new Change.Value("products.coarse_hurd.pick_ups", trucks),
            new Change.Value("products.medium_hurd.store", "shed"),
            new Change.Value("products.medium_hurd.pick_ups", trucks));
  }

  @Test
  void theCountNoticesAnAllocation() {
    long id = Thread.currentThread().getId();
    long before = THREADS.getThreadAllocatedBytes(id);
    Object[] kept = new Object[10_000];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = new double[1];
    }
    assertThat(kept[9_999]).isNotNull();
    assertThat(THREADS.getThreadAllocatedBytes(id) - before).isGreaterThan(100_000);
  }

  private static Plant plant(String bag) {
    return PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml"))
        .variants()
        .with(
            new Change.Value("packages.bulk_bag.mass", bag),
            new Change.Value("packages.bulk_bag.change", "1 s"));
  }

  private static long warmBytes(Plant plant) {
    Replication one = Ready.replication(plant);
    RandomStreams streams = new RandomStreams(1);
    long least = Long.MAX_VALUE;
    for (int k = 0; k < 4; k++) {
      long before = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
      one.run(streams, 1, null);
      least =
          Math.min(least, THREADS.getThreadAllocatedBytes(Thread.currentThread().getId()) - before);
    }
    return least;
  }
}
