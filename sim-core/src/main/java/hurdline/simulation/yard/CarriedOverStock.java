package hurdline.simulation.yard;

import java.util.List;

/**
 * Crop that a year has left, with which another year of the same plant may open: masses, moisture
 * and age as the year ended.
 *
 * @param inPlaces bales weighed in, in the order in which they came; those still on a truck behind
 *     them
 * @param inFront bales that will be picked before all others, of each crop the first to be picked
 *     last
 * @param atGate loads not yet weighed in, at the gate or on the road
 * @param atFields bales at fields, in the order in which they were made
 * @param unbaledKg what each field has not yet in bales
 */
public record CarriedOverStock(
    List<Bale> inPlaces,
    List<Bale> inFront,
    List<List<Bale>> atGate,
    List<Bale> atFields,
    double[] unbaledKg) {

  /**
   * A bale.
   *
   * @param at the place where it lies, {@link Bales where in none; at fields the field
   * @param attribute by {@link hurdline.plant.LotAttribute}
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
      double ageS,
      double knownS,
      double[] dryShare) {
    private Bale later(double idleS) {
      return new Bale(
          crop, at, massKg, moisture, attribute, ageS + idleS, knownS + idleS, dryShare);
    }
  }

  /** Nothing at all. */
  public static final CarriedOverStock NONE =
      new CarriedOverStock(List.of(), List.of(), List.of(), List.of(), new double[0]);

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
        unbaledKg);
  }

  private static List<Bale> later(List<Bale> bales, double idleS) {
    return bales.stream().map(bale -> bale.later(idleS)).toList();
  }

  /** Whether the year has left nothing. */
  public boolean isEmpty() {
    boolean empty =
        inPlaces.isEmpty() && inFront.isEmpty() && atGate.isEmpty() && atFields.isEmpty();
    for (double kg : unbaledKg) {
      empty &= !(kg > 0);
    }
    return empty;
  }
}
