package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.compiled.TimeWindows;
import hurdline.plant.Line;
import hurdline.plant.Resource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Rated and expected capacity of one line, its crop at the mean.
 *
 * <p>Rated is what the machines can do when nothing stops: the least of them is the line's.
 * Expected takes each machine with its mean stops, package changes, screen changes and lifts; the
 * line's is the least of its stretches, whose machines stop together as no bin lies between them,
 * of machines that serve several stretches, and of the resources that all of them share. What is
 * left out only takes away: bins that run full or empty, and waits for a resource that is busy
 * elsewhere.
 */
public final class LineCapacity {
  /**
   * A machine whose stops and changes take less of a group's time than this is not named with it.
   */
  private static final double WORTH_NAMING = 0.05;

  private final CapacityPlant plant;
  private final CompiledLines layout;
  private final Line line;
  private final int number;
  private final List<LineLoads> loads;
  private final GroupTime times;
  private final ResourceTime resources;
  private final Twins twins;
  private final List<Group> stretches = new ArrayList<>();
  private final List<Group> alone = new ArrayList<>();
  private final double lineHoursS;

  LineCapacity(CapacityPlant plant, Line line, List<LineLoads> loads) {
    this.plant = plant;
    this.line = line;
    layout = plant.layout;
    number = layout.naming.lines.index(line.name());
    this.loads = loads;
    times = new GroupTime(plant, line, loads);
    lineHoursS = plant.lineHours(number).lengthS();
    Set<Integer> machines = new LinkedHashSet<>();
    for (int h : layout.headOrder) {
      if (layout.headLine[h] == number) {
        stretches.add(stretch(h));
        stretches
            .get(stretches.size() - 1)
            .members()
            .forEach(member -> machines.add(member.machine()));
      }
    }
    machines.forEach(m -> alone.add(alone(m)));
    resources = new ResourceTime(plant, line, loads, times, alone);
    twins = new Twins(layout, number, alone, loads);
  }

  private Group stretch(int head) {
    List<Group.Member> members = new ArrayList<>();
    Stretch stretch = layout.stretch[head];
    IntStream.of(stretch.nearest)
        .map(node -> stretch.machine[node])
        .filter(m -> m >= 0)
        .forEach(m -> members.add(new Group.Member(m, new int[] {head})));
    boolean fed = layout.headBin[head] < 0;
    if (fed) {
      IntStream.of(layout.alongside[number])
          .forEach(m -> members.add(new Group.Member(m, new int[] {head})));
    }
    return new Group(members, fed, perLineHour(plant.headHours(head)));
  }

  private Group alone(int machine) {
    int[] heads =
        IntStream.of(layout.headsOf[machine]).filter(h -> layout.headLine[h] == number).toArray();
    TimeWindows hours = heads.length == 0 ? plant.lineHours(number) : TimeWindows.NONE;
    for (int h : heads) {
      hours = hours.union(plant.headHours(h));
    }
    boolean fed = layout.machine[machine].name().equals(line.feed());
    return new Group(List.of(new Group.Member(machine, heads)), fed, perLineHour(hours));
  }

  private double perLineHour(TimeWindows hours) {
    return lineHoursS > 0 ? hours.lengthS() / lineHoursS : 1;
  }

  /** Names of the machines, in order of flow, those alongside after the feed's stretch. */
  public List<String> machines() {
    return alone.stream().map(this::name).toList();
  }

  private String name(Group one) {
    return layout.machine[one.members().get(0).machine()].name();
  }

  private Group alone(String machine) {
    return alone.stream().filter(one -> name(one).equals(machine)).findFirst().orElseThrow();
  }

  /** As-is inflow of a machine per kg fed. */
  public double load(String machine) {
    return times.kg(alone(machine).members().get(0));
  }

  /** What a machine can take in at its own limit; infinite without one. */
  public double limitKgPerS(String machine) {
    Group one = alone(machine);
    return load(machine) / (times.ratedS(one, Freed.nothing()) * one.perLineHour());
  }

  /**
   * What the line can be fed until a machine alone is full, nothing stopping; infinite without a
   * limit.
   */
  public double ratedKgPerS(String machine) {
    return 1 / times.ratedS(alone(machine), Freed.nothing());
  }

