package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import hurdline.answer.LineFlow.Edge;
import hurdline.answer.LineFlow.Kind;
import hurdline.answer.LineFlow.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Cuts a line into parts that each fit a printed page with letters one can read. A pipe that is cut
 * ends at a letter and goes on at the same letter in another part; a product, waste or air that
 * several streams go to stands at the end of each of them.
 */
final class FlowSheets {
  static final int MOST_ROWS = 10;
  private static final int LEAST_ROWS = 3;
  static final String JOINT = "joint";
  private static final String COPY = "\n";

  /**
   * One part of a line.
   *
   * @param flow what is drawn, letters where pipes are cut among the nodes
   * @param edges of the line itself, those that start in this part
   * @param joints what stands under each letter
   */
  record Sheet(LineFlow flow, List<Edge> edges, Map<String, String> joints) {}

  private final LineFlow whole;
  private final ToDoubleFunction<Node> widths;
  private final double limit;

  /**
   * @param widths what the box of a node needs
   * @param limit how wide a drawing may be
   */
  FlowSheets(LineFlow flow, ToDoubleFunction<Node> widths, double limit) {
    this.whole = withOwnEnds(flow);
    this.widths = widths;
    this.limit = limit;
  }

  /** The name that is written in a node's box. */
  static String shown(String node) {
    int end = node.indexOf(COPY);
    return end < 0 ? node : node.substring(0, end);
  }

  private static LineFlow withOwnEnds(LineFlow flow) {
    Map<String, Node> nodes = new LinkedHashMap<>();
    flow.nodes().forEach(node -> nodes.put(node.name(), node));
    Map<String, Long> fed = new HashMap<>();
    flow.edges().forEach(edge -> fed.merge(edge.to(), 1L, Long::sum));
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : flow.edges()) {
      Node to = nodes.get(edge.to());
      if (to == null || !isEnd(to) || fed.get(edge.to()) == 1) {
        edges.add(edge);
        continue;
      }
      String own = edge.to() + COPY + edge.from();
      nodes.put(own, new Node(own, to.kind(), to.what(), to.heldShare()));
      edges.add(new Edge(edge.from(), own, edge.tPerH()));
    }
    flow.nodes().stream()
        .filter(node -> isEnd(node) && fed.getOrDefault(node.name(), 0L) > 1)
        .forEach(node -> nodes.remove(node.name()));
    return new LineFlow(flow.line(), List.copyOf(nodes.values()), edges);
  }

  private static boolean isEnd(Node node) {
    return node.kind() != Kind.MACHINE && node.kind() != Kind.BIN;
  }

  /** As few parts as will do; all of the line in one where it fits. */
  List<Sheet> sheets() {
    Map<String, Integer> rowOf = rows(whole).rowOf();
    if (height(whole) <= MOST_ROWS) {
      return List.of(sheet(List.of(0), rowOf, 0));
    }
    List<Sheet> sheets = List.of();
    for (int most = MOST_ROWS - 1; most >= LEAST_ROWS; most--) {
      List<Integer> cuts = cuts(rowOf, most);
      List<Sheet> tried = new ArrayList<>();
      for (int part = 0; part < cuts.size(); part++) {
        tried.add(sheet(cuts, rowOf, part));
      }
      sheets = tried;
      if (sheets.stream().allMatch(sheet -> height(sheet.flow()) <= MOST_ROWS)) {
        break;
      }
    }
    return sheets;
  }

  private FlowRows rows(LineFlow flow) {
    Map<String, Double> wide = new HashMap<>();
    flow.nodes().forEach(node -> wide.put(node.name(), widths.applyAsDouble(node)));
    return new FlowRows(flow, wide, limit);
  }

  private int height(LineFlow flow) {
    return 1 + rows(flow).rowOf().values().stream().mapToInt(row -> row).max().orElse(0);
  }

  /** The first row of each part: where, after some rows, the fewest pipes are cut. */
  private List<Integer> cuts(Map<String, Integer> rowOf, int most) {
    int rows = 1 + rowOf.values().stream().mapToInt(row -> row).max().orElse(0);
    List<Integer> cuts = new ArrayList<>(List.of(0));
    for (int from = 0; rows - from > most; from = cuts.get(cuts.size() - 1)) {
      int best = from + most;
      for (int cut = best - 1; cut >= from + (most + 1) / 2; cut--) {
        if (crossing(rowOf, cut) < crossing(rowOf, best)) {
          best = cut;
        }
      }
      cuts.add(best);
    }
    return cuts;
  }

  private long crossing(Map<String, Integer> rowOf, int cut) {
    return whole.edges().stream()
        .filter(edge -> (rowOf.get(edge.from()) < cut) != (rowOf.get(edge.to()) < cut))
        .count();
  }

  private static int part(int row, List<Integer> cuts) {
    int part = 0;
    while (part + 1 < cuts.size() && cuts.get(part + 1) <= row) {
      part++;
    }
    return part;
  }

  private Sheet sheet(List<Integer> cuts, Map<String, Integer> rowOf, int part) {
    List<Node> nodes = new ArrayList<>();
    List<Edge> drawn = new ArrayList<>();
    List<Edge> own = new ArrayList<>();
    Map<String, String> joints = new LinkedHashMap<>();
    int letter = 0;
    whole.nodes().stream()
        .filter(node -> part(rowOf.get(node.name()), cuts) == part)
        .forEach(nodes::add);
    for (Edge edge : whole.edges()) {
      int from = part(rowOf.get(edge.from()), cuts);
      int to = part(rowOf.get(edge.to()), cuts);
      String name = from == to ? "" : letter(letter++);
      if (from == part) {
        own.add(new Edge(edge.from(), shown(edge.to()), edge.tPerH()));
        drawn.add(from == to ? edge : new Edge(edge.from(), name, edge.tPerH()));
      } else if (to == part) {
        drawn.add(new Edge(name, edge.to(), edge.tPerH()));
      }
      if (from != to && (from == part || to == part)) {
        nodes.add(from == part ? nodes.size() : 0, new Node(name, Kind.AIR, JOINT, 0));
        joints.put(name, from == part ? "to part " + (to + 1) : "from part " + (from + 1));
      }
    }
    return new Sheet(new LineFlow(whole.line(), nodes, drawn), own, joints);
  }

  /** A to Z, then A1 and so on; with a mark that no name of a plant file can have. */
  private static String letter(int number) {
    return (char) ('A' + number % 26) + (number < 26 ? "" : String.valueOf(number / 26)) + COPY;
  }
}
