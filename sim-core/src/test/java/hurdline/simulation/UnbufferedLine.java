package hurdline.simulation;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;

/** Machines in a row without bins, each with one stop, round the clock with bales enough. */
record UnbufferedLine(int machines, String counted, String every, String lasts, int days) {
  static final double T_PER_H = 4;

  Plant plant() {
    StringBuilder kinds = new StringBuilder("  feeder: {kind: bale-feeder}\n");
    StringBuilder steps = new StringBuilder("      feeder: {rate: 4 t/h, to: m01}\n");
    for (int m = 1; m <= machines; m++) {
      kinds.append(
          "  %s: {kind: conveyor, stops: {jam: {every: %s, counted: %s, lasts: %s}}}\n"
              .formatted(name(m), every, counted, lasts));
      steps.append("      %s: {to: %s}\n".formatted(name(m), m == machines ? "tow" : name(m + 1)));
    }
    return of(kinds.toString(), steps.toString(), days);
  }

  static String name(int m) {
    return "m%02d".formatted(m);
  }

  /** A plant of one line that runs round the clock on loads of a single composition. */
  static Plant of(String machines, String steps, int days) {
    return PlantFile.of("line.yaml", text(machines, steps, days)).plant();
  }

  static String text(String machines, String steps, int days) {
    return """
        hurdline: 1
        plant: A line round the clock
        calendar:
          from: 2027-01-01
          to: %1$s
          shifts: {round: {from: "00:00", to: "24:00"}}
        components: [fiber, hurd, fines]
        crops:
          stalk: {bale: {mass: 100 t}, composition: {fiber: 40 %%, hurd: 50 %%, fines: 10 %%}}
        machines:
        %2$s
        products: {tow: {}, chips: {}}
        lines:
          line:
            crop: stalk
            feed: feeder
            steps:
        %3$s
        season: [{line: line, from: 2027-01-01, to: %1$s, shifts: [round]}]
        yard:
          on_hand: {stalk: 600 bales}
          places: {barn: {holds: 600 bales}}
        """
        .formatted(
            java.time.LocalDate.of(2027, 1, 1).plusDays(days - 1L),
            machines.stripTrailing(),
            steps.stripTrailing());
  }
}
