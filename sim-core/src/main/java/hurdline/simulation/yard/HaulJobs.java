package hurdline.simulation.yard;

import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.event.Resources;

/**
 * The carriers' jobs at the resources: loading, weighing, unloading, each behind the gate of its
 * crop's receiving hours.
 */
final class HaulJobs {
  private final Haulage haulage;
  private final Arrivals carriers;
  private final Resources resources;
  private final HaulTimes times;
  private final int jobBase;
  private final long orderBase;

  HaulJobs(
      YardPlan yard,
      Haulage haulage,
      Arrivals carriers,
      Resources resources,
      HaulTimes times,
      int jobBase,
      long orderBase) {
    this.haulage = haulage;
    this.carriers = carriers;
    this.resources = resources;
    this.times = times;
    this.jobBase = jobBase;
    this.orderBase = orderBase;
    for (int crop = 0; crop < yard.crops(); crop++) {
      if (haulage.delivery(crop).isPresent()) {
        resources.hoursOf(haulage.load(crop).resource(), gate(crop));
        resources.hoursOf(haulage.weigh(crop).resource(), gate(crop));
        resources.hoursOf(haulage.unload(crop).resource(), gate(crop));
      }
    }
  }

  private static int gate(int crop) {
    return 1 + crop;
  }

  /** Whether the crop's receiving hours are on. */
  boolean receives(int crop) {
    return resources.isOpen(gate(crop));
  }

  /**
   * The carrier asks for its next job. Of one instant, crops go by name and carriers as they set
   * out or came.
   */
  void ask(int carrier, int toDo, double nowS) {
    int crop = carriers.crop[carrier];
    carriers.doing[carrier] = toDo;
    carriers.askedS[carrier] = nowS;
    Haulage.Needs needs = needs(carrier);
    long order = orderBase + ((long) crop << 40) + carriers.turn[carrier];
    resources.ask(needs.resource(), jobBase + carrier, needs.rank(), order, gate(crop), nowS);
  }

  /** The carrier's job begins; how long it will last. */
  double begin(int carrier, double nowS) {
    carriers.served(carrier, nowS);
    int crop = carriers.crop[carrier];
    return switch (carriers.doing[carrier]) {
      case Arrivals.LOAD -> times.loadS(crop);
      case Arrivals.UNLOAD -> times.unloadS(crop);
      default -> times.weighS(crop);
    };
  }

  /** The carrier's job has ended. */
  void end(int carrier, double nowS) {
    resources.release(needs(carrier).resource(), nowS);
  }

  private Haulage.Needs needs(int carrier) {
    int crop = carriers.crop[carrier];
    return switch (carriers.doing[carrier]) {
      case Arrivals.LOAD -> haulage.load(crop);
      case Arrivals.UNLOAD -> haulage.unload(crop);
      default -> haulage.weigh(crop);
    };
  }
}
