package hurdline.account;

import java.util.Arrays;

/**
 * Trips of trucks and loads by crop, counted when they end, and the days on which something came to
 * the gate.
 */
public final class TripBooks {
  private static final double DAY_S = 86_400;

  private final int days;
  private final int[] trips;
  private final double[] waitS;
  private final double[] turnaroundS;
  private final boolean[] arrivedOn; // [crop * days + day]

  TripBooks(int crops, int days) {
    this.days = days;
    trips = new int[crops];
    waitS = new double[crops];
    turnaroundS = new double[crops];
    arrivedOn = new boolean[crops * days];
  }

  void reset() {
    Arrays.fill(trips, 0);
    Arrays.fill(waitS, 0);
    Arrays.fill(turnaroundS, 0);
    Arrays.fill(arrivedOn, false);
  }

  /** A truck or load stands at the gate, whether it will be let in or not. */
  public void arrived(int crop, double nowS) {
    int day = (int) (nowS / DAY_S);
    if (day < days) {
      arrivedOn[crop * days + day] = true;
    }
  }

  /**
   * @param waitedS at field, gate, scale and loader together @param lastedS from its start to its
   *     end
   */
  public void ended(int crop, double waitedS, double lastedS) {
    trips[crop]++;
    waitS[crop] += waitedS;
    turnaroundS[crop] += lastedS;
  }

  public int trips(int crop) {
    return trips[crop];
  }

  /** Waits of all trips that have ended. */
  public double waitS(int crop) {
    return waitS[crop];
  }

  public double turnaroundS(int crop) {
    return turnaroundS[crop];
  }

  /**
   * Whether something of the crop came to the gate on that day: its receiving hands are paid then.
   */
  public boolean arrivedOn(int crop, int day) {
    return arrivedOn[crop * days + day];
  }
}
