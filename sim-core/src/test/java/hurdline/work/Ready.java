package hurdline.work;

import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.Roster;
import hurdline.line.YardPlan;
import hurdline.plant.Plant;

/** A plant, compiled and ready to be played. */
final class Ready {
  private Ready() {}

  static Replication replication(Plant plant) {
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Replication(Layout.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }
}
