package hurdline.study;

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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twenty replications of the example on one thread and on two. Run {@code scripts/bench ThreadsBenchmark}; {@code floor}
 * hands the threads nothing to play.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class ThreadsBenchmark {
  private static final int REPLICATIONS = 20;

  @Param({"1", "2"})
  int threads;

  private Players players;
  private int last;
  private double sum;

  @Setup
  public void begin() throws IOException {
    try (InputStream file = ThreadsBenchmark.class.getResourceAsStream("/line-configs/sweetgum-bend.yaml")) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      Stage stage = Stage.of(PlantFile.of("sweetgum-bend.yaml", text).plant());
      players = new Players(stage, 1, threads, outcome -> sum += outcome.values()[0], replication -> null);
    }
  }

  @TearDown
  public void end() {
    players.close();
  }

  @Benchmark
  public double play() {
    last += REPLICATIONS;
    players.playTo(last, () -> {}, () -> false);
    return sum;
  }

  @Benchmark
  public double floor() {
    players.playTo(last, () -> {}, () -> false);
    return sum;
  }
}
