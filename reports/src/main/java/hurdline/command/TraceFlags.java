package hurdline.command;

import hurdline.study.replicate.TraceWindow;
import java.util.Optional;
import picocli.CommandLine;

/** What of a run is shown event by event. */
final class TraceFlags {
  @CommandLine.Option(
      names = "--trace",
      paramLabel = "FROM..TO",
      converter = TraceSpan.Reader.class,
      description =
          "Writes every event of one replication between two dates or times into trace.csv, such as"
              + " 2027-06-07..2027-06-08 or 2027-06-07T06:00..2027-06-07T14:30.")
  private TraceSpan trace;

  @CommandLine.Option(
      names = "--replication",
      paramLabel = "K",
      description = "Which replication --trace shows. Default: 1.")
  private Integer replication;

  /**
   * @param simulated how many replications there will be at least
   * @throws CallException if the replication asked for is none of them, or nothing is traced
   */
  Optional<TraceWindow> span(int simulated) {
    if (replication != null && trace == null) {
      throw new CallException(
          "--replication says which one --trace shows; expected --trace FROM..TO beside it");
    }
    if (replication != null && (replication < 1 || replication > simulated)) {
      throw new CallException(
          "--replication " + replication + " is not simulated; expected 1 to " + simulated);
    }
    int traced = replication == null ? 1 : replication;
    return Optional.ofNullable(trace).map(span -> new TraceWindow(traced, span.from(), span.to()));
  }
}
