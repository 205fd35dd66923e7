package hurdline.answer;

import java.util.List;

/**
 * A line drawn as nodes and mean flows.
 *
 * @param nodes machines, bins and ends in order of flow, the feed first
 * @param edges what goes from node to node, in the file's order of outlets
 */
public record LineFlow(String line, List<Node> nodes, List<Edge> edges) {
  public LineFlow {
    nodes = List.copyOf(nodes);
    edges = List.copyOf(edges);
  }

  /** What a node is. */
  public enum Kind {
    MACHINE,
    BIN,
    PRODUCT,
    WASTE,
    AIR
  }

  /**
   * A node.
   *
   * @param name its name in the plant file; {@code waste} and {@code air} for those two
   * @param what the machine's kind as the plant file spells it ({@code hammer-mill}), else empty
   * @param heldShare share of the line's scheduled hours in which this node, one of its stops,
   *     swaps or changes was what held the line; 0 to 1
   */
  public record Node(String name, Kind kind, String what, double heldShare) {}

  /** A mean flow, tonnes as-is per scheduled hour of the line. */
  public record Edge(String from, String to, double tPerH) {}
}
