package hurdline.simulation;

import hurdline.account.BinBooks;
import hurdline.account.IntakeBooks;
import hurdline.account.MaterialBooks;
import hurdline.account.Trace;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.event.FutureEvents;
import hurdline.flow.BottleneckTrail;
import hurdline.flow.Network;
import hurdline.measure.EventKind;
import hurdline.random.RandomStreams;
import hurdline.simulation.activity.EventSlots;
import hurdline.simulation.activity.Feeding;
import hurdline.simulation.activity.Filling;
import hurdline.simulation.activity.FlowIntegrator;
import hurdline.simulation.activity.JobNumbers;
import hurdline.simulation.activity.LotPosting;
import hurdline.simulation.activity.Milling;
import hurdline.simulation.activity.Orders;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.Rostering;
import hurdline.simulation.activity.Solving;
import hurdline.simulation.activity.StateRecorder;
import hurdline.simulation.activity.StopReasons;
import hurdline.simulation.activity.Stopping;
import hurdline.simulation.activity.StuckException;
import hurdline.simulation.activity.Tables;
import hurdline.simulation.results.Outcome;
import hurdline.simulation.results.OutcomeBuilder;
import hurdline.simulation.yard.Bales;
import hurdline.simulation.yard.CarriedOverStock;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import hurdline.simulation.yard.WeighedLoad;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One pass through the horizon, from event to event.
 *
 * <p>The loop goes to the next pending instant, carries all flows over the time between at the
 * rates that held, does everything due at that instant in the order of {@link EventSlots}, lets new
 * jobs begin, solves the rates if anything has changed, and does so again until nothing is due.
 * Between two events nothing changes but levels and counts, along straight lines, so nothing is
 * approximated.
 *
 * <p>One object serves many replications, one after another; it allocates nothing per event in
 * steady state. {@code ReplicationAllocationTest.anotherDayCostsNoMemory} counts the bytes.
 *
 * <p>One file because it wires all activities and drains their events in one order.
 */
public final class Replication {
  /** So many things done at one instant without the clock moving on mean that it never will. */
  private static final int STUCK = 200_000;

  private final CompiledLines layout;
  private final Roster roster;
  private final int crops;
  private final ReplicationState present;
  private final StopReasons standing;
  private final Stopping stopping;
  private final Filling filling;
  private final Milling milling;
  private final Orders orders;
  private final Bales bales;
  private final IntakeBooks intake;
  private final YardPlan yard;
  private final Haulage haulage;
  private final Stacking stacking;
  private final Hauling hauling;
  private final Feeding feeding;
  private final YearEnd yearEnd;
  private final Rostering rostering;
  private final StateRecorder watching;
  private final Network network;
  private final Solving solving;
  private final MaterialBooks material;
  private final BinBooks binBooks;
  private final OutcomeBuilder tallying;
  private final EventSlots slots;
  private boolean lookForJobs;
  private final LotPosting booking;
  private final int[] mills;
  private long events;

  public Replication(CompiledLines layout, Roster roster, YardPlan yard, Haulage haulage) {
    this.layout = layout;
    this.roster = roster;
    crops = yard.crops();
    present = new ReplicationState(layout, roster, Tables.places(layout));
    slots = present.slots;
    standing = new StopReasons(layout, present);
    stopping = new Stopping(present, standing);
    filling = new Filling(present, standing);
    material = new MaterialBooks(layout);
    booking = new LotPosting(present, filling, material);
    mills = Milling.mills(layout);
    network = new Network(layout, booking);
    present.network = network;
    present.trail = new BottleneckTrail(layout, network);
    orders = new Orders(present, filling);
    milling = new Milling(present, standing, orders);
    bales = new Bales(yard.components(), yard.attributes().size());
    intake = new IntakeBooks(yard, haulage.fields());
    this.yard = yard;
    this.haulage = haulage;
    stacking = new Stacking(yard, bales, intake);
    hauling =
        new Hauling(
            yard,
            haulage,
            bales,
            stacking,
            present.resources,
            present.pending,
            slots.haulEnd,
            slots.arrival,
            present.jobs.haul,
            Long.MAX_VALUE / 2,
            intake);
    int[] component = components(yard);
    feeding = new Feeding(present, stacking, hauling, bales, component);
    yearEnd = new YearEnd(yard, haulage, bales, stacking, hauling, feeding, layout.lines);
    rostering = new Rostering(present, filling, feeding, stacking, stopping, hauling);
    watching = new StateRecorder(present, standing, rostering);
    solving = new Solving(present, watching, filling, milling, orders, stopping);
    binBooks = new BinBooks(layout.bins);
    present.carrying = new FlowIntegrator(present, milling, orders, binBooks);
    tallying =
        new OutcomeBuilder(
            present, haulage, component, stopping, filling, milling, orders, stacking, hauling,
            feeding, rostering, watching, material, binBooks, intake);
  }

