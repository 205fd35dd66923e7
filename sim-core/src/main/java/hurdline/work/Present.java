package hurdline.work;

import hurdline.account.Trace;
import hurdline.chance.Draws;
import hurdline.chance.Stream;
import hurdline.chance.Streams;
import hurdline.chance.Distribution;
import hurdline.event.Pending;
import hurdline.event.Resources;
import hurdline.flow.HolderTrail;
import hurdline.flow.Marks;
import hurdline.flow.Network;
import hurdline.line.Layout;
import hurdline.line.Roster;
import hurdline.plant.Resource;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The present instant of one replication: the clock, what is pending, the resources and the material,
 * shared by all activities, with marks for what must be worked out anew before the clock moves on.
 */
final class Present {
  /** Times that differ by no more than this are one instant. */
  static final double INSTANT_S = 1e-6;

  final Layout layout;
  final Roster roster;
  final Slots slots;
  final Jobs jobs;
  final Gates gates;
  final Pending pending;
  final Resources resources;
  final Counters counters;

  final AfterShift afterShift;

  /** Lines in the hours of their campaigns. */
  final Duty lineHours;

  Network network;
  HolderTrail trail;
  Carrying carrying;
  Trace trace;

  double nowS;

  /** A limit, a lot or a bin's state has changed: rates must be solved. */
  boolean flowsChanged;

  /** A cause has changed, though no rate need have. */
  boolean causesChanged;

  /** Who is on duty, or what bins let go of, may have changed: nothing can be taken as it was. */
  boolean allChanged;

  /** Machines whose cause, flow or what holds their heads may have changed since all was last looked at. */
  final Marks touched;

  /** Nothing is left out because it cannot have changed; see {@link Replication#withoutShortCuts}. */
  boolean plain;

  private Streams streams;
  private int replication;

  Present(Layout layout, Roster roster, int liftsAtOnce) {
    this.layout = layout;
    this.roster = roster;
    slots = new Slots(layout);
    jobs = new Jobs(layout, liftsAtOnce);
    gates = new Gates(layout);
    pending = new Pending(slots.count);
    int[] count = new int[layout.naming.resources.count()];
    for (Resource r : layout.plant.resources()) {
      count[layout.naming.resources.index(r.name())] = r.count();
    }
    resources = new Resources(count, gates.count);
    counters = new Counters(layout);
    afterShift = new AfterShift(layout, roster.months());
    lineHours = new Duty(layout.lines);
    touched = new Marks(layout.machines);
  }

  void reset(Streams streams, int replication) {
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
  Stream stream(String source) {
    return streams.of(replication, source);
  }

  Streams streams() {
    return streams;
  }

  int replication() {
    return replication;
  }

  /** Number of a job's resource; the endless one where it needs none. */
  int resource(Optional<String> needs) {
    return needs.map(layout.naming.resources::index).orElse(resources.endless());
  }

  /** Place of a kind of job in its resource's order of serving; those not named come last, together. */
  int rank(int resource, String kind) {
    if (resource == resources.endless()) {
      return 0;
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

  void note(String where, String what, double amount) {
    if (trace != null) {
      trace.note(nowS, where, what, amount);
    }
  }

  /** Nothing more is due now: whoever follows is told the rates. */
  void settled() {
    if (trace != null) {
      double[] rates = IntStream.range(0, layout.heads).mapToDouble(network::rateKgPerS).toArray();
      double[] levels = IntStream.range(0, layout.bins).mapToDouble(carrying::levelKg).toArray();
      trace.flows(nowS, rates, levels);
    }
  }
}
