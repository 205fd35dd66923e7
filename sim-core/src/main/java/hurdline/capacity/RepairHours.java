package hurdline.capacity;

import hurdline.compiled.TimeWindows;
import hurdline.plant.Stop;
import java.util.function.DoubleUnaryOperator;

/**
 * How repairs and a machine's hours cut each other, on average over all instants at which a stop
 * may begin, the horizon repeated without end.
 *
 * <p>Means over {@value #INSTANTS} evenly spaced instants; the error is of the order of one over
 * their number.
 */
final class RepairHours {
  private static final int INSTANTS = 2_000;

  private final TimeWindows hours;
  private final TimeWindows worked;
  private final TimeWindows counted;
  private final double horizonS;

  /**
   * @param hours in which the machine is crewed
   */
  RepairHours(TimeWindows hours, double horizonS) {
    this(hours, hours, TimeWindows.of(0, horizonS), horizonS);
  }

  /**
   * For a stop that belongs to some lines.
   *
   * @param hours in which the machine is crewed, whichever line it is
   * @param worked of these, those of the stop's lines
   * @param counted in which one of its lines has the machine
   */
  RepairHours(TimeWindows hours, TimeWindows worked, TimeWindows counted, double horizonS) {
    this.hours = hours;
    this.worked = worked;
    this.counted = counted;
    this.horizonS = horizonS;
  }

  double crewedS() {
    return worked.lengthS();
  }

  /** Of the horizon, what a stop counts by the calendar. */
  double countedS() {
    return counted.lengthS();
  }

  /** Share of the crewed time that a stop takes which begins at given instants, 0 to 1. */
  double plannedShare(Stop stop, double[] plannedS) {
    double lastsS = stop.lastsS().mean();
    double lostS = 0;
    for (double fromS : plannedS) {
      lostS +=
          stop.repairAnyTime()
              ? hours.lengthS(fromS, fromS + lastsS)
              : Math.min(lastsS, hours.lengthS() - hours.lengthBeforeS(fromS));
    }
    return crewedS() > 0 ? Math.min(1, lostS / crewedS()) : 0;
  }

  /** Crewed time that a repair by the clock takes away, begun in hours. */
  double crewedTimeLostS(double lastsS) {
    return mean(
        worked.lengthS(),
        crewedS -> {
          double fromS = worked.afterS(crewedS);
          double untilS = fromS + lastsS;
          double lostS = worked.lengthS(fromS, Math.min(untilS, horizonS));
          return untilS > horizonS ? lostS + worked.lengthS(0, untilS - horizonS) : lostS;
        });
  }

  /** Counted time by the clock that a repair in hours takes, begun at any instant that counts. */
  double clockTimeS(double lastsS) {
    return ofRepair(counted, lastsS, counted);
  }

  /** Hours of the stop's lines that a repair in hours takes, begun in those hours. */
  double workedTimeLostS(double lastsS) {
    return worked == hours || !(crewedS() > 0) ? lastsS : ofRepair(worked, lastsS, worked);
  }

  /** The same, begun at any instant that counts. */
  double workedTimeLostByCalendarS(double lastsS) {
    return worked == hours ? lastsS : ofRepair(counted, lastsS, worked);
  }

  /** What of a repair lies in some windows, begun at any instant of others. */
  private double ofRepair(TimeWindows begun, double lastsS, TimeWindows lies) {
    return mean(
        begun.lengthS(),
        begunS -> {
          double fromS = begun.afterS(begunS);
          double doneS = hours.lengthBeforeS(fromS) + lastsS;
          double allS = hours.lengthS();
          double seasons = Math.max(0, Math.ceil(doneS / allS) - 1);
          double untilS = hours.afterS(Math.min(allS, doneS - seasons * allS));
          return seasons * lies.lengthS() + lies.lengthBeforeS(untilS) - lies.lengthBeforeS(fromS);
        });
  }

  private static double mean(double lengthS, DoubleUnaryOperator of) {
    double sum = 0;
    for (int i = 0; i < INSTANTS; i++) {
      sum += of.applyAsDouble((i + 0.5) / INSTANTS * lengthS);
    }
    return sum / INSTANTS;
  }
}