  private int[] components(YardPlan yard) {
    int[] component = new int[layout.components];
    for (int c = 0; c < component.length; c++) {
      for (int k = 0; k < yard.components(); k++) {
        if (yard.component(k).equals(layout.naming.components.name(c))) {
          component[c] = k;
        }
      }
    }
    return component;
  }

  /**
   * Simulates the whole horizon.
   *
   * @param replication counts from 1
   * @param trace told what happens; {@code null} for nobody
   */
  public Outcome run(RandomStreams streams, int replication, Trace trace) {
    return run(streams, replication, null, trace);
  }

  /**
   * The same, opened with what another year of the plant has left.
   *
   * @param opening {@code null} for the stock on hand that the file has
   */
  public Outcome run(
      RandomStreams streams, int replication, CarriedOverStock opening, Trace trace) {
    reset(streams, replication, opening, trace);
    double endS = roster.horizonS();
    while (true) {
      double nextS = Math.max(present.pending.nextS(), present.nowS);
      double calendarS = rostering.nextS();
      if (calendarS - nextS <= FutureEvents.instantS()) {
        nextS = calendarS;
      }
      if (nextS > endS) {
        break;
      }
      present.nowS = nextS;
      instant();
    }
    present.nowS = endS;
    present.carrying.upToNow();
    return finish(replication);
  }

  /**
   * The plain twin, for tests: every solve works out everything anew, and every package is an
   * event.
   */
  void withoutShortCuts() {
    present.plain = true;
    network.withoutShortCuts();
  }

  private void reset(
      RandomStreams streams, int replication, CarriedOverStock opening, Trace trace) {
    present.trace = trace;
    present.reset(streams, replication);
    lookForJobs = true;
    network.reset();
    standing.reset();
    stopping.reset();
    filling.reset();
    orders.reset();
    filling.goods.open();
    milling.reset();
    intake.reset();
    bales.reset();
    stacking.trace(trace);
    hauling.trace(trace);
    hauling.reset(streams, replication);
    if (opening == null) {
      stacking.reset(streams, replication);
    } else {
      yearEnd.open(opening, streams, replication);
    }
    feeding.reset();
    rostering.reset();
    watching.reset();
    booking.reset();
    binBooks.reset();
    for (int b = 0; b < layout.bins; b++) {
      binBooks.opens(b, network.massKg(b));
    }
    present.carrying.reset();
    tallying.reset(opening == null ? null : opening.demandW());
    for (int m : mills) {
      network.remap(layout.headsOf[m]);
    }
  }

  /** Does everything that is due now, again and again until nothing is. */
  private void instant() {
    int done = 0;
    do {
      int slot;
      while ((slot = present.pending.firstDue(present.nowS + FutureEvents.instantS())) >= 0) {
        happens(slot);
        if (++done > STUCK) {
          throw new StuckException(
              "the clock stands at "
                  + present.nowS
                  + " s: "
                  + slots.name(layout, slot)
                  + " comes due again and again");
        }
      }
      newJobs();
      if (present.flowsChanged) {
        solving.solve();
      } else if (present.causesChanged) {
        solving.look();
        present.causesChanged = false;
      }
    } while (present.pending.nextS() <= present.nowS + FutureEvents.instantS());
    present.settled();
    tellStanding();
  }

  private void tellStanding() {
    if (present.trace != null) {
      present.trace.standing(
          present.nowS,
          IntStream.range(0, layout.machines).map(watching.states::state).toArray(),
          IntStream.range(0, crops).map(intake.levels::inYard).toArray());
    }
  }

  /** Asks for jobs wherever one may be wanted now, and begins those whose turn it is. */
  private void newJobs() {
    boolean look = lookForJobs;
    boolean again = true;
    while (again) {
      again = false;
      if (lookForJobs) {
        lookForJobs = false;
        hauling.startTrips(present.nowS);
        lookForJobs = feeding.askForLifts();
        milling.askForSwaps();
      }
      int job;
      while ((job = present.resources.nextToBegin(present.nowS)) >= 0) {
        begins(job);
        lookForJobs |= job >= present.jobs.swap;
      }
      again = lookForJobs;
    }
    if (look) {
      rostering.lookForRunOut();
    }
  }

