package hurdline.plant;

import java.util.List;
import java.util.OptionalDouble;

/** What a machine or bin must be to work at all. */
final class MachineRules {
  private static final List<String> MILLED = List.of("hurd", "fines");

  private MachineRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Machine machine : plant.machines()) {
      String path = "machines." + machine.name();
      if (machine instanceof Machine.Bin bin) {
        levels(bin, path, found);
        volume(bin, path, plant, found);
      } else if (machine instanceof Machine.HammerMill mill) {
        screens(mill, path, names, found);
        grinds(mill, path, found);
      }
      if (machine.common().drawsWithFlow()) {
        limited(machine, path, plant, found);
      }
      StopRules.check(machine, path, plant, names, found);
    }
  }

  private static void levels(Machine.Bin bin, String path, Problems found) {
    if (bin.startAt() > bin.holds()) {
      found.add(
          path + ".start_at",
          "\"start_at\" is above what the bin holds, so its draw would never start",
          "a level up to \"holds\"");
    }
    if (bin.startAt() > 0 && !(bin.stopAt() < bin.startAt())) {
      found.add(
          path + ".stop_at",
          "\"stop_at\" is not below \"start_at\"",
          "0 or more, and below \"start_at\"");
    }
  }

  private static void volume(Machine.Bin bin, String path, Plant plant, Problems found) {
    List<String> without =
        plant.components().stream()
            .filter(c -> c.looseKgPerM3().equals(OptionalDouble.empty()))
            .map(Component::name)
            .toList();
    if (bin.byVolume() && !without.isEmpty()) {
      found.add(
          path + ".holds",
          "the bin holds a volume, but there is no bulk density of " + String.join(", ", without),
          "components as a map with a density each, such as \""
              + without.get(0)
              + ": {bulk_density: 110 kg/m3}\", or a mass here");
    }
  }

  private static void screens(Machine.HammerMill mill, String path, Names names, Problems found) {
    for (Machine.Screen screen : mill.screens()) {
      for (String component : MILLED) {
        if (screen.fines() > 0 && !names.components.containsKey(component)) {
          found.add(
              path + ".screens." + screen.name() + ".fines",
              "a screen makes hurd into fines, but there is no component \"" + component + "\"",
              "both among the components, or no \"fines\" here");
        }
      }
    }
  }

  /** The energy law must leave the motor a rate, and a rate that can be. */
  private static void grinds(Machine.HammerMill mill, String path, Problems found) {
    for (Machine.Screen screen : mill.screens()) {
      double kgPerS = mill.kgPerS(screen);
      if (mill.common().powerW() > 0 && !(kgPerS > 1e-6 && kgPerS < 1e6)) {
        found.add(
            path + ".screens." + screen.name() + ".opening",
            "the motor would move "
                + String.format(java.util.Locale.ROOT, "%.3g", 3.6 * kgPerS)
                + " t/h through this screen",
            "an opening, energy and exponent that give a rate a mill can have");
      }
    }
  }

  /**
   * Power drawn with the flow is a share of a limit, so there must be one wherever the machine
   * works.
   */
  private static void limited(Machine machine, String path, Plant plant, Problems found) {
    for (Line line : plant.lines()) {
      boolean stepWithout =
          Names.step(line, machine.name()).filter(step -> step.rateKgPerS().isEmpty()).isPresent()
              && !(machine instanceof Machine.HammerMill);
      if (stepWithout || line.alongside().contains(machine.name())) {
        found.add(
            path + ".draws",
            "it draws with its flow, but has no rate in line \""
                + line.name()
                + "\" to measure that flow by",
            stepWithout
                ? "a \"rate\" in its step there, or \"draws: while-up\""
                : "\"draws: while-up\", for it takes no material");
        return;
      }
    }
  }
}
