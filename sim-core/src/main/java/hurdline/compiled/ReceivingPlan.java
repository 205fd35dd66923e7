package hurdline.compiled;

import hurdline.plant.Delivery;

/**
 * Lays receiving hours and the hours of load streams on the horizon; closed days have none of
 * either.
 */
final class ReceivingPlan {
  private final Horizon horizon;

  ReceivingPlan(Horizon horizon) {
    this.horizon = horizon;
  }

  TimeWindows receiving(RosterBasis.Receiving delivery) {
    return on(0, horizon.days() - 1, delivery.hours());
  }

  /** A stream's own hours between its dates; none where the crop comes from fields only. */
  TimeWindows loads(RosterBasis.Receiving delivery) {
    return delivery
        .loads()
        .map(loads -> on(horizon.day(loads.from()), horizon.day(loads.to()), loads.hours()))
        .orElse(TimeWindows.NONE);
  }

  private TimeWindows on(int firstDay, int lastDay, Delivery.DayHours hours) {
    TimeWindowsBuilder open = new TimeWindowsBuilder();
    for (int day = Math.max(0, firstDay); day <= Math.min(lastDay, horizon.days() - 1); day++) {
      if (horizon.opens(day, hours.days())) {
        open.add(day * Horizon.DAY_S + hours.fromS(), day * Horizon.DAY_S + hours.toS());
      }
    }
    return open.build();
  }
}