  private void begins(int job) {
    JobNumbers jobs = present.jobs;
    if (job >= jobs.haul) {
      hauling.jobBegins(job - jobs.haul, present.nowS);
    } else if (job >= jobs.lift) {
      feeding.liftBegins(job - jobs.lift);
    } else if (job >= jobs.swap) {
      milling.swapBegins(job - jobs.swap);
    } else if (job >= jobs.change) {
      filling.changeBegins(job - jobs.change);
    } else {
      stopping.repairBegins(job - jobs.repair);
    }
  }

  private void happens(int slot) {
    events++;
    boolean packages = isOfPackages(slot);
    lookForJobs |= !packages;
    if (!packages && slot != slots.haulEnd && slot != slots.arrival) {
      present.carrying.upToNow();
    }
    if (slot < slots.repairEnd) {
      flowEvent(slot);
    } else if (slot < slots.stopDue) {
      jobEnds(slot);
    } else if (slot < slots.calendar) {
      stopping.due(slot - slots.stopDue);
      present.flowsChanged = true;
    } else if (slot == slots.calendar) {
      rostering.due();
      milling.ordersChanged();
      midnight();
    } else if (slot == slots.arrival) {
      hauling.arrivalsDue(present.nowS);
    } else {
      filling.goods.pickUp(slots.owner[slot]);
    }
  }

  /**
   * Full packages and their changes: rates stay as they are until the next solve, no other job is
   * wanted.
   */
  private boolean isOfPackages(int slot) {
    return slot >= slots.firstFull && slot < slots.firstStay
        || slot >= slots.changeEnd && slot < slots.firstSwapEnd;
  }

  private void flowEvent(int slot) {
    present.pending.clear(slot);
    if (slot < slots.level) {
      int head = slot - slots.lotEnd;
      if (layout.headBin[head] < 0) {
        feeding.baleUsedUp(layout.headLine[head]);
      } else {
        network.lotUsedUp(head);
        present.flowsChanged = true;
      }
    } else if (slot < slots.firstFull) {
      int bin = slot - slots.level;
      network.levelReached(bin);
      present.flowsChanged = true;
      present.note(layout.naming.bins.name(bin), EventKind.LEVEL_REACHED, network.massKg(bin));
    } else if (slot < slots.firstStay) {
      filling.full(slots.owner[slot]);
      if (orders.newlyCovered()) {
        milling.ordersChanged();
      }
    } else if (slot < slots.firstOrder) {
      milling.stayOver(slots.owner[slot]);
    } else {
      orders.met(slots.owner[slot]);
      milling.ordersChanged();
    }
  }

  private void jobEnds(int slot) {
    if (slot == slots.haulEnd) {
      hauling.endsDue(present.nowS);
    } else if (slot == slots.liftEnd) {
      feeding.liftsEnd();
    } else if (slot >= slots.firstSwapEnd) {
      bookScreenEnergy(slots.owner[slot]);
      milling.swapEnds(slots.owner[slot]);
    } else if (slot >= slots.changeEnd) {
      filling.changeEnds(slot - slots.changeEnd);
    } else {
      stopping.ends(slot - slots.repairEnd);
    }
  }

  private void bookScreenEnergy(int m) {
    booking.screenEnergy(m, watching.power.joules(m, present.nowS));
  }

  private void midnight() {
    int day = roster.dayAt(present.nowS);
    if (present.nowS == roster.midnightS(day) || present.nowS == roster.horizonS()) {
      network.sumLots();
      if (tallying.periodEnds(present.nowS)) {
        for (int h = 0; h < layout.heads; h++) {
          network.endLot(h);
        }
        for (int m : mills) {
          bookScreenEnergy(m);
        }
        tallying.bookPeriods(present.nowS, booking);
      }
    }
  }

  /**
   * What has come due, over all that was simulated so far; a measure of the work done that no other
   * load disturbs.
   */
  long events() {
    return events;
  }

  /** How often rates were solved, over all that was simulated so far. */
  long solves() {
    return solving.solves;
  }

  private Outcome finish(int replication) {
    double endS = present.nowS;
    for (int h = 0; h < layout.heads; h++) {
      network.endLot(h);
    }
    for (int m : mills) {
      bookScreenEnergy(m);
    }
    stopping.finish();
    filling.finish();
    filling.goods.books.finish(endS);
    milling.finish();
    feeding.finish();
    present.resources.finish(endS);
    hauling.finish(endS);
    stacking.finish(endS);
    intake.finish(endS);
    return tallying.outcome(replication, booking, yearEnd.left());
  }

  /** What the replication that was run last has left; to be asked once. */
  public CarriedOverStock leftOver() {
    return yearEnd.gather(present.nowS, tallying.latestDemandW());
  }

  /** Every load weighed in by the replication that was run last, in turn. */
  public List<WeighedLoad> loads() {
    return WeighedLoad.of(intake.loads, yard, haulage);
  }
}
