package hurdline.compiled;

import hurdline.plant.Calendar;
import hurdline.plant.Stop;
import java.time.LocalDate;

/** Instants at which stops that are planned by date begin. */
final class PlannedStops {
  private PlannedStops() {}

  /**
   * In order; null where a stop is not planned. One by the clock that has begun before the first
   * day is among them where it reaches into it.
   */
  static double[] beginS(Stop stop, Calendar calendar) {
    if (stop.planned().isEmpty()) {
      return null;
    }
    Stop.Dates dates = stop.planned().get();
    Horizon horizon = Horizon.of(calendar);
    double lastsS = stop.repairAnyTime() ? stop.lastsS().mean() : 0;
    LocalDate first = horizon.first().minusDays(1 + (long) Math.ceil(lastsS / Horizon.DAY_S));
    return dates.between(first, calendar.to()).stream()
        .mapToDouble(date -> horizon.day(date) * Horizon.DAY_S + dates.atS())
        .filter(fromS -> fromS >= 0 || fromS + lastsS > 0)
        .toArray();
  }
}
