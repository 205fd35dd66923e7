package hurdline.command;

import hurdline.study.Aim;
import hurdline.study.Effort;
import hurdline.study.Span;
import java.util.Optional;
import picocli.CommandLine;

/** How much is played, and by which draws. */
final class EffortFlags {
  @CommandLine.Option(
      names = "--replications",
      paramLabel = "N",
      defaultValue = "40",
      description = "How many times the calendar is played. Default: 40.")
  private int replications;

  @CommandLine.Option(
      names = "--until",
      paramLabel = "MEASURE:AIM",
      converter = AimReader.class,
      description =
          "Goes on until the 95 %% interval of a measure is known to plus or minus an aim: 2%% of"
              + " its mean, or 500t.")
  private Aim until;

  @CommandLine.Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Seed of all chance; the same seed gives the same answer. Default: 1.")
  private long seed;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "T",
      description =
          "How many replications are played at once; the answer does not hang on it. Default: all"
              + " cores.")
  private Integer threads;

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
   * The effort that the flags ask for.
   *
   * @throws CallException for what only shows when flags are looked at together
   */
  Effort effort() {
    check();
    int cores = Runtime.getRuntime().availableProcessors();
    int traced = replication == null ? 1 : replication;
    return new Effort(
        replications,
        Optional.ofNullable(until),
        seed,
        threads == null ? cores : threads,
        Optional.ofNullable(trace).map(span -> new Span(traced, span.from(), span.to())));
  }

  private void check() {
    atLeastOne("--replications", replications);
    if (threads != null) {
      atLeastOne("--threads", threads);
    }
    if (replication != null && trace == null) {
      throw new CallException(
          "--replication says which one --trace shows; expected --trace FROM..TO beside it");
    }
    if (replication != null && (replication < 1 || replication > replications)) {
      throw new CallException(
          "--replication " + replication + " is not played; expected 1 to " + replications);
    }
  }

  static void atLeastOne(String name, int value) {
    if (!(value >= 1)) {
      throw new CallException(
          name + " " + value + " is too few; expected a whole number from 1 on");
    }
  }
}
