package hurdline.text;

import hurdline.answer.LineFlow;
import hurdline.answer.LineFlow.Kind;
import hurdline.answer.MachineTime;
import hurdline.answer.RunAnswer;
import hurdline.measure.Measure;
import hurdline.measure.State;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether the machine that limits a line longest decides what the line makes, where a bin lies
 * behind it.
 *
 * <p>Such a machine limits the line all the while that the bin fills, although a faster one would
 * only fill it sooner. If a full bin holds it for longer than what draws from the bin waits for it,
 * the narrower place is behind the bin.
 *
 * @see "Kuo, Lim and Meerkov (1996), bottlenecks in serial production lines, by blocked and starved
 *     times; from memory"
 */
final class BinBehind {
  /** Of the hours in which the machine runs: a bin that holds it for less hardly fills. */
  private static final double LEAST = 0.02;

  private final RunAnswer answer;
  private final SpokenNames names;

  BinBehind(RunAnswer answer) {
    this.answer = answer;
    this.names = new SpokenNames(answer.outline().titles());
  }

  /**
   * One sentence without its stop; empty where the machine itself decides, or no bin lies behind
   * it.
   */
  Optional<String> sentence(String line, String machine) {
    return answer.flows().stream()
        .filter(flow -> flow.line().equals(line))
        .flatMap(flow -> bins(flow, machine).stream().map(bin -> sentence(flow, machine, bin)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<String> sentence(LineFlow flow, String machine, String bin) {
    List<String> drawing =
        flow.edges().stream()
            .filter(edge -> edge.from().equals(bin) && is(flow, edge.to(), Kind.MACHINE))
            .map(LineFlow.Edge::to)
            .toList();
    double heldH =
        Math.min(
            hours(machine, State.BLOCKED) + hours(machine, State.SLOWED),
            answer.mean(Measure.BIN_HOURS_FULL.of(bin))); // which counts nights too
    double waitsH =
        drawing.stream()
            .mapToDouble(name -> hours(name, State.STARVED) + hours(name, State.SLOWED))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    if (!(heldH > waitsH && heldH > LEAST * hours(machine, State.FULL_RATE))) {
      return Optional.empty();
    }
    return Optional.of(
        "But "
            + names.machines(List.of(bin))
            + " behind it fills up: over the season "
            + names.machines(drawing)
            + " and what follows decide what the line makes, and a faster "
            + names.machines(List.of(machine)).replaceFirst("^the ", "")
            + " may bring little; compare --gain simulates 10 % more of each");
  }

  /** Those that fill from a machine without another bin in between, in order of flow. */
  private static Set<String> bins(LineFlow flow, String machine) {
    Set<String> seen = new LinkedHashSet<>(Set.of(machine));
    Set<String> bins = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      String from = open.removeFirst();
      for (LineFlow.Edge edge : flow.edges()) {
        if (edge.from().equals(from) && seen.add(edge.to())) {
          if (is(flow, edge.to(), Kind.BIN)) {
            bins.add(edge.to());
          } else {
            open.add(edge.to());
          }
        }
      }
    }
    return bins;
  }

  private static boolean is(LineFlow flow, String name, Kind kind) {
    return flow.nodes().stream().anyMatch(node -> node.name().equals(name) && node.kind() == kind);
  }

  private double hours(String machine, State state) {
    return answer.machines().stream()
        .filter(time -> time.machine().equals(machine))
        .mapToDouble((MachineTime time) -> time.hours(state))
        .sum();
  }
}
