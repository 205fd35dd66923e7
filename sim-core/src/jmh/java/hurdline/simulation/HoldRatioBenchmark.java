package hurdline.simulation;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An event of the example beside a step of the hold loop. Run {@code scripts/bench
 * HoldRatioBenchmark}; read the lines that say the ratio after each iteration; they need no floor,
 * since the hold loop is it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xmx1g", "-XX:+UseSerialGC"}) // as the launcher starts it
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class HoldRatioBenchmark {
  private final HoldRatio pair = new HoldRatio(Example.replication(), 40);

  @Setup(Level.Iteration)
  public void countAnew() {
    pair.reset();
  }

  @TearDown(Level.Iteration)
  public void say() {
    System.out.printf(
        "%n%.0f ns an event, %.0f ns a hold, ratio %.2f%n",
        pair.nsPerEvent(), pair.nsPerHold(), pair.ratio());
  }

  @Benchmark
  public double yearThenHolds() {
    pair.turn();
    return pair.kept();
  }
}
