package hurdline.simulation.yard;

import java.util.List;

/**
 * What a year has left, with which another year of the same plant may open: its crop, with masses,
 * moisture and age as the year ended, and the demand that a ratchet still bills.
 *
 * @param inPlaces bales weighed in, in the order in which they came; those still on a truck behind
 *     them
 * @param inFront bales that will be picked before all others, of each crop the first to be picked
 *     last
 * @param atGate loads not yet weighed in, at the gate or on the road
 * @param atFields bales at fields, in the order in which they were made
 * @param unbaledKg what each field has not yet in bales
 * @param demandW electric demand of the last months that a ratchet looks at, the latest last
 */
public record CarriedOverStock(
    List<Bale> inPlaces,
    List<Bale> inFront,
    List<List<Bale>> atGate,
    List<Bale> atFields,
    double[] unbaledKg,
    double[] demandW) {

  /**
   * A bale.
   *
   * @param at the place where it lies, −1 where in none; at fields the field
   * @param attribute by {@link hurdline.plant.LotAttribute}
   * @param unpaid share by which its price was lowered
   * @param areaM2 of its field that is paid for with it
   * @param ageS since it was weighed in, NaN if it has not been
   * @param knownS since its mass was what it is here
   * @param dryShare of each component
   */
  public record Bale(
      int crop,
      int at,
      double massKg,
      double moisture,
      double[] attribute,
      double unpaid,
      double areaM2,
      double ageS,
      double knownS,
      double[] dryShare) {
    private Bale later(double idleS) {
      return new Bale(
          crop,
          at,
          massKg,
          moisture,
          attribute,
          unpaid,
          areaM2,
          ageS + idleS,
          knownS + idleS,
          dryShare);
    }
  }

  private static final double MONTH_S = 30.4375 * 86_400;

  /** Nothing at all. */
  public static final CarriedOverStock NONE =
      new CarriedOverStock(
          List.of(), List.of(), List.of(), List.of(), new double[0], new double[0]);

  /**
   * The same after a time in which nothing was worked: older, and wasting away where it lies, as
   * will be booked once it is touched.
   */
  public CarriedOverStock later(double idleS) {
    return new CarriedOverStock(
        later(inPlaces, idleS),
        later(inFront, idleS),
        atGate.stream().map(load -> later(load, idleS)).toList(),
        later(atFields, idleS),
        unbaledKg,
        later(demandW, idleS));
  }

  private static List<Bale> later(List<Bale> bales, double idleS) {
    return bales.stream().map(bale -> bale.later(idleS)).toList();
  }

  /** Months in which nothing is worked have no demand that is known. */
  private static double[] later(double[] demandW, double idleS) {
    int idle = (int) Math.min(demandW.length, Math.round(idleS / MONTH_S));
    double[] later = new double[demandW.length];
    System.arraycopy(demandW, idle, later, 0, demandW.length - idle);
    return later;
  }

  /** Whether the year has left no crop. */
  public boolean isEmpty() {
    boolean empty =
        inPlaces.isEmpty() && inFront.isEmpty() && atGate.isEmpty() && atFields.isEmpty();
    for (double kg : unbaledKg) {
      empty &= !(kg > 0);
    }
    return empty;
  }
}
