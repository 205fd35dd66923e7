package hurdline.command;

import java.time.Duration;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * How fast work goes, by the work itself. Java makes a program faster while it works, for a small
 * plant and a large one four times within the first ten to fifteen seconds that processors spend on
 * it; what was done by then says too little, so the pace is that of as long again.
 */
final class WorkPace {
  private static final double COLD_CPU_S = 14;
  private static final double COLD_S = 5;

  /** What other machines have done comes in lots, and nobody says what they spent on it. */
  private static final double COLD_ELSEWHERE_S = 15;

  private static final double NANO = 1e-9;

  private final DoubleSupplier clockS;
  private final DoubleSupplier cpuS;
  private final double coldS;
  private final double begunS;
  private double warmS = Double.NaN;
  private int doneWarm;

  /** Of work on this machine from now on. */
  static WorkPace here() {
    return new WorkPace(() -> System.nanoTime() * NANO, WorkPace::processorS, COLD_S);
  }

  /** Of work on others from now on. */
  static WorkPace elsewhere() {
    return new WorkPace(
        () -> System.nanoTime() * NANO, () -> Double.POSITIVE_INFINITY, COLD_ELSEWHERE_S);
  }

  /**
   * @param cpuS seconds that processors have spent on this program
   * @param coldS seconds after which it may be warm at the soonest
   */
  WorkPace(DoubleSupplier clockS, DoubleSupplier cpuS, double coldS) {
    this.clockS = clockS;
    this.cpuS = cpuS;
    this.coldS = coldS;
    begunS = clockS.getAsDouble();
  }

  private static double processorS() {
    Duration spent =
        ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ofSeconds(1_000_000));
    return spent.toNanos() * NANO;
  }

  /** Seconds gone since the begin. */
  double goneS() {
    return clockS.getAsDouble() - begunS;
  }

  /**
   * Seconds that one of many takes, all threads together; empty before that can be said.
   *
   * @param done so far
   */
  OptionalDouble secondsEach(int done) {
    double gone = goneS();
    if (Double.isNaN(warmS)) {
      if (gone > coldS && cpuS.getAsDouble() > COLD_CPU_S) {
        warmS = gone;
        doneWarm = done;
      }
      return OptionalDouble.empty();
    }
    return gone < 2 * warmS || done == doneWarm
        ? OptionalDouble.empty()
        : OptionalDouble.of((gone - warmS) / (done - doneWarm));
  }
}
