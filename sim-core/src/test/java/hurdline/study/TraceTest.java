package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.RunAnswer;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One day of one replication, event by event. */
class TraceTest {
  private static final LocalDateTime FROM = LocalDateTime.parse("2027-03-02T00:00");

  private static RunAnswer traced(int replication) {
    Span span = new Span(replication, FROM, FROM.plusDays(1));
    return Studied.run(
        Studied.EXAMPLE, new Effort(2, Optional.empty(), 1, 2, Optional.of(span)));
  }

  @Test
  void theSpanIsShownInOrderWithRatesAndLevels() {
    var trace = traced(2).trace();
    assertThat(trace.replication()).isEqualTo(2);
    assertThat(trace.heads())
        .containsExactly("feeder.cotton_line", "feeder.stalk_line", "hurd_bin");
    assertThat(trace.bins()).containsExactly("hurd_bin");
    assertThat(trace.rows()).hasSizeGreaterThan(50);
    assertThat(trace.rows()).isSortedAccordingTo((a, b) -> a.clock().compareTo(b.clock()));
    assertThat(trace.rows())
        .allSatisfy(
            row -> {
              assertThat(row.clock()).startsWith("2027-03-02T");
              assertThat(row.rates()[0]).as("no cotton in March").isZero();
              assertThat(row.rates()[1]).isBetween(0.0, 3.6 + 1e-9);
              assertThat(row.levels()[0]).isBetween(-1e-9, 9 + 1e-9);
            })
        .anySatisfy(row -> assertThat(row.rates()[1]).isPositive())
        .anySatisfy(row -> assertThat(row.levels()[0]).isGreaterThan(1));
  }

  @Test
  void lookingOnChangesNothing() {
    RunAnswer unseen = Studied.run(Studied.EXAMPLE, Studied.effort(2, 2));
    assertThat(traced(1).samples().values()).isDeepEqualTo(unseen.samples().values());
    assertThat(unseen.trace().isEmpty()).isTrue();
  }
}
