package hurdline.sample;

import hurdline.answer.Day;
import hurdline.answer.Day.Bar;
import hurdline.answer.Day.Curve;
import hurdline.answer.RunAnswer;
import hurdline.answer.Trace;
import hurdline.measure.State;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented span of eight hours, for tests of what is made of it. No figure in here is a result.
 */
public final class SampleDay {
  private SampleDay() {}

  /** {@link SampleAnswer} with a trace. */
  public static RunAnswer traced() {
    RunAnswer year = SampleAnswer.year();
    return Draft.from(year)
        .with(
            RunAnswer::trace,
            new Trace(3, List.of("feeder", "hurd_bin"), List.of("hurd_bin"), List.of(), day()))
        .made();
  }

  public static Day day() {
    return new Day(
        LocalDateTime.of(2027, 7, 6, 6, 0),
        LocalDateTime.of(2027, 7, 6, 14, 0),
        List.of(
            new Bar("feeder", State.FULL_RATE, "", 0, 2),
            new Bar("feeder", State.DOWN, "cleaning", 2, 2.5),
            new Bar("feeder", State.SLOWED, "", 2.5, 8),
            new Bar("mill", State.STARVED, "", 0, 0.5),
            new Bar("mill", State.FULL_RATE, "", 0.5, 6),
            new Bar("mill", State.DOWN, "choke+hammers", 6, 8),
            new Bar("gin_stands", State.UNUSED, "", 0, 8)),
        List.of(
            curve(Day.Of.RATE, "feeder", "t/h", new double[] {0, 2, 2.5, 8}, 3, 0, 1.5, 1.5),
            flicker(),
            curve(Day.Of.BIN, "hurd_bin", "t", new double[] {0, 2, 2.5, 8}, 1, 3, 2.5, 4),
            curve(Day.Of.GATE, "stalk", "count", new double[] {0, 3, 4, 8}, 0, 1, 0, 0),
            curve(Day.Of.GATE, "seed_cotton", "count", new double[] {0, 8}, 0, 0),
            curve(Day.Of.YARD, "stalk", "bales", new double[] {0, 4, 8}, 812, 848, 848)));
  }

  /** Full for three seconds, none for one, again and again. */
  private static Curve flicker() {
    List<Double> hours = new ArrayList<>();
    for (int at = 0; at < 8 * 900; at++) {
      hours.add(at / 900.0);
      hours.add((at + 0.75) / 900.0);
    }
    hours.add(8.0);
    double[] values = new double[hours.size()];
    for (int at = 0; at < values.length; at += 2) {
      values[at] = 2;
    }
    return curve(
        Day.Of.RATE, "hurd_bin", "t/h", hours.stream().mapToDouble(h -> h).toArray(), values);
  }

  private static Curve curve(
      Day.Of of, String name, String unit, double[] hours, double... values) {
    return new Curve(of, name, unit, hours, values);
  }
}
