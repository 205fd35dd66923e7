package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.BottleneckRow;
import hurdline.answer.MachineTime;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BinBehindTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  /**
   * The feeder limits for most hours; hours of it and of the mill, and those of the full bin
   * between them.
   */
  private static List<String> said(
      Map<State, Double> feeder, Map<State, Double> mill, double fullH) {
    RunAnswer year =
        SampleAnswer.limitedBy(
            List.of(
                new BottleneckRow(
                    "base", "stalk_line", "feeder", 1500, 0.75, 0.74, 0.76, "student"),
                new BottleneckRow("base", "stalk_line", "mill", 200, 0.10, 0.09, 0.11, "student")));
    List<SummaryRow> summary = new ArrayList<>(year.summary());
    summary.removeIf(row -> row.measure().equals(Measure.BIN_HOURS_FULL.of("hurd_bin")));
    summary.add(
        Draft.of(SummaryRow.class)
            .with(SummaryRow::measure, Measure.BIN_HOURS_FULL.of("hurd_bin"))
            .with(SummaryRow::unit, "h")
            .with(SummaryRow::mean, fullH)
            .made());
    List<MachineTime> machines =
        List.of(
            new MachineTime("feeder", "bale-feeder", hours(feeder)),
            new MachineTime("mill", "hammer-mill", hours(mill)));
    return new RunHeadline(
            Draft.from(year)
                .with(RunAnswer::summary, summary)
                .with(RunAnswer::machines, machines)
                .made(),
            US)
        .sentences();
  }

  private static List<Double> hours(Map<State, Double> some) {
    return Arrays.stream(State.values()).map(state -> some.getOrDefault(state, 0.0)).toList();
  }

  @Test
  void whatDrawsFromABinThatFillsUpDecides() {
    assertThat(
            said(
                Map.of(State.FULL_RATE, 1500.0, State.BLOCKED, 250.0, State.SLOWED, 50.0),
                Map.of(State.FULL_RATE, 1700.0, State.STARVED, 35.0),
                900))
        .startsWith(
            "The feeder is the bottleneck: it limits the stalk line in 75 of 100 scheduled hours.",
            "But the hurd bin behind it fills up: over the season the mill and what follows decide"
                + " what the line makes, and a faster feeder may bring little; compare --gain"
                + " simulates 10 % more of each.");
  }

  /**
   * Blocked by something else than the bin; a mill that waits for longer; a bin that fills now and
   * then.
   */
  @Test
  void elseTheMachineItselfDecides() {
    Map<State, Double> feeder = Map.of(State.FULL_RATE, 1500.0, State.BLOCKED, 250.0);
    Map<State, Double> mill = Map.of(State.FULL_RATE, 1700.0, State.STARVED, 35.0);
    assertThat(said(feeder, mill, 20)).noneMatch(sentence -> sentence.startsWith("But"));
    assertThat(said(feeder, Map.of(State.FULL_RATE, 1400.0, State.STARVED, 335.0), 900))
        .noneMatch(sentence -> sentence.startsWith("But"));
    assertThat(said(feeder, Map.of(State.FULL_RATE, 1000.0, State.SLOWED, 400.0), 900))
        .noneMatch(sentence -> sentence.startsWith("But"));
    assertThat(
            said(
                Map.of(State.FULL_RATE, 1500.0, State.BLOCKED, 25.0),
                Map.of(State.FULL_RATE, 1700.0),
                900))
        .noneMatch(sentence -> sentence.startsWith("But"));
  }
}
