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
 * A year of {@link OneLine} by the engine and by the two ways in which it may be written without
 * one, each with its error against the exact answer. Run {@code scripts/bench OtherWaysBenchmark};
 * {@code floor} only works out the exact answer.
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

  private double simulatedT;

  @TearDown
  public void sayError() {
    System.out.printf(
        "%n%.6f t, off by %.1e%n", simulatedT, Math.abs(simulatedT / OneLine.exactT() - 1));
  }

  @Benchmark
  public double engine() {
    return simulatedT = OneLine.simulatedT(replication, streams, 1 + next++ % 40);
  }

  @Benchmark
  public double secondSteps() {
    return simulatedT = SecondSteps.simulatedT();
  }

  @Benchmark
  public double kilogramParcels() {
    return simulatedT = KilogramParcels.simulatedT();
  }

  @Benchmark
  public double floor() {
    return simulatedT = OneLine.exactT();
  }
}
