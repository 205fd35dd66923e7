package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.Day;
import hurdline.answer.RunAnswer;
import hurdline.measure.EventKind;
import hurdline.measure.State;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One day of one replication, event by event. */
class TraceTest {
  private static final LocalDateTime FROM = LocalDateTime.parse("2027-03-02T00:00");

  private static RunAnswer traced(int replication) {
    TraceWindow span = new TraceWindow(replication, FROM, FROM.plusDays(1));
    return Studied.run(
        Studied.EXAMPLE, new RunSettings(2, Optional.empty(), 1, 2, Optional.of(span)));
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
  void theBarsOfADayLeaveNoGapAndNameTheirStops() {
    Day day = traced(2).trace().day();
    assertThat(day.machines()).contains("mill", "stalk_saw", "gin_stands");
    for (String machine : day.machines()) {
      double end = 0;
      for (Day.Bar bar : day.bars()) {
        if (bar.machine().equals(machine)) {
          assertThat(bar.fromH()).as(machine).isEqualTo(end);
          assertThat(bar.lastsH()).isPositive();
          assertThat(bar.stop().isEmpty()).isEqualTo(bar.state() != State.DOWN);
          end = bar.toH();
        }
      }
      assertThat(end).as(machine).isEqualTo(24);
    }
    assertThat(day.bars()).anyMatch(bar -> bar.stop().equals("cleaning"));
  }

  @Test
  void whatTheFeederTakesInADayIsWhatItsRateComesTo() {
    hurdline.answer.Trace trace = traced(2).trace();
    Day.Curve rate =
        trace.day().curves(Day.Of.RATE).stream()
            .filter(curve -> curve.name().equals("feeder.stalk_line"))
            .findFirst()
            .orElseThrow();
    double lifted =
        trace.rows().stream()
            .filter(row -> row.what() == EventKind.LEAVES_FOR_TABLE)
            .mapToDouble(hurdline.answer.Trace.Row::amount)
            .sum();
    Day.Curve yard =
        trace.day().curves(Day.Of.YARD).stream()
            .filter(curve -> curve.name().equals("stalk"))
            .findFirst()
            .orElseThrow();
    assertThat(lifted).isPositive();
    assertThat(yard.values()[0] - yard.values()[yard.values().length - 1]).isEqualTo(lifted);
    // A day's bales are 350 to 470 kg on average; what lies on the table at both ends is a bale or
    // two.
    assertThat(24 * rate.mean()).isBetween(0.35 * (lifted - 3), 0.47 * (lifted + 3));
  }

  @Test
  void aSpanThatBeginsInTheMiddleHasTheLevelsOfThatInstant() {
    LocalDateTime noon = FROM.plusHours(12);
    TraceWindow half = new TraceWindow(2, noon, noon.plusHours(6));
    RunSettings effort = new RunSettings(2, Optional.empty(), 1, 2, Optional.of(half));
    Day part = Studied.run(Studied.EXAMPLE, effort).trace().day();
    Day whole = traced(2).trace().day();
    for (int at = 0; at < part.curves().size(); at++) {
      Day.Curve curve = part.curves().get(at);
      assertThat(curve.values()[0])
          .as(curve.of() + " " + curve.name())
          .isCloseTo(at(whole.curves().get(at), 12), within(1e-9));
      assertThat(curve.values()[curve.values().length - 1])
          .isCloseTo(at(whole.curves().get(at), 18), within(1e-9));
    }
  }

  private static double at(Day.Curve curve, double hour) {
    double[] hours = curve.hours();
    int next = 1;
    while (next < hours.length - 1 && hours[next] <= hour) {
      next++;
    }
    double before = curve.values()[next - 1];
    return curve.of() == Day.Of.BIN
        ? before
            + (curve.values()[next] - before)
                * (hour - hours[next - 1])
                / (hours[next] - hours[next - 1])
        : before;
  }

  @Test
  void lookingOnChangesNothing() {
    RunAnswer unseen = Studied.run(Studied.EXAMPLE, Studied.effort(2, 2));
    assertThat(traced(1).samples().values()).isDeepEqualTo(unseen.samples().values());
    assertThat(unseen.trace().isEmpty()).isTrue();
  }
}
