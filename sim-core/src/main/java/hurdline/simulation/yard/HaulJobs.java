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
  private final int[] load; // [crop] what loading needs
  private final int[] weigh;
  private final int[] unload;

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
    load = new int[yard.crops()];
    weigh = new int[yard.crops()];
    unload = new int[yard.crops()];
    for (int crop = 0; crop < yard.crops(); crop++) {
      if (haulage.delivery(crop).isPresent()) {
        load[crop] = number(haulage.load(crop), crop);
        weigh[crop] = number(haulage.weigh(crop), crop);
        unload[crop] = number(haulage.unload(crop), crop);
      }
    }
  }

  private int number(Haulage.Needs needs, int crop) {
    int number = resources.together(needs.resources(), needs.ranks());
    resources.hoursOf(number, gate(crop));
    return number;
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
    int rank = needs.ranks().length == 1 ? needs.ranks()[0] : 0;
    resources.ask(number(carrier), jobBase + carrier, rank, order, gate(crop), nowS);
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
    resources.release(number(carrier), nowS);
  }

  private int number(int carrier) {
    int crop = carriers.crop[carrier];
    return switch (carriers.doing[carrier]) {
      case Arrivals.LOAD -> load[crop];
      case Arrivals.UNLOAD -> unload[crop];
      default -> weigh[crop];
    };
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
