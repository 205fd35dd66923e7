package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Yard;
import java.util.List;

/**
 * Time that the machines of a line take of a resource for each kilogram fed: package and screen
 * changes, repairs and lifts, each machine at its own pace. Jobs at trucks and scale are left out.
 *
 * <p>With b seconds of work per kg, a share d of the hours for stops that come by the hour, and n
 * of the resource, it keeps up with one kilogram in b/(n − d) seconds.
 */
final class ResourceTime {
  private final CapacityPlant plant;
  private final CompiledLines layout;
  private final Line line;
  private final List<LineLoads> loads;
  private final GroupTime times;
  private final List<Group> machines;

  ResourceTime(
      CapacityPlant plant,
      Line line,
      List<LineLoads> loads,
      GroupTime times,
      List<Group> machines) {
    this.plant = plant;
    this.line = line;
    this.loads = loads;
    this.times = times;
    this.machines = machines;
    layout = plant.layout;
  }

  /** 0 where nothing of this line needs it, infinite where it can never keep up. */
  double secondsPerKgFed(String resource, Freed freed) {
    if (freed.resources().contains(resource)) {
      return 0;
    }
    double workS = freed.lifts() ? 0 : liftsS(resource);
    double ofHours = 0;
    for (Group one : machines) {
      Group.Member member = one.members().get(0);
      if (!freed.machines().contains(layout.machine[member.machine()].name())) {
        workS +=
            changesS(member, resource)
                + swapsS(one, resource, freed)
                + repairsS(one, resource, freed);
        ofHours += ofHours(member, resource);
      }
    }
    double left = plant.count(resource) - ofHours;
    if (!(workS > 0)) {
      return 0;
    }
    return left > 0 ? workS / left : Double.POSITIVE_INFINITY;
  }

  private double changesS(Group.Member member, String resource) {
    double sum = 0;
    for (LineLoads choice : loads) {
      for (LineLoads.Made made : choice.made()) {
        Packaging packaging = plant.packaging(made);
        if (made.packer() == member.machine()
            && packaging != null
            && needs(packaging.needs(), resource)) {
          sum += choice.share() * made.kg() / packaging.massKg() * Means.of(packaging.changeS());
        }
      }
    }
    return sum;
  }

  private double swapsS(Group one, String resource, Freed freed) {
    Group.Member member = one.members().get(0);
    return layout.machine[member.machine()] instanceof Machine.HammerMill mill
            && needs(mill.swapNeeds(), resource)
        ? times.swapsPerKgFed(member, one, freed) * Means.of(mill.swapS())
        : 0;
  }

  private double repairsS(Group one, String resource, Freed freed) {
    double runningS = times.ratedS(one, freed) * one.perLineHour();
    double kg = times.kg(one.members().get(0));
    return plant.stops(one.members().get(0).machine(), line).stream()
        .filter(stop -> needs(stop.stop().needs(), resource))
        .mapToDouble(stop -> runningS * stop.perRunningS() + kg * stop.sPerKg())
        .sum();
  }

  private double ofHours(Group.Member member, String resource) {
    return plant.stops(member.machine(), line).stream()
        .filter(stop -> needs(stop.stop().needs(), resource))
        .mapToDouble(StopLoad::ofHours)
        .sum();
  }

  private double liftsS(String resource) {
    return layout.plant.forms(line.crop()).stream()
        .mapToDouble(form -> CropSupply.share(plant, form) * liftsS(form, resource))
        .sum();
  }

  private double liftsS(Crop form, String resource) {
    Yard.Lift lift = layout.plant.yard().lifts().get(form.name());
    return lift != null && needs(lift.job().needs(), resource)
        ? Means.of(lift.job().lastsS()) / (times.balesAtOnce(lift) * Means.of(form.bale().massKg()))
        : 0;
  }

  private static boolean needs(List<String> needs, String resource) {
    return needs.contains(resource);
  }
}
