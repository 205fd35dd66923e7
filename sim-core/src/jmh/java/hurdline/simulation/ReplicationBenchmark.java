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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One full-year replication of the example plant on one core. Run {@code scripts/bench
 * ReplicationBenchmark -prof gc}; {@code gc.alloc.rate.norm} is what a whole replication allocates:
 * its streams and its outcome. {@code floor} only makes the streams' keys. Figures with machine and
 * date: {@code sim-core/src/jmh/results.csv}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class ReplicationBenchmark {
  private final RandomStreams streams = new RandomStreams(1);
  private final Replication replication = Example.replication();
  private int next;

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
