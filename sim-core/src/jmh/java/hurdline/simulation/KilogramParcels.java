package hurdline.simulation;

import java.util.PriorityQueue;

/**
 * {@link OneLine} as parcels of one kilogram that pass from machine to machine, each step an event
 * in a PriorityQueue: the other thing that a programmer may write first, kept as plain as it would
 * be.
 */
final class KilogramParcels {
  private static final double KG_PER_T = 1000;
  private static final double S_PER_H = 3600;

  private enum Kind {
    FED,
    OPENED,
    REPAIRED
  }

  private record Event(double atS, Kind kind) implements Comparable<Event> {
    @Override
    public int compareTo(Event other) {
      return Double.compare(atS, other.atS);
    }
  }

  private final PriorityQueue<Event> pending = new PriorityQueue<>();
  private final double feedS = S_PER_H / (OneLine.FEEDER_T_PER_H * KG_PER_T);
  private final double openS = S_PER_H / (OneLine.OPENER_T_PER_H * KG_PER_T);
  private final int holds = (int) (OneLine.HOLDS_T * KG_PER_T);
  private final int everyParcels = (int) (OneLine.WORKED_T * KG_PER_T);
  private double nowS;
  private int inBin;
  private int sinceStop;
  private boolean feederWaits; // with a parcel in hand, for room in the bin
  private boolean openerWaits = true;
  private long made;

  private KilogramParcels() {}

  /** What the opener has worked by the end of the year, t. */
  static double simulatedT() {
    return new KilogramParcels().simulate();
  }

  private double simulate() {
    pending.add(new Event(feedS, Kind.FED));
    while (true) {
      Event event = pending.poll();
      if (event.atS > OneLine.HOURS * S_PER_H) {
        return made / KG_PER_T;
      }
      nowS = event.atS;
      switch (event.kind) {
        case FED -> fed();
        case OPENED -> opened();
        case REPAIRED -> pending.add(new Event(nowS + feedS, Kind.FED));
      }
    }
  }

  private void fed() {
    if (inBin == holds) {
      feederWaits = true;
      return;
    }
    inBin++;
    if (openerWaits) {
      open();
    }
    if (++sinceStop == everyParcels) {
      sinceStop = 0;
      pending.add(new Event(nowS + OneLine.STOP_S, Kind.REPAIRED));
    } else {
      pending.add(new Event(nowS + feedS, Kind.FED));
    }
  }

  private void open() {
    inBin--;
    openerWaits = false;
    pending.add(new Event(nowS + openS, Kind.OPENED));
  }

  private void opened() {
    made++;
    openerWaits = true;
    if (inBin > 0) {
      open();
      if (feederWaits) {
        feederWaits = false;
        fed();
      }
    }
  }
}
