package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.ScreenPlan;
import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Step;
import hurdline.plant.Yard;
import java.util.List;
import java.util.Optional;

/**
 * Scheduled time that a group of machines takes for each kilogram fed to its line, on average.
 *
 * <p>With the time p that the group runs for a kilogram at the pace of its slowest machine,
 *
 * <pre>
 *   rated     p
 *   expected  (p + Σ stops + Σ package changes + Σ screen changes + lifts) / Π (1 − share of hours down)
 * </pre>
 *
 * <p>Operation-dependent stops and changes stop the whole group and so add up; time-dependent ones
 * of different machines fall as they will, so what is left of the hours is a product. A group of
 * one is a machine alone.
 *
 * @see "J. A. Buzacott, Automatic transfer lines with buffer stocks, Int. J. Production Research 5
 *     (1967): a line without stocks (from memory)"
 */
final class GroupTime {
  private final CapacityPlant plant;
  private final CompiledLines layout;
  private final Line line;
  private final List<LineLoads> loads;

  GroupTime(CapacityPlant plant, Line line, List<LineLoads> loads) {
    this.plant = plant;
    this.line = line;
    this.loads = loads;
    layout = plant.layout;
  }

  /** The group's running time per kg fed. */
  double ratedS(Group group, Freed freed) {
    double sum = 0;
    for (LineLoads choice : loads) {
      sum += choice.share() * paceS(choice, group, freed);
    }
    return sum / group.perLineHour();
  }

  double expectedS(Group group, Freed freed) {
    double sum = ratedS(group, freed) * group.perLineHour();
    double up = 1;
    for (Group.Member member : group.members()) {
      if (!isFreed(member, freed)) {
        sum += addedS(member, group, freed);
        up *= 1 - ofHours(member);
      }
    }
    boolean lifts = group.fed() && !freed.lifts() && !freed.machines().contains(line.feed());
    sum += lifts ? liftsS(group, freed) : 0;
    return up > 0 ? sum / up / group.perLineHour() : Double.POSITIVE_INFINITY;
  }

  private boolean isFreed(Group.Member member, Freed freed) {
    return freed.machines().contains(layout.machine[member.machine()].name());
  }

  private double paceS(LineLoads choice, Group group, Freed freed) {
    double slowestS = 0;
    for (Group.Member member : group.members()) {
      if (!isFreed(member, freed)) {
        slowestS = Math.max(slowestS, choice.seconds(member.machine(), member.heads()));
      }
    }
    return slowestS;
  }

  private double ofHours(Group.Member member) {
    double sum = plant.stops(member.machine(), line).stream().mapToDouble(StopLoad::ofHours).sum();
    return Math.min(1, sum);
  }

  /**
   * All that a member's stops and changes take of the group's time per kg fed.
   *
   * @param allS the group's time per kg fed in its own hours
   */
  double takenS(Group.Member member, Group group, Freed freed, double allS) {
    return addedS(member, group, freed) + ofHours(member) * allS;
  }

  /**
   * What a member adds to the running time: its stops by work, package changes and screen changes.
   */
  private double addedS(Group.Member member, Group group, Freed freed) {
    double runningS = ratedS(group, freed) * group.perLineHour();
    double sum = 0;
    for (StopLoad stop : plant.stops(member.machine(), line)) {
      sum += runningS * stop.perRunningS() + kg(member) * stop.sPerKg();
    }
    return sum
        + changesS(member, group, freed)
        + swapsPerKgFed(member, group, freed) * swapS(member);
  }

  /** A member's inflow per kg fed. */
  double kg(Group.Member member) {
    double sum = 0;
    for (LineLoads choice : loads) {
      sum += choice.share() * choice.kg(member.machine(), member.heads());
    }
    return sum;
  }

