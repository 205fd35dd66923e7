package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;

/** A plant compiled, ready to be simulated by any number of threads at once. */
public record CompiledPlant(
    Plant plant, CompiledLines layout, Roster roster, YardPlan yard, Haulage haulage) {
  public static CompiledPlant of(Plant plant) {
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new CompiledPlant(
        plant, CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  /**
   * A changed plant compiled, which takes over from this one what the change does not touch: hours,
   * yard and haulage cost nothing where they stay, so that plants can be compiled by the hundred
   * ({@code sim-core/src/jmh/BENCHMARKS.md}). It is what {@link #of} gives.
   */
  public CompiledPlant changedTo(Plant changed) {
    Roster itsRoster = roster.changedTo(changed);
    YardPlan itsYard = yard.changedTo(changed);
    return new CompiledPlant(
        changed,
        layout.changedTo(changed),
        itsRoster,
        itsYard,
        haulage.changedTo(changed, itsYard, itsRoster));
  }

  public Replication replication() {
    return new Replication(layout, roster, yard, haulage);
  }
}