  /** The same with the machine's mean stops, changes and lifts. */
  public double expectedKgPerS(String machine) {
    return 1 / times.expectedS(alone(machine), Freed.nothing());
  }

  /** Names of the resources that machines of the line wait for, in the file's order. */
  public List<String> resources() {
    return layout.plant.resources().stream()
        .map(Resource::name)
        .filter(name -> resources.secondsPerKgFed(name, Freed.nothing()) > 0)
        .toList();
  }

  /** What the line can be fed until a resource is busy all the time, serving its machines alone. */
  public double resourceKgPerS(String resource) {
    return 1 / resources.secondsPerKgFed(resource, Freed.nothing());
  }

  /** The least of the machines, nothing stopping. */
  public Limit rated(Freed freed) {
    double mostS = 0;
    String slowest = "";
    for (Group one : alone) {
      double seconds = times.ratedS(one, freed);
      if (seconds > mostS) {
        mostS = seconds;
        slowest = name(one);
      }
    }
    return new Limit(1 / mostS, slowest.isEmpty() ? List.of() : twins.of(slowest), "");
  }

  /** The least of stretches, of machines in several of them, and of resources. */
  public Limit expected(Freed freed) {
    double mostS = 0;
    Group slowest = null;
    for (List<Group> groups : List.of(stretches, alone)) {
      for (Group one : groups) {
        double seconds = times.expectedS(one, freed);
        if (seconds > mostS * (1 + 1e-12)) {
          mostS = seconds;
          slowest = one;
        }
      }
    }
    String scarce = "";
    for (String resource : resources()) {
      double seconds = resources.secondsPerKgFed(resource, freed);
      if (seconds > mostS * (1 + 1e-12)) {
        mostS = seconds;
        scarce = resource;
      }
    }
    boolean named = scarce.isEmpty() && slowest != null;
    return new Limit(1 / mostS, named ? limiting(slowest, freed) : List.of(), scarce);
  }

  /**
   * The machine that sets the pace with its twins, then those that take much of the time by stops
   * and changes.
   */
  private List<String> limiting(Group group, Freed freed) {
    Set<String> names = new LinkedHashSet<>();
    double mostS = 0;
    for (Group.Member member : group.members()) {
      String name = layout.machine[member.machine()].name();
      double ownS =
          times.ratedS(new Group(List.of(member), group.fed(), group.perLineHour()), freed);
      if (ownS > mostS) {
        mostS = ownS;
        names.clear();
        names.addAll(twins.of(name));
      }
    }
    double allS = times.expectedS(group, freed) * group.perLineHour();
    for (Group.Member member : group.members()) {
      String name = layout.machine[member.machine()].name();
      if (!freed.machines().contains(name)
          && times.takenS(member, group, freed, allS) > WORTH_NAMING * allS) {
        names.add(name);
      }
    }
    return List.copyOf(names);
  }

  /** A machine and those in parallel to it that are alike in every figure. */
  public List<String> twins(String machine) {
    return twins.of(machine);
  }

  /** Whether a machine of this name is one of the line's. */
  public boolean has(String machine) {
    return alone.stream().anyMatch(one -> name(one).equals(machine));
  }

  /** Scheduled hours of the line, s. */
  public double scheduledS() {
    return lineHoursS;
  }

  /** As-is mass that takes an outlet of a node of one of the line's heads, per kg fed. */
  public double wayKgPerKgFed(int head, int node, int outlet) {
    double kg = 0;
    for (LineLoads choice : loads) {
      kg += choice.share() * choice.ways()[head][node][outlet];
    }
    return kg;
  }

  /** What is made of a product, as it is, per kg fed. */
  public double madeKgPerKgFed(String product) {
    int of = layout.naming.products.index(product);
    double kg = 0;
    for (LineLoads choice : loads) {
      for (LineLoads.Made made : choice.made()) {
        kg += made.product() == of ? choice.share() * made.kg() : 0;
      }
    }
    return kg;
  }

  /** What of a product is fit to fill orders, at its moisture basis, per kg fed. */
  public double fitKgPerKgFed(String product) {
    return times.fitKg(layout.naming.products.index(product));
  }
}
