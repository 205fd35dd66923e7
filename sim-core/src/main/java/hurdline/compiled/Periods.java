package hurdline.compiled;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/** Calendar months or weeks that the horizon touches, the first and the last cut by it. */
public final class Periods {
  private final double[] fromS;
  private final double endS;
  private final List<LocalDate> firstDates;

  /**
   * @param firstDays first day of each period, from 0 on, rising; read only
   */
  Periods(Horizon horizon, int[] firstDays) {
    fromS = Arrays.stream(firstDays).mapToDouble(day -> day * Horizon.DAY_S).toArray();
    endS = horizon.lengthS();
    firstDates = Arrays.stream(firstDays).mapToObj(horizon::date).toList();
  }

  public int count() {
    return fromS.length;
  }

  public double fromS(int period) {
    return fromS[period];
  }

  public double toS(int period) {
    return period + 1 < fromS.length ? fromS[period + 1] : endS;
  }

  /** The first date of the period that lies in the horizon. */
  public LocalDate firstDate(int period) {
    return firstDates.get(period);
  }

  /** The period that holds the instant; the end of the horizon belongs to the last. */
  public int at(double atS) {
    int found = Arrays.binarySearch(fromS, atS);
    return found >= 0 ? found : -found - 2;
  }
}
