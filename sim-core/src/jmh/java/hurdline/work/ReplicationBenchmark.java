package hurdline.work;

import hurdline.chance.Streams;
import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.Roster;
import hurdline.line.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One full-year replication of the example plant on one core. Run {@code scripts/bench
 * ReplicationBenchmark -prof gc}; {@code gc.alloc.rate.norm} is what a whole replication allocates: its
 * streams and its outcome. {@code floor} only makes the streams' keys. Figures with machine and date:
 * {@code sim-core/src/jmh/results.csv}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 2, jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class ReplicationBenchmark {
  private final Streams streams = new Streams(1);
  private Replication replication;
  private int next;

  @Setup
  public void compile() throws IOException {
    Plant plant = PlantFile.of("sweetgum-bend.yaml", example()).plant();
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    replication =
        new Replication(Layout.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  private static String example() throws IOException {
    try (InputStream file =
        ReplicationBenchmark.class.getResourceAsStream("/line-configs/sweetgum-bend.yaml")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Benchmark
  public Outcome year() {
    return replication.run(streams, 1 + next++ % 40, null);
  }

  @Benchmark
  public double floor() {
    double sum = 0;
    for (int source = 0; source < 60; source++) {
      sum += streams.of(1 + next++ % 40, "source").next();
    }
    return sum;
  }
}
