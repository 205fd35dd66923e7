package hurdline.compiled;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Gathers intervals in any order and makes hours of them; what is empty or ends before it starts is
 * left out.
 */
final class TimeWindowsBuilder {
  private record Interval(double fromS, double toS) {}

  private final List<Interval> intervals = new ArrayList<>();

  TimeWindowsBuilder add(double fromS, double toS) {
    if (fromS < toS) {
      intervals.add(new Interval(fromS, toS));
    }
    return this;
  }

  TimeWindowsBuilder add(TimeWindows hours) {
    for (int i = 0; i < hours.count(); i++) {
      add(hours.fromS(i), hours.toS(i));
    }
    return this;
  }

  TimeWindows build() {
    intervals.sort(Comparator.comparingDouble(Interval::fromS));
    List<Interval> merged = new ArrayList<>();
    for (Interval next : intervals) {
      int last = merged.size() - 1;
      if (last >= 0 && next.fromS() <= merged.get(last).toS()) {
        Interval before = merged.get(last);
        merged.set(last, new Interval(before.fromS(), Math.max(before.toS(), next.toS())));
      } else {
        merged.add(next);
      }
    }
    return TimeWindows.inOrder(
        merged.stream().mapToDouble(Interval::fromS).toArray(),
        merged.stream().mapToDouble(Interval::toS).toArray());
  }
}
