package hurdline.plant;

import hurdline.random.Distribution;
import java.util.Optional;

/**
 * A kind of stop of a machine.
 *
 * @param every amount between two stops: kg where counted on {@code MASS}, else seconds
 * @param lastsS how long the repair takes
 * @param already what was counted before the first day, in the unit of {@code every}
 * @param repairAnyTime whether the repair goes forward outside crewed hours
 * @param needs the resource that the repair holds
 * @param cost money for each stop
 */
public record Stop(
    String name,
    Distribution every,
    Counted counted,
    Distribution lastsS,
    double already,
    boolean repairAnyTime,
    Optional<String> needs,
    double cost) {
  public Stop {
    Check.notBelow0("already", already);
    Check.notBelow0("cost", cost);
  }

  /** What a stop's amount is counted on. */
  public enum Counted {
    RUNNING,
    MASS,
    CREWED,
    CALENDAR
  }
}
