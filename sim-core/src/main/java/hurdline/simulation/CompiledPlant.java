package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;

/** A plant compiled, ready to be played by any number of threads at once. */
public record CompiledPlant(
    Plant plant, CompiledLines layout, Roster roster, YardPlan yard, Haulage haulage) {
  public static CompiledPlant of(Plant plant) {
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new CompiledPlant(
        plant, CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  public Replication replication() {
    return new Replication(layout, roster, yard, haulage);
  }
}
