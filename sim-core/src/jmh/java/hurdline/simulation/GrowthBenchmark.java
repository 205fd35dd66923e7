package hurdline.simulation;

import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How the time of a replication grows with the years and with the machines of a {@link GrownPlant}.
 * Run {@code scripts/bench GrowthBenchmark}; {@code floor} only makes one stream's key.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class GrowthBenchmark {
  /** Machines and years, each grown while the other stands. */
  @Param({"20x1", "20x2", "20x5", "20x10", "5x1", "80x1"})
  String machinesByYears;

  private final RandomStreams streams = new RandomStreams(1);
  private Replication replication;
  private int next;

  @Setup
  public void compile() {
    String[] both = machinesByYears.split("x");
    replication =
        new GrownPlant(Integer.parseInt(both[0]), Integer.parseInt(both[1])).replication();
  }

  @Benchmark
  public Outcome simulate() {
    return replication.run(streams, 1 + next++ % 40, null);
  }

  @Benchmark
  public double floor() {
    return streams.of(1 + next++ % 40, "source").next();
  }
}
