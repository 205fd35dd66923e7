package hurdline.answer;

import hurdline.measure.State;
import java.util.List;

/**
 * Where a machine's time went.
 *
 * @param kind the machine's kind, as the plant file spells it
 * @param hours mean hours by state, in the order of {@link State}; all nine
 */
public record MachineTime(String machine, String kind, List<Double> hours) {
  public MachineTime {
    hours = List.copyOf(hours);
    if (hours.size() != State.values().length) {
      throw new IllegalArgumentException(machine + " has hours of " + hours.size() + " states");
    }
  }

  public double hours(State state) {
    return hours.get(state.ordinal());
  }
}
