package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Says in which row each node of a line stands: below all that feed it, and no row wider than the
 * drawing may be. Of what could stand in a row those go first that end a stream, then those that
 * pass it on, last those that part it, so that few pipes run side by side.
 *
 * @see "list scheduling with a bound, as in Coffman and Graham (1972); from memory"
 */
final class FlowRows {
  /** A pipe that passes a row, with room for its figure. */
  private static final double PASSING = 48;

  private final LineFlow flow;
  private final Map<String, Double> widths;
  private final double limit;
  private final Set<LineFlow.Edge> returning = new HashSet<>();
  private final Map<String, Integer> rowOf = new HashMap<>();

  FlowRows(LineFlow flow, Map<String, Double> widths, double limit) {
    this.flow = flow;
    this.widths = widths;
    this.limit = limit;
    Set<String> done = new HashSet<>();
    flow.nodes().forEach(node -> walk(node.name(), new HashSet<>(), done));
    fill();
  }

  /** By node; rows count from 0. */
  Map<String, Integer> rowOf() {
    return rowOf;
  }

  /** Edges that lead back to a node on the way to them. */
  Set<LineFlow.Edge> returning() {
    return returning;
  }

  static long returns(LineFlow flow) {
    Map<String, Double> wide = new HashMap<>();
    flow.nodes().forEach(node -> wide.put(node.name(), 0.0));
    return new FlowRows(flow, wide, 0).returning.size();
  }

  private void walk(String node, Set<String> above, Set<String> done) {
    if (!done.add(node)) {
      return;
    }
    above.add(node);
    for (LineFlow.Edge edge : flow.edges()) {
      if (edge.from().equals(node)) {
        if (above.contains(edge.to())) {
          returning.add(edge);
        } else {
          walk(edge.to(), above, done);
        }
      }
    }
    above.remove(node);
  }

  private void fill() {
    Set<String> waiting = new LinkedHashSet<>();
    flow.nodes().forEach(node -> waiting.add(node.name()));
    for (int row = 0; !waiting.isEmpty(); row++) {
      List<String> chosen = choose(waiting);
      waiting.removeAll(chosen);
      for (String node : chosen) {
        rowOf.put(node, row);
      }
    }
  }

  /** Never nothing: what is ready is not empty, since returns are left out. */
  private List<String> choose(Set<String> waiting) {
    double used = flow.edges().stream().filter(edge -> isOpen(edge, waiting)).count() * PASSING;
    double next = used;
    List<String> ready = new ArrayList<>(waiting.stream().filter(this::isReady).toList());
    ready.sort(Comparator.comparingLong(node -> out(node) - in(node)));
    List<String> chosen = new ArrayList<>();
    for (String node : ready) {
      double wide = widths.get(node) + FlowLayout.GAP - in(node) * PASSING;
      double more = (out(node) - in(node)) * PASSING;
      boolean fits = used + wide <= limit && next + Math.max(0, more) <= limit;
      if (chosen.isEmpty() || fits) {
        chosen.add(node);
        used += wide;
        next += more;
      }
    }
    return chosen;
  }

  private boolean leadsDown(LineFlow.Edge edge) {
    return widths.containsKey(edge.from())
        && widths.containsKey(edge.to())
        && !returning.contains(edge);
  }

  private boolean isOpen(LineFlow.Edge edge, Set<String> waiting) {
    return leadsDown(edge) && !waiting.contains(edge.from()) && waiting.contains(edge.to());
  }

  private boolean isReady(String node) {
    return flow.edges().stream()
        .filter(this::leadsDown)
        .filter(edge -> edge.to().equals(node))
        .allMatch(edge -> rowOf.containsKey(edge.from()));
  }

  private long in(String node) {
    return flow.edges().stream().filter(e -> leadsDown(e) && e.to().equals(node)).count();
  }

  private long out(String node) {
    return flow.edges().stream().filter(e -> leadsDown(e) && e.from().equals(node)).count();
  }
}
