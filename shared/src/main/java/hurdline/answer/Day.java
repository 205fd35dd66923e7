package hurdline.answer;

import hurdline.measure.State;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A span of one replication as a picture shows it; hours count from its beginning.
 *
 * @param from local time
 * @param to local time
 * @param bars what each machine did, machine by machine in the plant file's order, in order of time
 *     and without gaps
 * @param curves rates, levels and trucks
 */
public record Day(LocalDateTime from, LocalDateTime to, List<Bar> bars, List<Curve> curves) {
  public Day {
    bars = List.copyOf(bars);
    curves = List.copyOf(curves);
  }

  /**
   * A machine in one state.
   *
   * @param stop in {@link State#DOWN} the stops that it is in, joined by a plus; else empty
   */
  public record Bar(String machine, State state, String stop, double fromH, double toH) {
    public double lastsH() {
      return toH - fromH;
    }
  }

  /** What a curve shows. */
  public enum Of {
    /** t/h that a feeder, or what draws from a bin, takes. */
    RATE,
    /** t in a bin. */
    BIN,
    /** Loads at the plant that are not unloaded yet. */
    GATE,
    /** What lies in the yard. */
    YARD
  }

  /**
   * A value over time. That of a bin runs straight from one point to the next; any other holds
   * until the next one.
   *
   * @param name the head, bin or crop
   * @param unit as in the tables
   * @param hours of the points, rising, the first 0 and the last the span's end; not to be written
   * @param values at these points; not to be written
   */
  public record Curve(Of of, String name, String unit, double[] hours, double[] values) {
    public double least() {
      return java.util.Arrays.stream(values).min().orElse(0);
    }

    public double most() {
      return java.util.Arrays.stream(values).max().orElse(0);
    }

    /** Over time. */
    public double mean() {
      double sum = 0;
      for (int at = 1; at < hours.length; at++) {
        double height = of == Of.BIN ? (values[at - 1] + values[at]) / 2 : values[at - 1];
        sum += height * (hours[at] - hours[at - 1]);
      }
      double length = hours[hours.length - 1] - hours[0];
      return length > 0 ? sum / length : values[0];
    }
  }

  public double lengthH() {
    return java.time.Duration.between(from, to).toSeconds() / 3600.0;
  }

  /** The machines in the order of their bars. */
  public List<String> machines() {
    return bars.stream().map(Bar::machine).distinct().toList();
  }

  /** Hours that a machine is in a state. */
  public double hours(String machine, State state) {
    return bars.stream()
        .filter(bar -> bar.machine().equals(machine) && bar.state() == state)
        .mapToDouble(Bar::lastsH)
        .sum();
  }

  public List<Curve> curves(Of of) {
    return curves.stream().filter(curve -> curve.of() == of).toList();
  }
}
