package hurdline.simulation;

import hurdline.random.RandomStreams;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A year of {@link OneLine by the engine and by the two ways in which it may be written without one, each with its error
 * against the exact answer. Run {@code scripts/bench OtherWaysBenchmark}; {@code floor} only works out the exact answer.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class OtherWaysBenchmark {
  private final RandomStreams streams = new RandomStreams(1);
  private final Replication replication = OneLine.replication();
  private int next;

  private double playedT;

  @TearDown
  public void sayError() {
    System.out.printf("%n%.6f t, off by %.1e%n", playedT, Math.abs(playedT / OneLine.exactT() - 1));
  }

  @Benchmark
  public double engine() {
    return playedT = OneLine.playedT(replication, streams, 1 + next++ % 40);
  }

  @Benchmark
  public double secondSteps() {
    return playedT = SecondSteps.playedT();
  }

  @Benchmark
  public double kilogramParcels() {
    return playedT = KilogramParcels.playedT();
  }

  @Benchmark
  public double floor() {
    return playedT = OneLine.exactT();
  }
}
