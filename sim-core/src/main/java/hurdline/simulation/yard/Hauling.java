package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.account.Trace;
import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.event.EventHeap;
import hurdline.event.FutureEvents;
import hurdline.event.Resources;
import hurdline.measure.EventKind;
import hurdline.plant.Delivery;
import hurdline.random.RandomStreams;
import java.util.Arrays;
import java.util.List;

/**
 * Trucks and loads: field, road, gate, scale, unloading, and back.
 *
 * <p>Two slots of {@link FutureEvents} are its own: the ends of its jobs, and its arrivals (a bale
 * made, a load or truck at the gate, a truck back, the end of a stream of loads). Its jobs are
 * numbered from a base; a carrier's number is its job's. Jobs go by gates 1 + crop, the crop's
 * receiving hours, which the caller opens and shuts.
 *
 * <p>Room in the yard is promised when a trip starts, where bales are held at the field; else at
 * the gate. A truck that waits to be loaded has its bales claimed, so that no other truck comes for
 * them.
 *
 * <p>One file because loads, trucks and the gate share one queue in the order of arrival.
 */
public final class Hauling {
  private static final int KINDS = 6;
  private static final int BALE = 0;
  private static final int TRUCK_AT_GATE = 1;
  private static final int LOAD_AT_GATE = 2;
  private static final int TRUCK_BACK = 3;
  private static final int STREAM_ENDS = 4;
  private static final int RELEASE = 5;

  private final YardPlan yard;
  private final Haulage haulage;
  private final Stacking stacking;
  private final FutureEvents pending;
  private final int endSlot;
  private final int arrivalSlot;
  private final IntakeBooks books;
  private final Bales bales;
  public final Baling baling;
  public final HeldAtField fields;
  private final LoadStreams streamsOfLoads;
  private final HaulTimes times;
  public final Arrivals carriers;
  private final HaulJobs jobs;
  private final GateQueue gate;
  private final KeptApart kept;
  public final Weighing weighing;
  private final EventHeap ends = new EventHeap(16);
  private final EventHeap arrivals = new EventHeap(32);
  private final int[] onTheWay; // bales by crop, on carriers
  private final int[] truckBales;
  private final boolean[] weighs;
  private final int[] heldTrucks; // that could be loaded if the yard had room, by crop
  private long turns;
  private Trace trace;

  /**
   * @param jobBase job numbers from here on are all its own; carriers may become many
   * @param orderBase added to the order of its requests among those of one instant
   */
  public Hauling(
      YardPlan yard,
      Haulage haulage,
      Bales bales,
      Stacking stacking,
      Resources resources,
      FutureEvents pending,
      int endSlot,
      int arrivalSlot,
      int jobBase,
      long orderBase,
      IntakeBooks books) {
    this.yard = yard;
    this.haulage = haulage;
    this.bales = bales;
    this.stacking = stacking;
    this.pending = pending;
    this.endSlot = endSlot;
    this.arrivalSlot = arrivalSlot;
    this.books = books;
    baling = new Baling(yard, haulage);
    fields = new HeldAtField(haulage, baling, bales, books);
    streamsOfLoads = new LoadStreams(yard, haulage);
    times = new HaulTimes(yard, haulage);
    carriers = new Arrivals(bales, haulage.trucks());
    jobs = new HaulJobs(yard, haulage, carriers, resources, times, jobBase, orderBase);
    gate = new GateQueue(yard.crops());
    kept = new KeptApart(yard, haulage, bales, stacking, books);
    weighing = new Weighing(yard, haulage, bales, carriers, fields, stacking, books);
    onTheWay = new int[yard.crops()];
    truckBales = new int[yard.crops()];
    weighs = new boolean[yard.crops()];
    heldTrucks = new int[yard.crops()];
    for (int crop = 0; crop < yard.crops(); crop++) {
      setUp(crop);
    }
  }

  private void setUp(int crop) {
    truckBales[crop] =
        haulage.delivery(crop).flatMap(Delivery::trucks).map(Delivery.Trucks::bales).orElse(0);
    weighs[crop] = haulage.delivery(crop).flatMap(Delivery::weigh).isPresent();
    for (int truck = haulage.firstTruck(crop); truck < haulage.endTruck(crop); truck++) {
      carriers.crop[truck] = crop;
    }
  }

