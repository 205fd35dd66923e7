package hurdline.answer;

/**
 * The ground that a place's stacks take.
 *
 * @param bales that the place holds
 * @param stacks how many, the last one perhaps begun only
 * @param longBales bales along a stack
 * @param wideBales bales across it
 * @param highBales bales on top of each other
 * @param longM length of a stack
 * @param wideM its width
 * @param highM its height
 * @param laneM clear way between two
 * @param round whether bales are round, so that each layer up is one narrower
 * @param areaM2 of all stacks, each with half a lane on every side
 */
public record GroundPlan(
    String place,
    int bales,
    int stacks,
    int longBales,
    int wideBales,
    int highBales,
    double longM,
    double wideM,
    double highM,
    double laneM,
    boolean round,
    double areaM2) {
  /** Bales of a whole stack. */
  public int balesOfStack() {
    return longBales * Layers.bales(wideBales, highBales, round);
  }
}
