package hurdline.capacity;

import hurdline.compiled.TimeWindows;
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
  private final double horizonS;

  /**
   * @param hours in which the machine is crewed
   */
  RepairHours(TimeWindows hours, double horizonS) {
    this.hours = hours;
    this.horizonS = horizonS;
  }

  double crewedS() {
    return hours.lengthS();
  }

  double horizonS() {
    return horizonS;
  }

  /** Crewed time that a repair by the clock takes away, begun in hours. */
  double crewedTimeLostS(double lastsS) {
    return mean(
        hours.lengthS(),
        crewedS -> {
          double fromS = hours.afterS(crewedS);
          double untilS = fromS + lastsS;
          double lostS = hours.lengthS(fromS, Math.min(untilS, horizonS));
          return untilS > horizonS ? lostS + hours.lengthS(0, untilS - horizonS) : lostS;
        });
  }

  /** Time by the clock that a repair which goes forward in hours takes, begun at any instant. */
  double clockTimeS(double lastsS) {
    return mean(
        horizonS,
        fromS -> {
          double doneS = hours.lengthBeforeS(fromS) + lastsS;
          double allS = hours.lengthS();
          double seasons = Math.max(0, Math.ceil(doneS / allS) - 1);
          return seasons * horizonS + hours.afterS(Math.min(allS, doneS - seasons * allS)) - fromS;
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
