package hurdline.event;

import java.util.Arrays;

/**
 * What each resource's servers did and how long was waited for them, by integrals over the
 * resource's hours.
 *
 * <p>The sum of all waits is the integral of the number waiting, so that requests that never began,
 * or were withdrawn, count with what they waited. Written by {@link Resources} only.
 */
public final class QueueStatistics {
  private final boolean[] inHours;
  private final int[] busy;
  private final int[] waiting;
  private final int[] waitingPeak;
  private final long[] requests;
  private final double[] bookedToS;
  private final double[] hoursS;
  private final double[] busyS;
  private final double[] waitsS;

  QueueStatistics(int resources) {
    inHours = new boolean[resources];
    busy = new int[resources];
    waiting = new int[resources];
    waitingPeak = new int[resources];
    requests = new long[resources];
    bookedToS = new double[resources];
    hoursS = new double[resources];
    busyS = new double[resources];
    waitsS = new double[resources];
  }

  void reset() {
    Arrays.fill(inHours, false);
    Arrays.fill(busy, 0);
    Arrays.fill(waiting, 0);
    Arrays.fill(waitingPeak, 0);
    Arrays.fill(requests, 0);
    Arrays.fill(bookedToS, 0);
    Arrays.fill(hoursS, 0);
    Arrays.fill(busyS, 0);
    Arrays.fill(waitsS, 0);
  }

  void hours(int resource, boolean open, double nowS) {
    bookTo(resource, nowS);
    inHours[resource] = open;
  }

  void asked(int resource, double nowS) {
    bookTo(resource, nowS);
    waiting[resource]++;
    requests[resource]++;
  }

  void left(int resource, double nowS) {
    bookTo(resource, nowS);
    waiting[resource]--;
  }

  void began(int resource, double nowS) {
    left(resource, nowS);
    busy[resource]++;
  }

  void released(int resource, double nowS) {
    bookTo(resource, nowS);
    busy[resource]--;
  }

  void finish(int resource, double endS) {
    bookTo(resource, endS);
    waitingPeak[resource] = Math.max(waitingPeak[resource], waiting[resource]);
  }

  private void bookTo(int resource, double nowS) {
    double passedS = nowS - bookedToS[resource];
    if (!(passedS > 0)) {
      return;
    }
    bookedToS[resource] = nowS;
    waitingPeak[resource] = Math.max(waitingPeak[resource], waiting[resource]);
    if (inHours[resource]) {
      hoursS[resource] += passedS;
      busyS[resource] += passedS * busy[resource];
      waitsS[resource] += passedS * waiting[resource];
    }
  }

  int waiting(int resource) {
    return waiting[resource];
  }

  /** Most that waited at once, after all that could begin had begun. */
  public int waitingPeak(int resource) {
    return waitingPeak[resource];
  }

  public long requests(int resource) {
    return requests[resource];
  }

  /** The resource's own hours. */
  public double hoursS(int resource) {
    return hoursS[resource];
  }

  /** Server-seconds at work within its hours. */
  public double busyS(int resource) {
    return busyS[resource];
  }

  /** All waits together, within its hours. */
  public double waitsS(int resource) {
    return waitsS[resource];
  }
}
