package hurdline.study;

import hurdline.capacity.Freed;
import hurdline.capacity.LineCapacity;
import hurdline.compiled.CompiledLines;
import java.util.Map;

/** Flows of lines that are fed what their expected capacity is, per kilogram fed. */
final class ExpectedFlows implements FlowFigures {
  private static final double HOUR_S = 3600;

  private final CompiledLines layout;
  private final Map<String, LineCapacity> lines;

  ExpectedFlows(CompiledLines layout, Map<String, LineCapacity> lines) {
    this.layout = layout;
    this.lines = lines;
  }

  @Override
  public double wayKg(int head, int node, int outlet) {
    String line = layout.naming.lines.name(layout.headLine[head]);
    return lines.get(line).wayKgPerKgFed(head, node, outlet);
  }

  @Override
  public double fedKg(String line) {
    return 1;
  }

  @Override
  public double made(String line, String product) {
    return lines.get(line).madeKgPerKgFed(product);
  }

  /** What a kilogram takes; 0 where nothing limits the line. */
  @Override
  public double hours(String line) {
    return 1 / (HOUR_S * lines.get(line).expected(Freed.nothing()).kgPerS());
  }

  @Override
  public double limitsShare(String line, String node) {
    return lines.get(line).expected(Freed.nothing()).machines().contains(node) ? 1 : 0;
  }
}
