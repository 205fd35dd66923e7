package hurdline.random;

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
 * One draw. Run {@code scripts/bench DrawsBenchmark}; read {@code draw} minus {@code floor}, which
 * only takes the next number of a stream.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class DrawsBenchmark {
  @Param({"normal", "normal cut", "lognormal cut", "exponential", "triangular", "gamma"})
  String what;

  private Draws draws;
  private RandomStream stream;

  @Setup
  public void prepare() {
    stream = new RandomStreams(1).of(1, "floor");
    draws = new Draws(distribution(), new RandomStreams(1).of(1, what));
  }

  private Distribution distribution() {
    return switch (what) {
      case "normal" -> Normal.of(1050, 70);
      case "normal cut" -> new Normal(1050, 70, 700, Double.POSITIVE_INFINITY);
      case "lognormal cut" -> new Lognormal(18, 10, 8, Double.POSITIVE_INFINITY);
      case "exponential" -> Exponential.of(9);
      case "triangular" -> new Triangular(2, 3, 6);
      case "gamma" -> Gamma.of(30, 12);
      default ->
          throw new IllegalArgumentException("what is " + what + "; expected one of the list");
    };
  }

  @Benchmark
  public double draw() {
    return draws.next();
  }

  @Benchmark
  public double floor() {
    return stream.next();
  }
}