  /** Time zero of a replication. */
  public void reset(RandomStreams streams, int replication) {
    carriers.reset();
    gate.reset();
    ends.reset();
    arrivals.reset();
    turns = 0;
    Arrays.fill(onTheWay, 0);
    Arrays.fill(heldTrucks, 0);
    baling.reset(streams, replication);
    stacking.weather(baling.weather());
    fields.reset();
    streamsOfLoads.reset(streams, replication);
    times.reset(streams, replication);
    kept.reset(streams, replication);
    for (int crop = 0; crop < yard.crops(); crop++) {
      for (int field = haulage.firstField(crop); field < haulage.endField(crop); field++) {
        arrive(BALE, field, baling.nextS(field));
      }
      arrive(LOAD_AT_GATE, crop, streamsOfLoads.nextS(crop));
      arrive(STREAM_ENDS, crop, Math.max(0, haulage.loadsEndS(crop)));
    }
    tellPending();
  }

  /** Crop of another year stands on the field unbaled at time zero. */
  public void standsAt(int field, double unbaledKg) {
    if (baling.add(field, unbaledKg)) {
      arrive(BALE, field, baling.nextS(field));
    }
  }

  /** A load of another year stands at the gate at time zero. */
  public void standsAtGate(List<CarriedOverStock.Bale> load) {
    int carrier = carriers.addLoad(load.get(0).crop());
    carriers.setOut(carrier, turns++, 0);
    load.forEach(bale -> carriers.cargo.append(carrier, bales.add(bale)));
    onTheWay[carriers.crop[carrier]] += load.size();
    arrive(TRUCK_AT_GATE, carrier, 0);
  }

  public void trace(Trace wanted) {
    trace = wanted;
    kept.trace(wanted);
  }

  /** Everything of its own that arrives at this instant. */
  public void arrivalsDue(double nowS) {
    for (int what = arrivals.pollDue(nowS + FutureEvents.instantS());
        what >= 0;
        what = arrivals.pollDue(nowS + FutureEvents.instantS())) {
      int index = what / KINDS;
      switch (what % KINDS) {
        case BALE -> {
          int next = fields.bale(index, nowS);
          arrive(BALE, next, baling.nextS(next));
        }
        case TRUCK_AT_GATE -> atGate(index, nowS);
        case LOAD_AT_GATE -> loadComes(index, nowS);
        case TRUCK_BACK -> back(index, nowS);
        case RELEASE -> kept.end(index, nowS);
        default -> {} // the caller asks anew whether more is to come
      }
    }
    tellPending();
  }

  /** Everything of its own that ends at this instant. */
  public void endsDue(double nowS) {
    for (int carrier = ends.pollDue(nowS + FutureEvents.instantS());
        carrier >= 0;
        carrier = ends.pollDue(nowS + FutureEvents.instantS())) {
      int crop = carriers.crop[carrier];
      jobs.end(carrier, nowS);
      switch (carriers.doing[carrier]) {
        case Arrivals.LOAD -> drive(carrier, TRUCK_AT_GATE, nowS + times.driveOutS(crop));
        case Arrivals.WEIGH_IN -> {
          if (weighing.isAccepted(carrier, nowS)) {
            weighIn(carrier, nowS);
            jobs.ask(carrier, Arrivals.UNLOAD, nowS);
          } else {
            reject(carrier, nowS);
          }
        }
        case Arrivals.UNLOAD -> unload(carrier, nowS);
        default -> leaveGate(carrier, nowS);
      }
    }
    tellPending();
  }

  /** A job that it asked for begins. */
  public void jobBegins(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    if (carriers.doing[carrier] == Arrivals.LOAD) {
      fields.load(carriers.field[carrier], carriers.claimed[carrier], carriers.cargo, carrier);
      onTheWay[crop] += carriers.claimed[carrier];
    } else if (carriers.doing[carrier] == Arrivals.UNLOAD && !carriers.weighedIn[carrier]) {
      weighIn(carrier, nowS);
    }
    ends.add(nowS + jobs.begin(carrier, nowS), crop, carrier);
    tellPending();
  }

