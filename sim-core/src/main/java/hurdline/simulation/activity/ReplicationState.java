package hurdline.simulation.activity;

import hurdline.account.Trace;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Roster;
import hurdline.event.FutureEvents;
import hurdline.event.Resources;
import hurdline.flow.BottleneckTrail;
import hurdline.flow.Network;
import hurdline.flow.rates.IndexSet;
import hurdline.measure.EventKind;
import hurdline.plant.Resource;
import hurdline.random.Distribution;
import hurdline.random.Draws;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.simulation.yard.StartHours;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The present instant of one replication: the clock, what is pending, the resources and the
 * material, shared by all activities, with marks for what must be worked out anew before the clock
 * moves on.
 */
public final class ReplicationState {

  public final CompiledLines layout;
  public final Roster roster;
  public final EventSlots slots;
  public final JobNumbers jobs;
  final StartHours gates;
  public final FutureEvents pending;
  public final Resources resources;
  final Counters counters;

  public final AfterShift afterShift;

  /** Lines in the hours of their campaigns. */
  final OpenHours lineHours;

  public Network network;
  public BottleneckTrail trail;
  public FlowIntegrator carrying;
  public Trace trace;

  public double nowS;

  /** A limit, a lot or a bin's state has changed: rates must be solved. */
  public boolean flowsChanged;

  /** A cause has changed, though no rate need have. */
  public boolean causesChanged;

  /** Who is on duty, or what bins let go of, may have changed: nothing can be taken as it was. */
  boolean allChanged;

  /**
   * Machines whose cause, flow or what holds their heads may have changed since all was last looked
   * at.
   */
  final IndexSet touched;

  /**
   * Nothing is left out because it cannot have changed; see {@link
   * hurdline.simulation.Replication#withoutShortCuts Replication.withoutShortCuts}.
   */
  public boolean plain;

  private RandomStreams streams;
  private int replication;

  public ReplicationState(CompiledLines layout, Roster roster, int liftsAtOnce) {
    this.layout = layout;
    this.roster = roster;
    slots = new EventSlots(layout);
    jobs = new JobNumbers(layout, liftsAtOnce);
    gates = new StartHours(layout);
    pending = new FutureEvents(slots.count);
    int[] count = new int[layout.naming.resources.count()];
    for (Resource r : layout.plant.resources()) {
      count[layout.naming.resources.index(r.name())] = r.count();
    }
    resources = new Resources(count, gates.count);
    counters = new Counters(layout);
    afterShift = new AfterShift(layout, roster.months());
    lineHours = new OpenHours(layout.lines);
    touched = new IndexSet(layout.machines);
  }

  public void reset(RandomStreams streams, int replication) {
    this.streams = streams;
    this.replication = replication;
    nowS = 0;
    flowsChanged = true;
    causesChanged = true;
    allChanged = true;
    touched.clear();
    pending.reset();
    resources.reset();
    counters.reset(layout);
    afterShift.reset();
    lineHours.reset();
  }

  /** Draws of one source of chance in this replication. */
  Draws draws(Distribution distribution, String source) {
    return new Draws(distribution, streams.of(replication, source));
  }

  /** One source of chance in this replication. */
  RandomStream stream(String source) {
    return streams.of(replication, source);
  }

  RandomStreams streams() {
    return streams;
  }

  public int replication() {
    return replication;
  }

  /**
   * Number of what a job of a kind needs: its resource, several of them together, or the endless
   * one where it needs none.
   */
  int resource(List<String> needs, String kind) {
    int[] parts = needs.stream().mapToInt(layout.naming.resources::index).toArray();
    return resources.together(parts, IntStream.of(parts).map(part -> rank(part, kind)).toArray());
  }

  /** What is waited for: of several resources the first that is busy. */
  int waitingCause(int resource) {
    return layout.causes.resource[resources.lacking(resource)];
  }

  /**
   * Place of a kind of job in its resource's order of serving; those not named come last, together.
   */
  int rank(int resource, String kind) {
    if (resource >= resources.endless()) {
      return 0; // several resources have a rank in the queue of each
    }
    String name = layout.naming.resources.name(resource);
    List<String> first =
        layout.plant.resources().stream()
            .filter(r -> r.name().equals(name))
            .findFirst()
            .orElseThrow()
            .first();
    int at = first.indexOf(kind);
    return at < 0 ? first.size() : at;
  }

  public void note(String where, EventKind what, double amount) {
    if (trace != null) {
      trace.note(nowS, where, what, amount);
    }
  }

  /** Nothing more is due now: whoever follows is told the rates. */
  public void settled() {
    if (trace != null) {
      double[] rates = IntStream.range(0, layout.heads).mapToDouble(network::rateKgPerS).toArray();
      double[] levels = IntStream.range(0, layout.bins).mapToDouble(carrying::levelKg).toArray();
      trace.flows(nowS, rates, levels);
    }
  }
}
