package hurdline.command;

import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
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

  @CommandLine.Mixin private DrawFlags draws;

  /**
   * The effort that the flags ask for.
   *
   * @throws CallException for a number that is too small
   */
  RunSettings effort(Optional<TraceWindow> trace) {
    DrawFlags.atLeast("--replications", replications, 1);
    return draws.effort(replications, Optional.ofNullable(until), trace);
  }

  /** The effort where nothing is shown event by event. */
  RunSettings effort() {
    return effort(Optional.empty());
  }

  int replications() {
    return replications;
  }
}
