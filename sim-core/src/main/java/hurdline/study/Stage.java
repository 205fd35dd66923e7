package hurdline.study;

import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.Roster;
import hurdline.line.YardPlan;
import hurdline.plant.Plant;
import hurdline.work.Replication;

/** A plant compiled, ready to be played by any number of threads at once. */
record Stage(Plant plant, Layout layout, Roster roster, YardPlan yard, Haulage haulage) {
  static Stage of(Plant plant) {
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Stage(plant, Layout.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  Replication replication() {
    return new Replication(layout, roster, yard, haulage);
  }
}