  /** Loads at the gate for which there is room now are let in, then free trucks set out. */
  public void startTrips(double nowS) {
    if (gate.waiting() > 0) {
      letIn(nowS);
    }
    for (int crop = 0; crop < truckBales.length; crop++) {
      if (jobs.receives(crop)) {
        while (startsTrip(crop, nowS)) {} // until trucks, bales or room are short
        heldTrucks[crop] =
            yard.turnAway() ? 0 : fields.loads(crop, truckBales[crop], idleTrucks(crop));
      }
      books.room.waiting(crop, heldTrucks[crop] + gate.waiting(crop), nowS);
    }
  }

  private boolean startsTrip(int crop, double nowS) {
    int truck = idleTruck(crop);
    int field = truck < 0 ? -1 : fields.forTruck(crop, truckBales[crop]);
    if (field < 0) {
      return false;
    }
    int count = fields.forTruckAt(field, truckBales[crop]);
    if (!yard.turnAway() && !stacking.hasRoom(crop, count)) {
      return false;
    }
    carriers.setOut(truck, turns++, nowS);
    if (!yard.turnAway()) {
      promiseRoom(truck, count);
    }
    fields.claim(field, count);
    carriers.field[truck] = field;
    carriers.claimed[truck] = count;
    jobs.ask(truck, Arrivals.LOAD, nowS);
    note(nowS, crop, EventKind.TRIP_STARTS, count);
    return true;
  }

  private int idleTrucks(int crop) {
    int idle = 0;
    for (int truck = haulage.firstTruck(crop); truck < haulage.endTruck(crop); truck++) {
      idle += carriers.doing[truck] == Arrivals.IDLE ? 1 : 0;
    }
    return idle;
  }

  private int idleTruck(int crop) {
    for (int truck = haulage.firstTruck(crop); truck < haulage.endTruck(crop); truck++) {
      if (carriers.doing[truck] == Arrivals.IDLE) {
        return truck;
      }
    }
    return -1;
  }

  private void loadComes(int crop, double nowS) {
    int load = carriers.addLoad(crop);
    carriers.setOut(load, turns++, nowS);
    streamsOfLoads.fill(crop, bales, carriers.cargo, load, nowS);
    onTheWay[crop] += carriers.cargo.count(load);
    arrive(LOAD_AT_GATE, crop, streamsOfLoads.nextS(crop));
    atGate(load, nowS);
  }

  private void atGate(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    int count = carriers.cargo.count(carrier);
    books.trips.arrived(crop, nowS);
    note(nowS, crop, EventKind.AT_THE_GATE, count);
    if (carriers.hasRoom[carrier]) {
      goIn(carrier, nowS);
    } else if (!gate.waits(crop) && stacking.hasRoom(crop, count)) {
      promiseRoom(carrier, count);
      goIn(carrier, nowS);
    } else if (yard.turnAway()) {
      turnAway(carrier, nowS);
    } else {
      carriers.doing[carrier] = Arrivals.WAIT_FOR_ROOM;
      carriers.askedS[carrier] = nowS;
      gate.join(crop, carrier);
    }
  }

  private void promiseRoom(int carrier, int count) {
    stacking.promiseRoom(carriers.crop[carrier], count);
    carriers.hasRoom[carrier] = true;
  }

  private void letIn(double nowS) {
    for (int crop = nextLetIn(); crop >= 0; crop = nextLetIn()) {
      int carrier = gate.takeFirst(crop);
      carriers.served(carrier, nowS);
      promiseRoom(carrier, carriers.cargo.count(carrier));
      goIn(carrier, nowS);
    }
  }

  /**
   * Crop of the load that came first of those that are first of their crop and would find room; -1
   * if none would.
   */
  private int nextLetIn() {
    int next = -1;
    for (int crop = 0; crop < truckBales.length; crop++) {
      if (gate.waits(crop)
          && stacking.hasRoom(crop, carriers.cargo.count(gate.first(crop)))
          && (next < 0 || carriers.turn[gate.first(crop)] < carriers.turn[gate.first(next)])) {
        next = crop;
      }
    }
    return next;
  }

  private void goIn(int carrier, double nowS) {
    jobs.ask(carrier, weighs[carriers.crop[carrier]] ? Arrivals.WEIGH_IN : Arrivals.UNLOAD, nowS);
  }

