package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;

/**
 * A line of any number of machines over any number of years, round the clock: each machine with a
 * stop of its own, a bin after every fifth, a press at the end that packs.
 */
record GrownPlant(int machines, int years) {
  private static final int BETWEEN_BINS = 5;
  private static final int BALES_A_YEAR = 17_600; // of 2 t, at 4 t/h somewhat more than can be fed

  Replication replication() {
    Plant plant = PlantFile.of("grown.yaml", text()).plant();
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Replication(CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  String text() {
    StringBuilder kinds = new StringBuilder("  feeder: {kind: bale-feeder}\n");
    StringBuilder steps = new StringBuilder();
    String before = "feeder";
    for (int m = 1; m < machines; m++) {
      String name = "m" + m;
      kinds
          .append("  ")
          .append(name)
          .append(": {kind: ")
          .append(m == machines - 1 ? "press, boxes: 2" : "conveyor")
          .append(", stops: {jam: {every: {exponential: {mean: 24 h}}, counted: running,")
          .append(" lasts: {exponential: {mean: 9 min}}}}}\n");
      if (m % BETWEEN_BINS == 0) {
        kinds.append("  b").append(m).append(": {kind: bin, holds: 2 t}\n");
        steps
            .append(step(before, "b" + m))
            .append("      b")
            .append(m)
            .append(": {to: ")
            .append(name)
            .append("}\n");
      } else {
        steps.append(step(before, name));
      }
      before = name;
    }
    steps.append("      ").append(before).append(": {rate: 4 t/h, packs: tow}\n");
    return whole(kinds.toString(), steps.toString());
  }

  private static String step(String machine, String to) {
    return "      " + machine + ": {rate: 4 t/h, to: " + to + "}\n";
  }

  private String whole(String kinds, String steps) {
    return """
        hurdline: 1
        plant: A line grown for measuring
        calendar: {from: 2027-01-01, to: %1$d-12-31, shifts: {round: {from: "00:00", to: "24:00"}}}
        components: [fiber, hurd]
        crops: {stalk: {bale: {mass: 2 t}, composition: {fiber: 40 %%, hurd: 60 %%}}}
        machines:
        %2$s
        products: {tow: {package: tow_bale}}
        packages: {tow_bale: {mass: 500 kg, change: 1 min}}
        lines:
          line:
            crop: stalk
            feed: feeder
            steps:
        %3$s
        season: [{line: line, from: 2027-01-01, to: %1$d-12-31, shifts: [round]}]
        yard: {on_hand: {stalk: %4$d bales}, places: {barn: {holds: %4$d bales}}}
        """
        .formatted(
            2026 + years, kinds.stripTrailing(), steps.stripTrailing(), years * BALES_A_YEAR);
  }
}
