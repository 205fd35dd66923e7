package hurdline.plant;

/**
 * By which factor the price of a crop changes with the moisture or an attribute of a load.
 *
 * @param by moisture, or the name of one of the crop's attributes
 * @param inSteps whether each factor holds from its share on, where otherwise lines lead from one
 *     to the next
 */
public record Grade(String by, boolean inSteps, Curve factors) {
  /** What a grade or limit goes by where it is no attribute. */
  public static String moisture() {
    return "moisture";
  }
}
