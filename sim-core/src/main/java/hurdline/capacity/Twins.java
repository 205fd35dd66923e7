package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.plant.Machine;
import java.util.List;
import java.util.stream.Stream;

/**
 * Machines in parallel that are alike in every figure: kind, stops, rate and load, and none of them
 * behind the other. One of them is never the bottleneck without the others.
 */
public final class Twins {
  private static final double ALIKE = 1e-9;

  private final CompiledLines layout;
  private final int line;
  private final List<Group> alone;
  private final List<LineLoads> loads;

  Twins(CompiledLines layout, int line, List<Group> alone, List<LineLoads> loads) {
    this.layout = layout;
    this.line = line;
    this.alone = alone;
    this.loads = loads;
  }

  /** A machine and its twins, in order of flow. */
  List<String> of(String machine) {
    Group mine = alone.stream().filter(one -> name(one).equals(machine)).findFirst().orElseThrow();
    return alone.stream()
        .filter(one -> one == mine || areTwins(one, mine))
        .map(this::name)
        .toList();
  }

  private String name(Group one) {
    return layout.machine[one.members().get(0).machine()].name();
  }

  private boolean areTwins(Group one, Group other) {
    Group.Member a = one.members().get(0);
    Group.Member b = other.members().get(0);
    return isLoaded(a)
        && areAlike(layout.machine[a.machine()], layout.machine[b.machine()])
        && step(name(one)).equals(step(name(other)))
        && loads.stream().allMatch(choice -> areLoadedAlike(choice, a, b))
        && !leads(a.machine(), b.machine())
        && !leads(b.machine(), a.machine());
  }

  /** What a step says of the machine itself, without where its material goes. */
  private List<Object> step(String machine) {
    return layout.plant.lines().stream()
        .filter(each -> layout.naming.lines.index(each.name()) == line)
        .flatMap(each -> each.steps().stream())
        .filter(step -> step.machine().equals(machine))
        .<Object>flatMap(
            step ->
                Stream.concat(
                    Stream.of(step.rateKgPerS(), step.mix()), step.rateCorrections().stream()))
        .toList();
  }

  private boolean isLoaded(Group.Member member) {
    return loads.stream().anyMatch(choice -> choice.seconds(member.machine(), member.heads()) > 0);
  }

  private static boolean areLoadedAlike(LineLoads choice, Group.Member a, Group.Member b) {
    return near(choice.kg(a.machine(), a.heads()), choice.kg(b.machine(), b.heads()))
        && near(choice.seconds(a.machine(), a.heads()), choice.seconds(b.machine(), b.heads()));
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= ALIKE * Math.max(one, other);
  }

  private static boolean areAlike(Machine one, Machine other) {
    return renamed(one).equals(renamed(other));
  }

  private static Machine renamed(Machine machine) {
    Machine.Common common = machine.common();
    if (machine instanceof Machine.Plain plain) {
      return new Machine.Plain("", plain.kind(), common);
    }
    if (machine instanceof Machine.Cyclone cyclone) {
      return new Machine.Cyclone("", common, cyclone.collects());
    }
    if (machine instanceof Machine.Packer packer) {
      return new Machine.Packer("", common, packer.press(), packer.spouts());
    }
    if (machine instanceof Machine.HammerMill mill) {
      return new Machine.HammerMill(
          "", common, mill.grinding(), mill.screens(), mill.swapS(), mill.swapNeeds());
    }
    return machine;
  }

  /** Whether material of a machine reaches the other, over any bins. */
  private boolean leads(int from, int to) {
    for (int h : layout.headsOf[from]) {
      Stretch stretch = layout.stretch[h];
      if (layout.headLine[h] == line && layout.leadsTo[h][stretch.nodeOf(from)][to]) {
        return true;
      }
    }
    return false;
  }
}