  private void turnAway(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    int count = carriers.cargo.count(carrier);
    books.turnedAway(crop, count);
    books.room.turnedAway(crop);
    note(nowS, crop, EventKind.TURNED_AWAY, count);
    onTheWay[crop] -= count;
    weighing.sendAway(carrier, nowS);
    if (carriers.isTruck(carrier)) {
      carriers.startedS[carrier] = Double.NaN; // this will be no trip
      drive(carrier, TRUCK_BACK, nowS + times.driveBackS(crop));
    } else {
      carriers.freeLoad(carrier);
    }
  }

  private void reject(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    int count = carriers.cargo.count(carrier);
    note(nowS, crop, EventKind.REJECTED, count);
    onTheWay[crop] -= count;
    stacking.giveUpRoom(crop, count);
    weighing.reject(carrier, nowS);
    leaveGate(carrier, nowS);
  }

  private void weighIn(int carrier, double nowS) {
    weighing.weighIn(carrier, nowS);
    note(nowS, carriers.crop[carrier], EventKind.WEIGHED_IN, carriers.cargo.count(carrier));
  }

  private void unload(int carrier, double nowS) {
    int crop = carriers.crop[carrier];
    note(nowS, crop, EventKind.UNLOADED, carriers.cargo.count(carrier));
    onTheWay[crop] -= carriers.cargo.count(carrier);
    int load = kept.unload(carriers, carrier, nowS);
    arrive(RELEASE, load, kept.releasedAtS(load));
    if (weighs[crop]) {
      jobs.ask(carrier, Arrivals.WEIGH_OUT, nowS);
    } else {
      leaveGate(carrier, nowS);
    }
  }

  private void leaveGate(int carrier, double nowS) {
    note(nowS, carriers.crop[carrier], EventKind.LEAVES_GATE, 1);
    if (carriers.isTruck(carrier)) {
      drive(carrier, TRUCK_BACK, nowS + times.driveBackS(carriers.crop[carrier]));
    } else {
      tripEnds(carrier, nowS);
      carriers.freeLoad(carrier);
    }
  }

  private void drive(int truck, int whereto, double arrivesS) {
    carriers.doing[truck] = Arrivals.DRIVE;
    arrive(whereto, truck, arrivesS);
  }

  private void back(int truck, double nowS) {
    carriers.doing[truck] = Arrivals.IDLE;
    if (carriers.startedS[truck] == carriers.startedS[truck]) {
      tripEnds(truck, nowS);
    }
  }

  private void tripEnds(int carrier, double nowS) {
    books.trips.ended(
        carriers.crop[carrier], carriers.waitedS[carrier], nowS - carriers.startedS[carrier]);
    note(nowS, carriers.crop[carrier], EventKind.TRIP_ENDS, 1);
  }

  private void arrive(int kind, int index, double atS) {
    if (atS < Double.POSITIVE_INFINITY) {
      arrivals.add(atS, kind * 1_000_000 + index, index * KINDS + kind);
    }
  }

  public void tellPending() {
    pending.set(endSlot, ends.peekS());
    pending.set(arrivalSlot, arrivals.peekS());
  }

  private void note(double clockS, int crop, EventKind what, double amount) {
    if (trace != null) {
      trace.note(clockS, yard.crop(crop), what, amount);
    }
  }

  /**
   * Whether any bale of the crop is on the road, at the gate, at a field, still to be baled, or due
   * from loads whose last day is not past.
   */
  public boolean moreToCome(int crop, double nowS) {
    return onTheWay[crop] > 0
        || books.heldAtField(crop) > 0
        || baling.moreToCome(crop)
        || books.keptApart(crop) > 0
        || nowS < haulage.loadsEndS(crop) - FutureEvents.instantS();
  }

  /** Bales in places, on the road, at the gate, at fields, and those still to be baled. */
  public int leftOver(int crop) {
    return stacking.inYard(crop) + onTheWay[crop] + books.heldAtField(crop) + baling.unbaled(crop);
  }

  /** At the end of the horizon: losses up to now, and what is weighed in but not unloaded. */
  public void finish(double endS) {
    weighing.finish(endS);
  }
}
