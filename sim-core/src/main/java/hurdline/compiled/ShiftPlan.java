package hurdline.compiled;

import hurdline.plant.Calendar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays the calendar's shifts on the days of the horizon.
 *
 * <p>A shift belongs to the day on which it starts: that day must be one of its days of the week
 * and not closed, however far into the next it runs. The end of the horizon cuts it.
 */
final class ShiftPlan {
  private final Horizon horizon;
  private final List<Calendar.Shift> all;

  ShiftPlan(Horizon horizon, List<Calendar.Shift> all) {
    this.horizon = horizon;
    this.all = all;
  }

  List<Calendar.Shift> named(List<String> names) {
    return names.stream().map(this::named).toList();
  }

  private Calendar.Shift named(String name) {
    for (Calendar.Shift shift : all) {
      if (shift.name().equals(name)) {
        return shift;
      }
    }
    throw new IllegalArgumentException("shift is " + name + "; expected one of the calendar's");
  }

  boolean anyStartsOn(int day, List<Calendar.Shift> shifts) {
    return shifts.stream().anyMatch(shift -> horizon.opens(day, shift.days()));
  }

  /** The shifts that start on a day, the earliest first. */
  List<PaidShift> on(int day, String line, List<Calendar.Shift> shifts) {
    List<PaidShift> starting = new ArrayList<>();
    for (Calendar.Shift shift : shifts) {
      if (horizon.opens(day, shift.days())) {
        double fromS = day * Horizon.DAY_S + shift.fromS();
        starting.add(
            new PaidShift(line, shift.name(), day, fromS, horizon.cutS(fromS + shift.lengthS())));
      }
    }
    starting.sort(Comparator.comparingDouble(PaidShift::fromS));
    return starting;
  }

  /** What is worked in these shifts: all of them less their rests. */
  TimeWindows worked(List<PaidShift> paid) {
    TimeWindowsBuilder worked = new TimeWindowsBuilder();
    for (PaidShift one : paid) {
      worked.add(TimeWindows.of(one.fromS(), one.toS()).minus(rests(one)));
    }
    return worked.build();
  }

  /** A rest that is earlier in the day than the shift's own start lies on the next date. */
  private TimeWindows rests(PaidShift one) {
    Calendar.Shift shift = named(one.shift());
    TimeWindowsBuilder rests = new TimeWindowsBuilder();
    for (Calendar.Rest rest : shift.rests()) {
      int day = rest.atS() < shift.fromS() ? one.day() + 1 : one.day();
      double fromS = day * Horizon.DAY_S + rest.atS();
      rests.add(fromS, fromS + rest.lastsS());
    }
    return rests.build();
  }
}
