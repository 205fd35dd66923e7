package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;

/** A plant, compiled and ready to be simulated. */
public final class Ready {
  private Ready() {}

  public static Replication replication(Plant plant) {
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Replication(CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }
}
