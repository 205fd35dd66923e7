package hurdline.command;

import hurdline.service.FittedFigures;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;

/** How much is simulated, and by which draws. */
final class EffortFlags {
  @CommandLine.Option(
      names = "--replications",
      paramLabel = "N",
      defaultValue = "40",
      description = "How many times the calendar is simulated, for each plant. Default: 40.")
  private int replications;

  @CommandLine.Option(
      names = "--until",
      paramLabel = "MEASURE:AIM",
      converter = AimReader.class,
      description =
          "Goes on until the 95 %% interval of a measure is known to plus or minus an aim: 2%% of"
              + " its mean, or 500t. Where plants are compared: until that of each difference is, 2%%"
              + " being of the base's mean. A yard asks the yard without limit. At least 40"
              + " replications, at most 10,000.")
  private Precision until;

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

  /**
   * The effort that the flags ask for.
   *
   * @throws CallException for a number that is too small
   */
  RunSettings effort(Optional<TraceWindow> trace) {
    atLeast("--replications", replications, 1);
    return new RunSettings(
        replications,
        Optional.ofNullable(until),
        seed,
        threads(threads),
        trace,
        Optional.ofNullable(draws).map(FittedFigures::draws));
  }

  /** The effort where nothing is shown event by event. */
  RunSettings effort() {
    return effort(Optional.empty());
  }

  int replications() {
    return replications;
  }

  /**
   * As many as the flag says, else one for each core.
   *
   * @throws CallException for a number that is too small
   */
  static int threads(Integer given) {
    if (given == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    atLeast("--threads", given, 1);
    return given;
  }

  static void atLeast(String name, int value, int fewest) {
    if (!(value >= fewest)) {
      throw new CallException(
          name + " " + value + " is too few; expected a whole number from " + fewest + " on");
    }
  }
}
