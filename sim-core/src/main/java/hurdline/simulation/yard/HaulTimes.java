package hurdline.simulation.yard;

import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.plant.Delivery;
import hurdline.random.Draws;
import hurdline.random.RandomStreams;

/**
 * How long jobs and drives last: one stream for each kind of job of a crop, one for each leg of its
 * trucks.
 */
final class HaulTimes {
  private final YardPlan yard;
  private final Haulage haulage;
  private final Draws[] load; // by crop; null where there is no such job
  private final Draws[] weigh;
  private final Draws[] unload;
  private final Draws[] driveOut;
  private final Draws[] driveBack;

  HaulTimes(YardPlan yard, Haulage haulage) {
    this.yard = yard;
    this.haulage = haulage;
    load = new Draws[yard.crops()];
    weigh = new Draws[yard.crops()];
    unload = new Draws[yard.crops()];
    driveOut = new Draws[yard.crops()];
    driveBack = new Draws[yard.crops()];
  }

  void reset(RandomStreams streams, int replication) {
    for (int crop = 0; crop < yard.crops(); crop++) {
      Delivery delivery = haulage.delivery(crop).orElse(null);
      if (delivery != null) {
        reset(crop, delivery, streams, replication);
      }
    }
  }

  private void reset(int crop, Delivery delivery, RandomStreams streams, int replication) {
    String name = yard.crop(crop);
    unload[crop] = new Draws(delivery.unload().lastsS(), streams.of(replication, "unload." + name));
    if (delivery.weigh().isPresent()) {
      weigh[crop] =
          new Draws(delivery.weigh().get().lastsS(), streams.of(replication, "weigh." + name));
    }
    if (delivery.trucks().isPresent()) {
      Delivery.Trucks trucks = delivery.trucks().get();
      load[crop] = new Draws(trucks.load().lastsS(), streams.of(replication, "load." + name));
      driveOut[crop] = new Draws(trucks.driveS(), streams.of(replication, "drive_out." + name));
      driveBack[crop] = new Draws(trucks.driveS(), streams.of(replication, "drive_back." + name));
    }
  }

  double loadS(int crop) {
    return load[crop].next();
  }

  double weighS(int crop) {
    return weigh[crop].next();
  }

  double unloadS(int crop) {
    return unload[crop].next();
  }

  double driveOutS(int crop) {
    return driveOut[crop].next();
  }

  double driveBackS(int crop) {
    return driveBack[crop].next();
  }
}
