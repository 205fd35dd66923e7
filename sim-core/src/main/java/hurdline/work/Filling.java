package hurdline.work;

import hurdline.chance.Draws;
import hurdline.chance.Stream;
import hurdline.line.Layout;
import hurdline.line.Stretch;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Fillers and presses: one package at a time, a change on its spout when it is full, and filling goes
 * on at once on the lowest-numbered spout that is ready.
 *
 * <p>A package is full when the product's running total at this filler reaches the next multiple of
 * its mass, so the begun package stays over nights and while another product is filled.
 */
final class Filling {
  private static final int READY = 0;
  private static final int ASKED = 1;
  private static final int UNDER_WAY = 2;

  private final Present present;
  private final Layout layout;
  private final Standing standing;
  private final int products;
  private final int[] packers;
  private final int[] firstSpout; // by machine
  private final int[] spouts; // by machine
  private final int[] spoutMachine;
  private final int[] phase; // by spout
  private final int[] changeResource; // by spout, of the change asked for
  private final int[] changeProduct; // by spout
  private final double[] beganS; // by spout
  private final double[] beganCrewedS;
  private final int[] filling; // by machine, the spout that fills, −1 for none
  private final double[] packageKg; // by product, +inf where it has none
  private final Packaging[] packaging; // by product
  private final int[] resource; // by product, of its package's change
  private final int[] rank;
  private final Draws[] change; // by machine and packaging of the product
  private final int[][] makes; // [mill][screen] product
  private final double[] inflowKgPerS; // [machine * products + product]
  private final boolean[] flows; // by machine
  private final double[] carriedS; // by machine
  private final int[][] fillHead; // [machine] heads and their sinks that fill here
  private final int[][] fillSink;
  private final int[][] made; // [machine] products that are filled here

  /** [machine * products + product] kg filled, and full packages. */
  final double[] filledKg;

  final int[] full;

  /** [line] packages paid. */
  final double[] cost;

