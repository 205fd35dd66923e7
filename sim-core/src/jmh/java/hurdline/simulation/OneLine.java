package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;

/**
 * The line on which ways of simulating it are set side by side: a feeder that stops whenever it has
 * worked so much, a bin, an opener that is the slower of the two. Nothing is left to chance, so the
 * answer is known exactly.
 *
 * <p>From empty to empty: the bin fills at u − v until it is full, at H/(u − v) h; the feeder is
 * then held to v until it has worked A; in the stop of B h the bin empties after H/v h and the
 * opener starves for the rest. A cycle takes L = H/(u − v) + (A − u·H/(u − v))/v + B hours and the
 * opener works A in it.
 */
final class OneLine {
  static final double FEEDER_T_PER_H = 10;
  static final double OPENER_T_PER_H = 8;
  static final double HOLDS_T = 2.3;
  static final double WORKED_T = 61.7;
  static final double STOP_S = 2344.6;
  static final int HOURS = 365 * 24;

  private OneLine() {}

  /** What the opener has worked by the end of the year, t; by hand, without an event. */
  static double exactT() {
    double fillsH = HOLDS_T / (FEEDER_T_PER_H - OPENER_T_PER_H);
    double heldH = (WORKED_T - FEEDER_T_PER_H * fillsH) / OPENER_T_PER_H;
    double cycleH = fillsH + heldH + STOP_S / 3600;
    double cycles = Math.floor(HOURS / cycleH);
    double restH = HOURS - cycles * cycleH;
    // the opener works at full rate until it starves: while the feeder works and until the bin is
    // empty
    return cycles * WORKED_T + OPENER_T_PER_H * Math.min(restH, WORKED_T / OPENER_T_PER_H);
  }

  /** The engine's plant. */
  static Replication replication() {
    Plant plant = PlantFile.of("one_line.yaml", text()).plant();
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Replication(CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  static double simulatedT(Replication replication, RandomStreams streams, int number) {
    Outcome outcome = replication.run(streams, number, null);
    for (int k = 0; k < outcome.columns().size(); k++) {
      if (outcome.columns().get(k).name().equals("product.tow.mass")) {
        return outcome.values()[k];
      }
    }
    throw new AssertionError("no mass of tow");
  }

  private static String text() {
    return """
        hurdline: 1
        plant: One line
        calendar: {from: 2027-01-01, to: 2027-12-31, shifts: {always: {from: "00:00", to: "24:00"}}}
        components: [fiber]
        crops: {stalk: {bale: {mass: 100000000 t}, composition: {fiber: 100 %%}}}
        machines:
          feeder: {kind: bale-feeder, stops: {fault: {every: %s t, counted: mass, lasts: %s s, repair: any-time}}}
          between: {kind: bin, holds: %s t}
          opener: {kind: conveyor}
        products: {tow: {}}
        lines:
          stalk_line:
            crop: stalk
            feed: feeder
            steps: {feeder: {rate: %s t/h, to: between}, between: {to: opener}, opener: {rate: %s t/h, to: tow}}
        season: [{line: stalk_line, from: 2027-01-01, to: 2027-12-31, shifts: [always]}]
        yard: {on_hand: {stalk: 3 bales}, places: {barn: {holds: 10 bales}}}
        """
        .formatted(WORKED_T, STOP_S, HOLDS_T, FEEDER_T_PER_H, OPENER_T_PER_H);
  }
}
