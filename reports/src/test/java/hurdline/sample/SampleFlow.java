package hurdline.sample;

import hurdline.answer.LineFlow;
import hurdline.answer.LineFlow.Edge;
import hurdline.answer.LineFlow.Kind;
import hurdline.answer.LineFlow.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Invented lines of any number of machines, to see whether their drawings can be read. */
public final class SampleFlow {
  private static final List<String> KINDS =
      List.of(
          "inclined-cleaner", "separating-saw", "lint-cleaner", "hammer-mill", "screen", "press");

  private final RandomGenerator chance;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Edge> edges = new ArrayList<>();

  private SampleFlow(long seed) {
    chance = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
  }

  /** A feeder, then machines that part what they get, some bins, one return, and products. */
  public static LineFlow of(int machines, long seed) {
    return new SampleFlow(seed).line(machines);
  }

  private LineFlow line(int machines) {
    nodes.add(new Node("feeder", Kind.MACHINE, "bale-feeder", 0.18));
    List<String> open = new ArrayList<>(List.of("feeder"));
    List<Double> flow = new ArrayList<>(List.of(4.8));
    for (int made = 1; made < machines; made++) {
      int at = chance.nextInt(Math.max(1, open.size() / 2));
      String from = open.remove(at);
      double tPerH = flow.remove(at);
      boolean bin = made % 8 == 5;
      if (bin) {
        add(from, "bin_" + made, Kind.BIN, "", tPerH);
        from = "bin_" + made;
      }
      String name = name(made);
      nodes.add(
          new Node(
              name, Kind.MACHINE, KINDS.get(made % KINDS.size()), made % 5 == 3 ? 0.41 / made : 0));
      edges.add(new Edge(from, name, tPerH));
      int parts = 1 + chance.nextInt(3);
      for (int part = 0; part < parts; part++) {
        open.add(name);
        flow.add(tPerH / parts);
      }
    }
    end(open, flow);
    return new LineFlow("line_of_" + machines, nodes, edges);
  }

  private static String name(int made) {
    return KINDS.get(made % KINDS.size()).replace('-', '_') + "_" + made;
  }

  /** What is left goes to a few products, the dust and the waste; one stream goes back. */
  private void end(List<String> open, List<Double> flow) {
    int products = 2 + open.size() / 3;
    for (int at = 0; at < open.size(); at++) {
      String to = at % 7 == 6 ? "waste" : "product_" + at % products;
      Kind kind = at % 7 == 6 ? Kind.WASTE : Kind.PRODUCT;
      if (at == 1 && nodes.size() > 4) {
        edges.add(new Edge(open.get(at), nodes.get(2).name(), flow.get(at) / 8));
      }
      add(open.get(at), to, kind, "", flow.get(at));
    }
  }

  private void add(String from, String to, Kind kind, String what, double tPerH) {
    if (nodes.stream().noneMatch(node -> node.name().equals(to))) {
      nodes.add(new Node(to, kind, what, 0));
    }
    for (int at = 0; at < edges.size(); at++) {
      Edge edge = edges.get(at);
      if (edge.from().equals(from) && edge.to().equals(to)) {
        edges.set(at, new Edge(from, to, edge.tPerH() + tPerH));
        return;
      }
    }
    edges.add(new Edge(from, to, tPerH));
  }
}
