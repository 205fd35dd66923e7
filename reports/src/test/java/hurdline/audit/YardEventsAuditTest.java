package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.TestInstance.Lifecycle.PER_CLASS;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * What terms of purchase and places did in one replication, counted again from its events alone:
 * loads kept apart, failed and rejected, and the stacks that were covered.
 */
@TestInstance(PER_CLASS)
class YardEventsAuditTest {
  private static final double SHED = 100;
  private static final double STACK = 5 * 2 * 2;
  private static final Duration RELEASE = Duration.ofHours(6);
  private static final double COST_PER_FAILED = 35;

  private Samples samples;
  private List<Table.Row> events;

  @BeforeAll
  void theCommandIsCalled(@TempDir Path dir) throws IOException {
    WrittenAnswer answer =
        WrittenAnswer.of(
            "run",
            Plants.small(),
            dir.resolve("run"),
            "--replications",
            "3",
            "--trace",
            "2027-01-01..2027-12-31",
            "--replication",
            "3");
    samples = answer.samples(answer.options().get(0));
    events = answer.table("trace.csv").rows().toList();
  }

  private double of(Measure measure, String... names) {
    return samples.at(2, measure, names);
  }

  private double sum(String what) {
    return events.stream()
        .filter(row -> row.is("where", "stalk") && row.is("what", what))
        .mapToDouble(row -> row.number("amount"))
        .sum();
  }

  private static LocalDateTime clock(Table.Row row) {
    return LocalDateTime.parse(row.text("clock"));
  }

  /** Each load waits its six hours, in turn, and the most bales that did so at once are told. */
  @Test
  void loadsAreKeptApartUntilTheirTimeIsOver() {
    ArrayDeque<Table.Row> waiting = new ArrayDeque<>();
    double kept = 0;
    double most = 0;
    for (Table.Row row : events) {
      if (row.is("where", "stalk") && row.is("what", "unloaded")) {
        waiting.add(row);
        kept += row.number("amount");
        most = Math.max(most, kept);
      } else if (row.is("what", "released") || row.is("what", "failed its test")) {
        Table.Row load = waiting.remove();
        assertThat(row.number("amount")).isEqualTo(load.number("amount"));
        assertThat(Duration.between(clock(load), clock(row)).minus(RELEASE).abs())
            .isLessThanOrEqualTo(Duration.ofSeconds(1));
        kept -= row.number("amount");
      }
    }
    assertThat(of(Measure.YARD_KEPT_APART, "stalk")).isPositive().isEqualTo(most);
  }

  @Test
  void whatFailedOrWasRejectedIsTold() {
    double failed = sum("failed its test");
    assertThat(of(Measure.INTAKE_FAILED, "stalk")).isPositive().isEqualTo(failed);
    assertThat(of(Measure.INTAKE_REJECTED, "stalk")).isEqualTo(sum("rejected"));
    assertThat(of(Measure.INTAKE_WEIGHED_IN, "stalk")).isEqualTo(sum("weighed in") - failed);
    long loads = events.stream().filter(row -> row.is("what", "failed its test")).count();
    assertThat(of(Measure.MONEY_CROP_FAILED, "stalk"))
        .isCloseTo(loads * COST_PER_FAILED, within(1e-9));
  }

  /** Bales go to the shed while it has room; a failed one is taken out of where its load went. */
  @Test
  void stacksAreCoveredForWhatCameToTheShed() {
    ArrayDeque<Double> inShed = new ArrayDeque<>(); // of each load that is kept apart
    double shed = 0;
    double came = 0;
    for (Table.Row row : events) {
      double bales = row.number("amount");
      if (row.is("where", "stalk") && row.is("what", "unloaded")) {
        double here = Math.min(bales, SHED - shed);
        inShed.add(here);
        shed += here;
        came += here;
      } else if (row.is("what", "released")) {
        inShed.remove();
      } else if (row.is("what", "failed its test")) {
        shed -= inShed.remove();
      } else if (row.is("where", "shed") && row.is("what", "bale leaves for the table")) {
        shed--;
      } else if (row.is("where", "shed") && row.is("what", "bale put back")) {
        shed++;
      }
    }
    assertThat(of(Measure.YARD_PLACE_COVERED, "shed"))
        .isPositive()
        .isEqualTo(Math.ceil(came / STACK));
  }
}
