package hurdline.compiled;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Gathers intervals in any order and makes hours of them; what is empty or ends before it starts is
 * left out. Flat arrays, since a year's hours are made of thousands of intervals.
 */
final class TimeWindowsBuilder {
  private double[] fromS = new double[8];
  private double[] toS = new double[8];
  private int count;
  private boolean isInOrder = true;

  TimeWindowsBuilder add(double from, double to) {
    if (from < to) {
      if (count == fromS.length) {
        fromS = Arrays.copyOf(fromS, 2 * count);
        toS = Arrays.copyOf(toS, 2 * count);
      }
      isInOrder &= count == 0 || fromS[count - 1] <= from;
      fromS[count] = from;
      toS[count] = to;
      count++;
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
    if (!isInOrder) {
      sort();
    }
    double[] from = new double[count];
    double[] to = new double[count];
    int last = -1;
    for (int i = 0; i < count; i++) {
      if (last >= 0 && fromS[i] <= to[last]) {
        to[last] = Math.max(to[last], toS[i]);
      } else {
        last++;
        from[last] = fromS[i];
        to[last] = toS[i];
      }
    }
    return TimeWindows.inOrder(Arrays.copyOf(from, last + 1), Arrays.copyOf(to, last + 1));
  }

  private void sort() {
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> fromS[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    fromS = IntStream.of(order).mapToDouble(i -> fromS[i]).toArray();
    toS = IntStream.of(order).mapToDouble(i -> toS[i]).toArray();
    isInOrder = true;
  }
}
