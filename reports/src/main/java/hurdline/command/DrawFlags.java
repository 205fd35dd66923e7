package hurdline.command;

import hurdline.service.FittedFigures;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;

/** By which draws is simulated, and on how many threads. */
final class DrawFlags {
  @CommandLine.Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Seed of all random draws; the same seed gives the same answer. Default: 1.")
  private long seed;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "T",
      description =
          "How many replications run at once; the answer does not depend on it. Default: all"
              + " cores.")
  private Integer threads;

  @CommandLine.Option(
      names = "--draws",
      paramLabel = "FILE",
      description =
          "Joint draws of inputs, such as draws.csv of hurdline fit with --patch fitted.yaml: replication k is"
              + " simulated with row k too, and intervals then cover the inputs as well.")
  private Path draws;

  /** Whether the number of threads was named. */
  boolean nameThreads() {
    return threads != null;
  }

  /**
   * The effort that the flags ask for.
   *
   * @throws CallException for a number that is too small
   */
  RunSettings effort(int replications, Optional<Precision> until, Optional<TraceWindow> trace) {
    return new RunSettings(
        replications,
        until,
        seed,
        threads(),
        trace,
        Optional.ofNullable(draws).map(FittedFigures::draws));
  }

  /** The effort of so many replications. */
  RunSettings effort(int replications) {
    return effort(replications, Optional.empty(), Optional.empty());
  }

  /** As many as the flag says, else one for each core. */
  private int threads() {
    if (threads == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    atLeast("--threads", threads, 1);
    return threads;
  }

  /**
   * @throws CallException if it is not
   */
  static void atLeast(String name, int value, int fewest) {
    if (!(value >= fewest)) {
      throw new CallException(
          name + " " + value + " is too few; expected a whole number from " + fewest + " on");
    }
  }
}