  Filling(Present present, Standing standing, int[][] makes) {
    this.present = present;
    this.standing = standing;
    this.makes = makes;
    layout = present.layout;
    products = layout.naming.products.count();
    packers =
        IntStream.range(0, layout.machines)
            .filter(m -> layout.machine[m] instanceof Machine.Packer)
            .toArray();
    firstSpout = new int[layout.machines];
    spouts = new int[layout.machines];
    spoutMachine = new int[Slots.spouts(layout)];
    int at = 0;
    for (int m = 0; m < layout.machines; m++) {
      firstSpout[m] = at;
      spouts[m] = Slots.spouts(layout.machine[m]);
      for (int k = 0; k < spouts[m]; k++) {
        spoutMachine[at++] = m;
      }
    }
    phase = new int[at];
    changeResource = new int[at];
    changeProduct = new int[at];
    beganS = new double[at];
    beganCrewedS = new double[at];
    filling = new int[layout.machines];
    packageKg = new double[products];
    packaging = new Packaging[products];
    resource = new int[products];
    rank = new int[products];
    Map<String, Packaging> byName =
        layout.plant.packages().stream()
            .collect(Collectors.toMap(Packaging::name, Function.identity()));
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      packaging[p] = product.packaging().map(byName::get).orElse(null);
      packageKg[p] = packaging[p] == null ? Double.POSITIVE_INFINITY : packaging[p].massKg();
      if (packaging[p] != null) {
        resource[p] = present.resource(packaging[p].needs());
        rank[p] = present.rank(resource[p], "change");
      }
    }
    change = new Draws[layout.machines * products];
    inflowKgPerS = new double[layout.machines * products];
    filledKg = new double[layout.machines * products];
    full = new int[layout.machines * products];
    cost = new double[layout.lines];
    flows = new boolean[layout.machines];
    carriedS = new double[layout.machines];
    fillHead = new int[layout.machines][];
    fillSink = new int[layout.machines][];
    made = new int[layout.machines][];
    for (int m : packers) {
      ways(m);
    }
    hours();
  }

  private void ways(int m) {
    List<Integer> heads = new ArrayList<>();
    List<Integer> sinks = new ArrayList<>();
    for (int h : layout.headsOf[m]) {
      Stretch s = layout.stretch[h];
      for (int k = 0; k < s.sinks; k++) {
        if (s.sinkNode[k] == layout.nodeOf[h][m]) {
          heads.add(h);
          sinks.add(k);
        }
      }
    }
    fillHead[m] = heads.stream().mapToInt(Integer::intValue).toArray();
    fillSink[m] = sinks.stream().mapToInt(Integer::intValue).toArray();
    made[m] = IntStream.range(0, products).filter(p -> fills(m, p)).toArray();
  }

  private void hours() {
    for (int m : packers) {
      for (int p : made[m]) {
        if (packaging[p] != null) {
          present.resources.hoursOf(resource[p], present.gates.machine(m));
        }
      }
    }
  }

  private boolean fills(int m, int product) {
    for (int i = 0; i < fillHead[m].length; i++) {
      Stretch s = layout.stretch[fillHead[m][i]];
      int target = s.sinkTarget[fillSink[m][i]];
      boolean made =
          s.sinkKind[fillSink[m][i]] == Stretch.Sink.PACKED
              ? target == product
              : Arrays.stream(makes[target]).anyMatch(each -> each == product);
      if (made) {
        return true;
      }
    }
    return false;
  }

  void reset() {
    Arrays.fill(phase, READY);
    Arrays.fill(filledKg, 0);
    Arrays.fill(inflowKgPerS, 0);
    Arrays.fill(full, 0);
    Arrays.fill(flows, false);
    Arrays.fill(carriedS, 0);
    Arrays.fill(cost, 0);
    for (int m = 0; m < layout.machines; m++) {
      filling[m] = spouts[m] > 0 ? firstSpout[m] : -1;
    }
    for (int m : packers) {
      Stream stream = present.stream(layout.machine[m].name() + ".change");
      for (int p = 0; p < products; p++) {
        change[m * products + p] =
            packaging[p] == null ? null : new Draws(packaging[p].changeS(), stream);
      }
    }
  }

  /** Brings a filler's running totals up to now. */
  private void carry(int m) {
    double dtS = present.nowS - carriedS[m];
    if (dtS > 0 && flows[m]) {
      for (int p : made[m]) {
        filledKg[m * products + p] += inflowKgPerS[m * products + p] * dtS;
      }
    }
    carriedS[m] = present.nowS;
  }

  /** Product of a sink as the screens now stand. */
  int productOf(Stretch stretch, int sink) {
    return stretch.sinkKind[sink] == Stretch.Sink.PACKED_FROM_MILL
        ? makes[stretch.sinkTarget[sink]][present.network.screen[stretch.sinkTarget[sink]]]
        : stretch.sinkTarget[sink];
  }

  /** When each filler's package is full at the present rates. */
  void schedule() {
    for (int m : packers) {
      if (flows[m] || present.network.inflowKgPerS[m] > 0) {
        carry(m);
        setInflows(m);
        present.pending.set(present.slots.full[m], fullS(m));
      }
    }
  }

  private void setInflows(int m) {
    for (int p : made[m]) {
      inflowKgPerS[m * products + p] = 0;
    }
    flows[m] = present.network.inflowKgPerS[m] > 0;
    int[] heads = fillHead[m];
    for (int i = 0; flows[m] && i < heads.length; i++) {
      double rate = present.network.rateKgPerS(heads[i]);
      if (rate > 0) {
        int product = productOf(layout.stretch[heads[i]], fillSink[m][i]);
        inflowKgPerS[m * products + product] +=
            rate * present.network.sinkKg(heads[i], fillSink[m][i]);
      }
    }
  }

  private double fullS(int m) {
    double first = Double.POSITIVE_INFINITY;
    for (int p : made[m]) {
      int at = m * products + p;
      if (inflowKgPerS[at] > 0 && packageKg[p] < Double.POSITIVE_INFINITY) {
        double left = Math.max(0, (full[at] + 1) * packageKg[p] - filledKg[at]);
        first = Math.min(first, present.nowS + left / inflowKgPerS[at]);
      }
    }
    return first;
  }

  /** A package is full: counted and paid, and its spout asks for a change. */
  void full(int m) {
    carry(m);
    for (int p : made[m]) {
      int at = m * products + p;
      if (inflowKgPerS[at] > 0 && packageKg[p] < Double.POSITIVE_INFINITY) {
        double left = (full[at] + 1) * packageKg[p] - filledKg[at];
        if (left <= inflowKgPerS[at] * Present.INSTANT_S * 1.5) {
          packageDone(m, p);
        }
      }
    }
    present.pending.set(present.slots.full[m], fullS(m));
  }

  private void packageDone(int m, int product) {
    full[m * products + product]++;
    cost[present.counters.line[m]] += packaging[product].cost();
    present.note(layout.machine[m].name(), "package full", full[m * products + product]);
    int spout = filling[m];
    if (spout < 0) {
      return;
    }
    phase[spout] = ASKED;
    int resource = this.resource[product];
    changeResource[spout] = resource;
    changeProduct[spout] = product;
    present.resources.ask(
        resource,
        present.jobs.change + spout,
        rank[product],
        (long) m << 32 | spout,
        present.gates.machine(m),
        present.nowS);
    nextSpout(m);
  }

  private void nextSpout(int m) {
    filling[m] = -1;
    for (int k = firstSpout[m]; k < firstSpout[m] + spouts[m] && filling[m] < 0; k++) {
      if (phase[k] == READY) {
        filling[m] = k;
      }
    }
    stand(m);
  }

  /** While no spout is ready: held by a change under way, else by the resource that all wait for. */
  private void stand(int m) {
    int cause = -1;
    if (filling[m] < 0) {
      cause = layout.causes.change[m];
      if (!anyUnderWay(m)) {
        int resource = changeResource[firstSpout[m]];
        cause =
            resource == present.resources.endless() ? cause : layout.causes.resource[resource];
      }
    }
    standing.change(m, cause);
  }

  private boolean anyUnderWay(int m) {
    for (int k = firstSpout[m]; k < firstSpout[m] + spouts[m]; k++) {
      if (phase[k] == UNDER_WAY) {
        return true;
      }
    }
    return false;
  }

  /** The change of a spout begins: its resource is there. */
  void changeBegins(int spout) {
    int m = spoutMachine[spout];
    phase[spout] = UNDER_WAY;
    beganS[spout] = present.nowS;
    beganCrewedS[spout] = present.counters.duty.seconds(m, present.nowS);
    double lasts = change[m * products + changeProduct[spout]].next();
    present.pending.set(present.slots.changeEnd + spout, present.nowS + lasts);
    stand(m);
  }

  void changeEnds(int spout) {
    int m = spoutMachine[spout];
    present.pending.clear(present.slots.changeEnd + spout);
    present.resources.release(changeResource[spout], present.nowS);
    phase[spout] = READY;
    bookAfterShift(spout);
    if (filling[m] < 0) {
      filling[m] = spout;
    }
    stand(m);
  }

  private void bookAfterShift(int spout) {
    int m = spoutMachine[spout];
    double inHours = present.counters.duty.seconds(m, present.nowS) - beganCrewedS[spout];
    present.afterShift.add(
        present.counters.line[m], present.nowS - beganS[spout] - inHours, present.nowS);
  }

  /** Books what is under way at the end of the horizon. */
  void finish() {
    for (int spout = 0; spout < phase.length; spout++) {
      if (phase[spout] == UNDER_WAY) {
        bookAfterShift(spout);
      }
    }
  }
}
