package hurdline.account;

import java.util.Arrays;

/** What found no room in the yard, by crop: how often, and how long it waited by the clock. */
public final class RoomBooks {
  private final int[] waiting;
  private final int[] refused;
  private final int[] wanted;
  private final double[] waitS;
  private final double[] bookedToS;

  RoomBooks(int crops) {
    waiting = new int[crops];
    refused = new int[crops];
    wanted = new int[crops];
    waitS = new double[crops];
    bookedToS = new double[crops];
  }

  void reset() {
    Arrays.fill(waiting, 0);
    Arrays.fill(refused, 0);
    Arrays.fill(wanted, 0);
    Arrays.fill(waitS, 0);
    Arrays.fill(bookedToS, 0);
  }

  void finish(double endS) {
    for (int crop = 0; crop < waiting.length; crop++) {
      bookTo(crop, endS);
    }
  }

  /** From now on so many trucks and loads of the crop wait for room. */
  public void waiting(int crop, int now, double nowS) {
    if (now != waiting[crop]) {
      bookTo(crop, nowS);
      refused[crop] += Math.max(0, now - waiting[crop]);
      waiting[crop] = now;
    }
  }

  /** A load of the crop is turned away. */
  public void turnedAway(int crop) {
    refused[crop]++;
  }

  /** Room was asked for; with what lies there and is promised it would come to so many bales. */
  public void wanted(int crop, int bales) {
    wanted[crop] = Math.max(wanted[crop], bales);
  }

  private void bookTo(int crop, double nowS) {
    waitS[crop] += waiting[crop] * (nowS - bookedToS[crop]);
    bookedToS[crop] = nowS;
  }

  /** Trucks and loads that began to wait for room, and loads turned away. */
  public int refused(int crop) {
    return refused[crop];
  }

  /** Waits for room, added up over trucks and loads. */
  public double waitS(int crop) {
    return waitS[crop];
  }

  /** The most that was wanted at once. */
  public int wanted(int crop) {
    return wanted[crop];
  }
}
