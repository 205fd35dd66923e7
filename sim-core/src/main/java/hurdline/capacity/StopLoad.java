package hurdline.capacity;

import hurdline.plant.Stop;

/**
 * What one stop takes of a machine's time in the long run.
 *
 * <p>With the mean amount E between two stops and the mean repair L, each at 0 or above:
 *
 * <ul>
 *   <li>operation-dependent, counted on {@code running} hours or {@code worked} mass: L/E for each
 *       second that the machine runs or kilogram that it takes in, so that alone it is available
 *       E/(E + L) of its hours, E in time at its rate;
 *   <li>planned by date: what of the machine's hours its dates take;
 *   <li>time-dependent, counted on {@code crewed} or {@code calendar} hours: L/(E + L) of the
 *       hours, whether it runs or not. By the calendar, with repairs in hours only, the cycle is E
 *       and the clock time D of a repair, and L/(E + D) is per hour of the calendar.
 * </ul>
 *
 * <p>A machine's own stops wait for one another, which is left out: with several time-dependent
 * ones the share is a little high, by the order of the product of their shares. Of a stop that
 * belongs to some lines, hours and calendar are theirs; what of its repair falls into another
 * line's hours is left out there.
 *
 * @param stop which
 * @param ofHours share of the machine's hours, 0 to 1
 * @param perRunningS seconds for each second of running at any rate
 * @param sPerKg seconds for each kilogram of inflow
 * @see "J. A. Buzacott and J. G. Shanthikumar, Stochastic Models of Manufacturing Systems (1993),
 *     ch. 6: operation-dependent and time-dependent failures (from memory)"
 */
record StopLoad(Stop stop, double ofHours, double perRunningS, double sPerKg) {

  /**
   * @param hours of a stop and of the repairs that it needs
   * @param plannedS when a planned stop begins, null for another
   */
  static StopLoad of(Stop stop, RepairHours hours, double[] plannedS) {
    if (plannedS != null) {
      return new StopLoad(stop, hours.plannedShare(stop, plannedS), 0, 0);
    }
    double every = Means.of(stop.every());
    double lastsS = Means.of(stop.lastsS());
    return switch (stop.counted()) {
      case RUNNING -> new StopLoad(stop, 0, lostS(stop, lastsS, hours) / every, 0);
      case MASS -> new StopLoad(stop, 0, 0, lostS(stop, lastsS, hours) / every);
      case CREWED -> {
        double lostS = lostS(stop, lastsS, hours);
        yield new StopLoad(stop, lostS / (every + lostS), 0, 0);
      }
      case CALENDAR -> new StopLoad(stop, byCalendar(stop, every, lastsS, hours), 0, 0);
    };
  }

  private static double lostS(Stop stop, double lastsS, RepairHours hours) {
    return stop.repairAnyTime() && hours.crewedS() > 0
        ? hours.crewedTimeLostS(lastsS)
        : hours.workedTimeLostS(lastsS);
  }

  private static double byCalendar(Stop stop, double everyS, double lastsS, RepairHours hours) {
    if (stop.repairAnyTime() || !(hours.crewedS() > 0)) {
      return lastsS / (everyS + lastsS);
    }
    double perCalendarS =
        hours.workedTimeLostByCalendarS(lastsS) / (everyS + hours.clockTimeS(lastsS));
    return Math.min(1, perCalendarS * hours.countedS() / hours.crewedS());
  }
}
