package hurdline.flow.rates;

import hurdline.flow.LimitSharingNet;
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
 * One solve of a small line. Run {@code scripts/bench RateSolverBenchmark}; read {@code solve}
 * minus {@code floor}, which only writes the reaches, different ones each time so that no answer
 * can be foretold. Figures with machine and date: {@code sim-core/src/jmh/results.csv}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RateSolverBenchmark {
  /** What happens on the line. */
  public enum Line {
    /** A feeder and a mill; the bin between them is full and falls. */
    FULL_BIN_THAT_HOLDS_NOBODY,
    /** The same, and the mill is the slower. */
    FULL_BIN_THAT_HOLDS_ITS_PRODUCER,
    /** Five heads in a row, four bins between them full, the last head the slowest. */
    FOUR_FULL_BINS_IN_A_ROW,
    /** Three heads on one machine, one of them into an empty bin. */
    SHARED_MACHINE_AND_EMPTY_BIN,
    /** One cyclone before and after a full bin. */
    KNOT
  }

  private static final int VARIANTS = 64;

  @Param Line line;
  private RateSolver solver;
  private double[] reach; // [variant * heads + head]
  private int heads;
  private int next;

  @Setup
  public void build() {
    LimitSharingNet net = netOf(line);
    heads = net.heads;
    reach = new double[VARIANTS * heads];
    for (int variant = 0, at = 0; variant < VARIANTS; variant++) {
      for (int head = 0; head < heads; head++, at++) {
        reach[at] =
            net.reach[head] * (1 + 0.001 * ((variant * 37 + head * 11) % VARIANTS) / VARIANTS);
      }
    }
    solver = net.newSolver();
  }

  private static LimitSharingNet netOf(Line line) {
    return switch (line) {
      case FULL_BIN_THAT_HOLDS_NOBODY -> LimitSharingNet.reaching(1, 2, 6).limit(0, 0, 0.8, -1);
      case FULL_BIN_THAT_HOLDS_ITS_PRODUCER ->
          LimitSharingNet.reaching(1, 6, 2).limit(0, 0, 0.8, -1);
      case FOUR_FULL_BINS_IN_A_ROW ->
          LimitSharingNet.reaching(4, 6, 5, 4, 3, 2)
              .limit(0, 0, 0.9, -1, 0, 0, 0)
              .limit(1, 0, 0, 0.9, -1, 0, 0)
              .limit(2, 0, 0, 0, 0.9, -1, 0)
              .limit(3, 0, 0, 0, 0, 0.9, -1);
      case SHARED_MACHINE_AND_EMPTY_BIN ->
          LimitSharingNet.reaching(2, 6, 6, 40).limit(0, 6, 1, 1, 0).limit(1, 0, -1, 0, 1);
      case KNOT -> LimitSharingNet.reaching(2, 3, 2.5).limit(0, 6, 2, 1).limit(1, 0, 1, -1);
    };
  }

  private void writeReaches() {
    next = (next + 1) % VARIANTS;
    double[] to = solver.reachKgPerS();
    for (int head = 0, at = next * heads; head < heads; head++, at++) {
      to[head] = reach[at];
    }
  }

  @Benchmark
  public double solve() {
    writeReaches();
    solver.solve();
    return solver.rateKgPerS()[0];
  }

  @Benchmark
  public double floor() {
    writeReaches();
    return solver.reachKgPerS()[0];
  }
}
