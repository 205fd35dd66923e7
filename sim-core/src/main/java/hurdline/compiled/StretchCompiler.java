package hurdline.compiled;

import hurdline.plant.Curve;
import hurdline.plant.Line;
import hurdline.plant.Step;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds what a draw reaches and writes it into the flat arrays of a {@link Stretch}. */
final class StretchCompiler {
  private final Indexes naming;
  private final Line line;
  private final Map<String, Step> steps = new HashMap<>();
  private final List<Step> order = new ArrayList<>();
  private final Map<String, Integer> nodeOf = new HashMap<>();
  private final Map<String, Integer> distance = new HashMap<>();
  private final Stretch.Builder to = new Stretch.Builder();

  StretchCompiler(Indexes naming, Line line) {
    this.naming = naming;
    this.line = line;
    line.steps().forEach(step -> steps.put(step.machine(), step));
  }

  /** The stretch that begins at this feeder or bin. */
  Stretch from(String entry) {
    walk(entry);
    to.returns = !sortInFlowOrder(entry);
    for (int node = 0; node < order.size(); node++) {
      nodeOf.put(order.get(node).machine(), node);
    }
    allocate();
    for (int node = 0; node < to.nodes; node++) {
      fill(node, order.get(node));
    }
    to.distance = order.stream().mapToInt(step -> distance.get(step.machine())).toArray();
    to.nearest =
        IntStream.range(0, to.nodes)
            .boxed()
            .sorted(
                Comparator.<Integer>comparingInt(node -> to.distance[node])
                    .thenComparing(node -> order.get(node).machine()))
            .mapToInt(Integer::intValue)
            .toArray();
    return new Stretch(to);
  }

  private void walk(String entry) {
    ArrayDeque<String> open = new ArrayDeque<>(List.of(entry));
    distance.put(entry, 0);
    while (!open.isEmpty()) {
      String at = open.poll();
      for (Step.Outlet outlet : steps.get(at).outlets()) {
        if (inside(outlet.to()) && !distance.containsKey(outlet.to())) {
          distance.put(outlet.to(), distance.get(at) + 1);
          open.add(outlet.to());
        }
      }
    }
  }

  private boolean inside(String target) {
    return naming.machines.find(target) >= 0;
  }

  /** Depth first; false where a return makes a flow order impossible. */
  private boolean sortInFlowOrder(String entry) {
    Set<String> done = new HashSet<>();
    boolean straight = visit(entry, done, new HashSet<>());
    java.util.Collections.reverse(order);
    return straight;
  }

  private boolean visit(String name, Set<String> done, Set<String> path) {
    path.add(name);
    boolean straight = true;
    for (Step.Outlet outlet : steps.get(name).outlets()) {
      String next = outlet.to();
      if (inside(next)) {
        if (path.contains(next)) {
          straight = false;
        } else if (!done.contains(next)) {
          straight &= visit(next, done, path);
        }
      }
    }
    path.remove(name);
    done.add(name);
    order.add(steps.get(name));
    return straight;
  }

  private void allocate() {
    int n = order.size();
    to.line = naming.lines.index(line.name());
    to.nodes = n;
    to.machine = new int[n];
    to.rateKgPerS = new double[n];
    to.rateByMoisture = new Polyline[n];
    to.rateByAttribute = new Polyline[n][naming.attributes.size()];
    to.breaksFrom = new int[n][];
    to.breaksInto = new int[n][];
    to.breaksShare = new double[n][];
    to.dries = new double[n];
    to.collects = new double[n];
    to.dustSink = new int[n];
    to.outletTo = new int[n][];
    to.takes = new double[n][][];
    to.restOutlet = new int[n];
    to.byMoisture = new Polyline[n][][];
    to.byAttribute = new Polyline[n][][][];
  }

  private void fill(int node, Step step) {
    to.machine[node] = naming.machines.find(step.machine());
    to.rateKgPerS[node] = step.rateKgPerS().orElse(Double.POSITIVE_INFINITY);
    to.rateByMoisture[node] = new Polyline(step.rateByMoisture());
    for (int a = 0; a < naming.attributes.size(); a++) {
      to.rateByAttribute[node][a] = new Polyline(naming.attributes.get(a).onRate(step));
    }
    to.breaksFrom[node] =
        step.breaks().stream().mapToInt(b -> naming.components.index(b.component())).toArray();
    to.breaksInto[node] =
        step.breaks().stream().mapToInt(b -> naming.components.index(b.into())).toArray();
    to.breaksShare[node] = step.breaks().stream().mapToDouble(Step.Break::share).toArray();
    to.dries[node] = step.dries();
    to.collects[node] = naming.collects(step.machine());
    to.dustSink[node] = to.collects[node] < 1 ? to.sink(Stretch.Sink.DUST, -1, -1) : -1;
    if (step.packs().isPresent()) {
      fillPacker(node, step.packs().get());
    } else {
      fillOutlets(node, step.outlets());
    }
  }

  private void fillPacker(int node, Step.Packs packs) {
    int sink =
        packs instanceof Step.PacksFromMill from
            ? to.sink(Stretch.Sink.PACKED_FROM_MILL, naming.machines.index(from.mill()), node)
            : to.sink(
                Stretch.Sink.PACKED,
                naming.products.index(((Step.PacksProduct) packs).product()),
                node);
    to.outletTo[node] = new int[] {-1 - sink};
    to.takes[node] = new double[1][naming.components.count()];
    to.restOutlet[node] = 0;
    to.byMoisture[node] = new Polyline[1][];
    to.byAttribute[node] = new Polyline[1][naming.attributes.size()][];
  }

  private void fillOutlets(int node, List<Step.Outlet> outlets) {
    int count = outlets.size();
    to.outletTo[node] = new int[count];
    to.takes[node] = new double[count][naming.components.count()];
    to.byMoisture[node] = new Polyline[count][];
    to.byAttribute[node] = new Polyline[count][naming.attributes.size()][];
    // without an outlet for the rest, what a correction leaves over goes with the last one
    to.restOutlet[node] = count - 1;
    for (int o = 0; o < count; o++) {
      Step.Outlet outlet = outlets.get(o);
      to.outletTo[node][o] = target(outlet.to());
      if (outlet.takes().isEmpty()) {
        to.restOutlet[node] = o;
      } else {
        double[] shares = to.takes[node][o];
        outlet.takes().get().forEach((c, share) -> shares[naming.components.index(c)] = share);
      }
      to.byMoisture[node][o] = curves(outlet.byMoisture());
      for (int a = 0; a < naming.attributes.size(); a++) {
        to.byAttribute[node][o][a] = curves(naming.attributes.get(a).onShares(outlet));
      }
    }
  }

  private int target(String name) {
    if (inside(name)) {
      return nodeOf.get(name);
    }
    int bin = naming.bins.find(name);
    if (bin >= 0) {
      return -1 - to.sink(Stretch.Sink.BIN, bin, -1);
    }
    int product = naming.products.find(name);
    return -1
        - (product >= 0
            ? to.sink(Stretch.Sink.PILED, product, -1)
            : to.sink(Stretch.Sink.WASTE, -1, -1));
  }

  private Polyline[] curves(Map<String, Curve> byComponent) {
    if (byComponent.isEmpty()) {
      return null;
    }
    Polyline[] curves = new Polyline[naming.components.count()];
    for (int c = 0; c < curves.length; c++) {
      curves[c] = new Polyline(byComponent.getOrDefault(naming.components.name(c), Curve.NONE));
    }
    return curves;
  }
}
