package hurdline.plant;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The ways of material through one line: which component may go from which machine to where. */
final class MaterialPaths {
  /** A component at a machine or bin, before the machine has done anything to it. */
  record At(String machine, String component) {}

  private final Map<String, Step> steps = new HashMap<>();
  private final Names names;
  private final boolean corrected;

  /**
   * @param corrected whether shares are taken as large as their corrections may make them
   */
  MaterialPaths(Line line, Names names, boolean corrected) {
    line.steps().forEach(step -> steps.putIfAbsent(step.machine(), step));
    this.names = names;
    this.corrected = corrected;
  }

  /** Where the component may be next; a name that is no machine is a way out. */
  List<At> next(At at) {
    Step step = steps.get(at.machine());
    if (step == null || step.packs().isPresent()) {
      return List.of(new At("", at.component()));
    }
    List<At> next = new ArrayList<>();
    if (names.machines.get(at.machine()) instanceof Machine.Cyclone cyclone
        && cyclone.collects() < 1) {
      next.add(new At("", at.component()));
    }
    for (String component : broken(step, at.component())) {
      outlets(step, component).forEach(to -> next.add(new At(to, component)));
    }
    return next;
  }

  private Set<String> broken(Step step, String component) {
    Set<String> made = new LinkedHashSet<>();
    double kept = 1;
    for (Step.Break breaks : step.breaks()) {
      if (breaks.component().equals(component) && breaks.share() > 0) {
        made.add(breaks.into());
        kept -= breaks.share();
      }
    }
    if (component.equals("hurd") && ComponentPresence.finesOf(step, names)) {
      made.add("fines");
    }
    if (kept > 0) {
      made.add(component);
    }
    return made;
  }

  /** Where outlets send some of the component. */
  List<String> outlets(Step step, String component) {
    List<String> to = new ArrayList<>();
    double left = 1;
    for (Step.Outlet outlet : step.outlets()) {
      double share = share(outlet, component);
      if (share > 0 && left > 0) {
        to.add(outlet.to());
      }
      left -= share;
    }
    if (left > 1e-9) {
      step.outlets().stream().filter(o -> o.takes().isEmpty()).forEach(o -> to.add(o.to()));
    }
    return to;
  }

  private double share(Step.Outlet outlet, String component) {
    double share = outlet.takes().orElse(Map.of()).getOrDefault(component, 0.0);
    if (!corrected) {
      return share;
    }
    for (Map<String, Curve> curves : outlet.corrections()) {
      share *= most(curves, component);
    }
    return share;
  }

  private static double most(Map<String, Curve> curves, String component) {
    Curve curve = curves.getOrDefault(component, Curve.NONE);
    return curve.points().stream().mapToDouble(Curve.Point::factor).max().orElse(1);
  }

  /** Machines and bins that material from here reaches before it comes to rest, itself left out. */
  Set<String> stretch(Step head) {
    Set<String> reached = new LinkedHashSet<>();
    Deque<Step> open = new ArrayDeque<>(List.of(head));
    while (!open.isEmpty()) {
      for (Step.Outlet outlet : open.pop().outlets()) {
        if (names.machines.containsKey(outlet.to())
            && reached.add(outlet.to())
            && !names.isBin(outlet.to())
            && steps.containsKey(outlet.to())) {
          open.push(steps.get(outlet.to()));
        }
      }
    }
    return reached;
  }

  /** All that these reach, themselves included, where bins hand on what they get. */
  Set<At> reachable(List<At> from) {
    Set<At> seen = new HashSet<>(from);
    Deque<At> open = new ArrayDeque<>(from);
    while (!open.isEmpty()) {
      for (At next : next(open.pop())) {
        if (seen.add(next)) {
          open.push(next);
        }
      }
    }
    return seen;
  }

  /** Components that go round and round in some of these machines, with those machines. */
  Map<String, Set<String>> trapped(List<String> machines, Set<String> components) {
    Map<String, Set<String>> trapped = new LinkedHashMap<>();
    List<String> circling = circling(machines);
    List<At> all = new ArrayList<>();
    circling.forEach(
        machine -> components.forEach(component -> all.add(new At(machine, component))));
    Set<At> leaving = leaving(all);
    for (String machine : circling) {
      for (String component : components) {
        At at = new At(machine, component);
        if (!leaving.contains(at) && reachable(next(at)).contains(at)) {
          trapped.computeIfAbsent(component, key -> new LinkedHashSet<>()).add(machine);
        }
      }
    }
    return trapped;
  }

  /**
   * Those of the machines from which one may come to go round and round among them, whatever the
   * shares: those that lead only to what is taken away are taken away, again and again.
   */
  private List<String> circling(List<String> machines) {
    Set<String> left = new HashSet<>(machines);
    boolean fewer = true;
    while (fewer) {
      fewer = false;
      for (int i = machines.size() - 1; i >= 0; i--) {
        String machine = machines.get(i);
        if (left.contains(machine) && !leadsInto(machine, left)) {
          left.remove(machine);
          fewer = true;
        }
      }
    }
    return machines.stream().filter(left::contains).toList();
  }

  private boolean leadsInto(String machine, Set<String> others) {
    for (Step.Outlet outlet : steps.get(machine).outlets()) {
      if (others.contains(outlet.to())) {
        return true;
      }
    }
    return false;
  }

  /** From where material gets out, found backwards from where it is out. */
  private Set<At> leaving(List<At> from) {
    Map<At, List<At>> before = new HashMap<>();
    Set<At> leaving = new HashSet<>();
    Deque<At> open = new ArrayDeque<>();
    for (At at : reachable(from)) {
      for (At next : next(at)) {
        before.computeIfAbsent(next, key -> new ArrayList<>()).add(at);
        if (isOut(next) && leaving.add(next)) {
          open.push(next);
        }
      }
    }
    while (!open.isEmpty()) {
      for (At at : before.getOrDefault(open.pop(), List.of())) {
        if (leaving.add(at)) {
          open.push(at);
        }
      }
    }
    return leaving;
  }

  /** Out of the stretch: at rest in a bin, a product, a package or the air. */
  private boolean isOut(At at) {
    return !names.machines.containsKey(at.machine()) || names.isBin(at.machine());
  }
}
