package hurdline.study;

import hurdline.answer.LineFlow;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.plant.Line;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lines as nodes and flows. */
public final class LineFlows {
  private static final String WASTE = "waste";
  private static final String AIR = "air";
  private static final double TONNE_KG = 1000;

  /** Below this share of what a node takes in, a gap between in and out is rounding. */
  private static final double ROUNDING = 1e-9;

  private final CompiledLines layout;
  private final PlantOutline outlines;
  private final FlowFigures figures;

  private record Way(String from, String to) {}

  private Map<String, LineFlow.Node> nodes;
  private Map<Way, Double> kg;
  private String line;

  public LineFlows(CompiledLines layout, PlantOutline outlines, FlowFigures figures) {
    this.layout = layout;
    this.outlines = outlines;
    this.figures = figures;
  }

  public List<LineFlow> flows() {
    return outlines.lines().stream().map(this::flow).toList();
  }

  private LineFlow flow(Line of) {
    line = of.name();
    nodes = new LinkedHashMap<>();
    kg = new LinkedHashMap<>();
    int[] heads = outlines.heads(of);
    for (int h : heads) {
      for (int node = 0; node < layout.stretch[h].nodes; node++) {
        String name = name(h, node);
        boolean bin = layout.stretch[h].machine[node] < 0;
        node(name, bin ? LineFlow.Kind.BIN : LineFlow.Kind.MACHINE, outlines.kind(name));
      }
    }
    for (int h : heads) {
      for (int node = 0; node < layout.stretch[h].nodes; node++) {
        ways(h, node);
      }
    }
    toTheAir(of);
    double hours = figures.hours(line);
    List<LineFlow.Edge> edges = new ArrayList<>();
    kg.forEach(
        (way, mass) ->
            edges.add(
                new LineFlow.Edge(way.from, way.to, hours > 0 ? mass / TONNE_KG / hours : 0)));
    return new LineFlow(line, List.copyOf(nodes.values()), edges);
  }

  private String name(int head, int node) {
    int m = layout.stretch[head].machine[node];
    return m >= 0 ? layout.machine[m].name() : layout.naming.bins.name(layout.headBin[head]);
  }

  private void node(String name, LineFlow.Kind kind, String what) {
    nodes.computeIfAbsent(
        name,
        fresh ->
            new LineFlow.Node(
                name,
                kind,
                kind == LineFlow.Kind.MACHINE ? what : "",
                figures.limitsShare(line, name)));
  }

  private void ways(int head, int node) {
    Stretch stretch = layout.stretch[head];
    String from = name(head, node);
    int[] targets = stretch.outletTo[node];
    for (int o = 0; o < targets.length; o++) {
      double mass = figures.wayKg(head, node, o);
      if (targets[o] >= 0) {
        add(from, name(head, targets[o]), mass);
      } else {
        toSink(from, stretch, -1 - targets[o], mass);
      }
    }
  }

  private void toSink(String from, Stretch stretch, int sink, double mass) {
    switch (stretch.sinkKind[sink]) {
      case BIN -> {
        String bin = layout.naming.bins.name(stretch.sinkTarget[sink]);
        node(bin, LineFlow.Kind.BIN, "");
        add(from, bin, mass);
      }
      case WASTE -> {
        node(WASTE, LineFlow.Kind.WASTE, "");
        add(from, WASTE, mass);
      }
      case DUST -> throw new IllegalStateException("an outlet leads to the air at " + from);
      case PILED, PACKED, PACKED_FROM_MILL ->
          toProducts(from, outlines.products(stretch, sink), mass);
    }
  }

  /** What a filler got is split as what the line makes of its products is. */
  private void toProducts(String from, List<String> products, double mass) {
    double all = products.stream().mapToDouble(product -> figures.made(line, product)).sum();
    for (String product : products) {
      node(product, LineFlow.Kind.PRODUCT, "");
      double share = all > 0 ? figures.made(line, product) / all : 1.0 / products.size();
      add(from, product, mass * share);
    }
  }

  private void add(String from, String to, double mass) {
    kg.merge(new Way(from, to), mass, Double::sum);
  }

  /**
   * Dust that a cyclone lets go and water that a drier takes: what went in and did not come out.
   */
  private void toTheAir(Line of) {
    for (int h : outlines.heads(of)) {
      Stretch stretch = layout.stretch[h];
      for (int node = 0; node < stretch.nodes; node++) {
        String name = name(h, node);
        if ((stretch.dries[node] > 0 || stretch.collects[node] < 1)
            && !kg.containsKey(new Way(name, AIR))) {
          double in = node == 0 && layout.headBin[h] < 0 ? figures.fedKg(line) : 0;
          double out = 0;
          for (Map.Entry<Way, Double> way : kg.entrySet()) {
            in += way.getKey().to.equals(name) ? way.getValue() : 0;
            out += way.getKey().from.equals(name) ? way.getValue() : 0;
          }
          if (in - out > ROUNDING * in) {
            node(AIR, LineFlow.Kind.AIR, "");
            add(name, AIR, in - out);
          }
        }
      }
    }
  }
}
