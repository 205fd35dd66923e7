package hurdline.compiled;

import hurdline.plant.Delivery;

/** A crop's receiving hours day by day. */
final class ReceivingDays {
  private final boolean[] isWorked;
  private final double[] lengthS;

  private ReceivingDays(int days) {
    isWorked = new boolean[days];
    lengthS = new double[days];
  }

  /** Of a crop that nothing brings. */
  static ReceivingDays none(int days) {
    return new ReceivingDays(days);
  }

  /**
   * @param open the hours on the horizon, none on closed days
   */
  static ReceivingDays of(Horizon horizon, Delivery.DayHours hours, TimeWindows open) {
    ReceivingDays all = new ReceivingDays(horizon.days());
    for (int day = 0; day < horizon.days(); day++) {
      all.isWorked[day] = hours.days().contains(horizon.weekday(day));
      all.lengthS[day] = open.lengthS(day * Horizon.DAY_S, (day + 1) * Horizon.DAY_S);
    }
    return all;
  }

  /** Whether it is one of the days of the week, closed or not. */
  boolean isWorked(int day) {
    return isWorked[day];
  }

  /** Length of the hours of that day; 0 on closed days. */
  double lengthS(int day) {
    return lengthS[day];
  }
}