  private double changesS(Group.Member member, Group group, Freed freed) {
    if (!(layout.machine[member.machine()] instanceof Machine.Packer packer)) {
      return 0;
    }
    double sum = 0;
    for (LineLoads choice : loads) {
      double paceS = paceS(choice, group, freed);
      double perKgS = paceS / choice.kg(member.machine(), member.heads());
      for (LineLoads.Made made : choice.made()) {
        Packaging packaging = plant.packaging(made);
        if (made.packer() == member.machine() && has(member, made.head()) && packaging != null) {
          double fillS = packaging.massKg() * perKgS;
          double hands = hands(packaging.needs(), freed);
          double cycleS = PackageCycle.meanS(fillS, packaging.changeS(), packer.spouts(), hands);
          sum += choice.share() * made.kg() / packaging.massKg() * (cycleS - fillS);
        }
      }
    }
    return sum;
  }

  /** Of several resources that are needed together, those of which there are fewest. */
  private double hands(List<String> needs, Freed freed) {
    return needs.stream()
        .filter(name -> !freed.resources().contains(name))
        .mapToDouble(plant::count)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static boolean has(Group.Member member, int head) {
    for (int h : member.heads()) {
      if (h == head) {
        return true;
      }
    }
    return false;
  }

  private double swapS(Group.Member member) {
    return layout.machine[member.machine()] instanceof Machine.HammerMill mill
        ? Means.of(mill.swapS())
        : 0;
  }

  /** Changes of a mill's screen per kg fed, at the pace of its group. */
  double swapsPerKgFed(Group.Member member, Group group, Freed freed) {
    int m = member.machine();
    Optional<Step> step =
        line.steps().stream()
            .filter(one -> one.machine().equals(layout.machine[m].name()))
            .findFirst();
    if (step.isEmpty()
        || !(layout.machine[m] instanceof Machine.HammerMill mill)
        || !(step.get().mix() instanceof Step.Shares mix)
        || mix.shares().size() < 2) {
      return 0;
    }
    double[] milledKg = new double[mill.screens().size()];
    double[] runningS = new double[milledKg.length];
    for (LineLoads choice : loads) {
      milledKg[choice.screen()[m]] += choice.share() * choice.kg(m, member.heads());
      runningS[choice.screen()[m]] += choice.share() * paceS(choice, group, freed);
    }
    double[] kgPerS = new double[milledKg.length];
    for (int s = 0; s < kgPerS.length; s++) {
      kgPerS[s] = runningS[s] > 0 ? milledKg[s] / runningS[s] : Double.POSITIVE_INFINITY;
    }
    return kg(member) * ScreenTurns.perKg(ScreenPlan.of(layout.plant, mill, step.get()), kgPerS);
  }

  private double liftsS(Group group, Freed freed) {
    return layout.plant.forms(line.crop()).stream()
        .mapToDouble(form -> CropSupply.share(plant, form) * liftsS(form, group, freed))
        .sum();
  }

  private double liftsS(Crop form, Group group, Freed freed) {
    Yard.Lift lift = layout.plant.yard().lifts().get(form.name());
    if (lift == null) {
      return 0;
    }
    double baleKg = Means.of(form.bale().massKg());
    int places = tablePlaces();
    int bales = balesAtOnce(lift);
    double liftS = Means.of(lift.job().lastsS());
    double carriers = hands(lift.job().needs(), freed);
    double sum = 0;
    for (LineLoads choice : loads) {
      double feedS = paceS(choice, group, freed) * baleKg;
      double cycleS = LiftCycle.meanS(feedS, liftS, bales, places, carriers);
      sum += choice.share() * (cycleS / bales - feedS) / baleKg;
    }
    return sum;
  }

  int balesAtOnce(Yard.Lift lift) {
    return Math.min(lift.bales(), tablePlaces());
  }

  /** What of a product is fit to fill orders, at its moisture basis, per kg fed. */
  double fitKg(int product) {
    return loads.stream().mapToDouble(choice -> choice.share() * choice.fitKg(product)).sum();
  }

  private int tablePlaces() {
    return line.steps().stream()
        .filter(step -> step.machine().equals(line.feed()) && step.table().isPresent())
        .mapToInt(step -> step.table().getAsInt())
        .findFirst()
        .orElseGet(
            () ->
                ((Machine.BaleFeeder) layout.machine[layout.naming.machines.index(line.feed())])
                    .table());
  }
}
