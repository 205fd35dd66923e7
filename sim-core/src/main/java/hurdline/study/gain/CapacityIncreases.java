package hurdline.study.gain;

import hurdline.answer.FollowUpFact.NotIncreased;
import hurdline.answer.FollowUpFact.NotIncreased.Why;
import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.plant.Calendar.Shift;
import hurdline.plant.Change;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Resource;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Step;
import hurdline.plant.UnusedNames;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A tenth more of everything that may hold a line: the rate of a machine or the power of a mill,
 * the room of a bin, the length of a shift. Of people and trucks there is no tenth; of a resource
 * there is one more, or a tenth where that is more than one, and the words say so.
 */
public final class CapacityIncreases {
  private static final String TENTH_MORE = "x1.1";
  private static final int DAY_MIN = 24 * 60;

  private final PlantOrigin source;
  private final PlantChanges base;
  private final CompiledPlant stage;
  private final List<CapacityIncrease> all = new ArrayList<>();
  private final List<NotIncreased> left = new ArrayList<>();

  public CapacityIncreases(PlantOrigin source, PlantChanges base, CompiledPlant stage) {
    this.source = source;
    this.base = base;
    this.stage = stage;
    PlantOutline outlines = new PlantOutline(stage);
    Set<String> used = usedMachines(outlines.lines());
    for (Machine machine : stage.plant().machines()) {
      if (used.contains(machine.name())) {
        machine(machine, outlines.lines());
      }
    }
    for (Resource resource : stage.plant().resources()) {
      if (!UnusedNames.isUnused(stage.plant(), "resources." + resource.name())) {
        all.add(resource(resource));
      }
    }
    Set<String> worked = workedShifts();
    stage.plant().calendar().shifts().stream()
        .filter(shift -> worked.contains(shift.name()))
        .forEach(this::shift);
  }

  /** In the plant file's order: machines and bins, resources, shifts. */
  public List<CapacityIncrease> all() {
    return all;
  }

  /** What there cannot be more of. */
  public List<NotIncreased> left() {
    return left;
  }

  private static Set<String> usedMachines(List<Line> lines) {
    return lines.stream()
        .flatMap(line -> line.steps().stream())
        .map(Step::machine)
        .collect(Collectors.toSet());
  }

  private Set<String> workedShifts() {
    return stage.plant().season().stream()
        .filter(SeasonEntry.Campaign.class::isInstance)
        .flatMap(entry -> ((SeasonEntry.Campaign) entry).shifts().stream())
        .collect(Collectors.toSet());
  }

  private void machine(Machine machine, List<Line> lines) {
    String path = "machines." + machine.name();
    if (machine instanceof Machine.Bin) {
      all.add(
          CapacityIncrease.of(machine.name(), Increase.tenth(Kind.ROOM), tenth(path + ".holds")));
      return;
    }
    List<Change> rates = rates(machine.name(), lines);
    if (machine instanceof Machine.HammerMill) {
      List<Change> changes = new ArrayList<>(List.of(tenth(path + ".power")));
      changes.addAll(rates);
      all.add(new CapacityIncrease(machine.name(), Increase.tenth(Kind.POWER), changes));
    } else if (rates.isEmpty()) {
      left.add(new NotIncreased(Why.MACHINE_WITHOUT_RATE, machine.name()));
    } else {
      all.add(new CapacityIncrease(machine.name(), Increase.tenth(Kind.RATE), rates));
    }
  }

  private static List<Change> rates(String machine, List<Line> lines) {
    return lines.stream()
        .filter(
            line ->
                line.steps().stream()
                    .anyMatch(s -> s.machine().equals(machine) && s.rateKgPerS().isPresent()))
        .map(line -> tenth("lines." + line.name() + ".steps." + machine + ".rate"))
        .toList();
  }

  private static Change tenth(String path) {
    return new Change.Value(path, TENTH_MORE);
  }

  private static CapacityIncrease resource(Resource resource) {
    int more = Math.max(1, (int) Math.round(resource.count() / 10.0));
    String path = "resources." + resource.name() + ".count";
    return CapacityIncrease.of(
        "resource." + resource.name(),
        new Increase(Kind.COUNT, more, resource.count()),
        new Change.Value(path, Integer.toString(resource.count() + more)));
  }

  /** A tenth at its end, or where another shift is in the way before its beginning. */
  private void shift(Shift shift) {
    int more = Math.max(1, Math.round(shift.lengthS() / 600f));
    String path = "calendar.shifts." + shift.name();
    Optional<CapacityIncrease> possible =
        Stream.of(
                longer(shift, Kind.LONGER_TO, more, path + ".to", shift.toS() / 60 + more),
                longer(shift, Kind.LONGER_FROM, more, path + ".from", shift.fromS() / 60 - more))
            .filter(longer -> longer.isPossible(source, base))
            .findFirst();
    possible.ifPresentOrElse(
        all::add, () -> left.add(new NotIncreased(Why.SHIFT_WITHOUT_ROOM, shift.name())));
  }

  private static CapacityIncrease longer(
      Shift shift, Kind kind, int moreMin, String path, int minute) {
    int ofDay = Math.floorMod(minute, DAY_MIN);
    String clock = String.format(Locale.ROOT, "%02d:%02d", ofDay / 60, ofDay % 60);
    return CapacityIncrease.of(
        "shift." + shift.name(),
        new Increase(kind, 60 * moreMin, 60 * ofDay),
        new Change.Value(path, '"' + clock + '"'));
  }
}
