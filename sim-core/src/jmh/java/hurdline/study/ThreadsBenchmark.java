package hurdline.study;

import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.CompiledPlant;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationRunner;
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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twenty replications of the example on one thread and on two. Run {@code scripts/bench
 * ThreadsBenchmark}; {@code floor} hands the threads nothing to simulate.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class ThreadsBenchmark {
  private static final int REPLICATIONS = 20;

  @Param({"1", "2"})
  int threads;

  private ReplicationRunner runner;
  private CompiledPlant stage;
  private int last;
  private double sum;

  @Setup
  public void begin() throws IOException {
    try (InputStream file =
        ThreadsBenchmark.class.getResourceAsStream("/line-configs/sweetgum-bend.yaml")) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      stage = CompiledPlant.of(PlantFile.of("sweetgum-bend.yaml", text).plant());
      runner = new ReplicationRunner(1, threads);
    }
  }

  @TearDown
  public void end() {
    runner.close();
  }

  @Benchmark
  public double simulate() {
    ReplicationRange range = new ReplicationRange(last + 1, last + 1 + REPLICATIONS);
    last += REPLICATIONS;
    return sum(range);
  }

  @Benchmark
  public double floor() {
    return sum(new ReplicationRange(1, 1));
  }

  private double sum(ReplicationRange range) {
    runner.run(stage, range, outcome -> sum += outcome.values()[0], () -> {}, () -> false);
    return sum;
  }
}
