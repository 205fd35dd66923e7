package hurdline.plant;

/**
 * By which factor a package's price changes with the share of a component in its dry matter.
 *
 * @param inSteps whether each factor holds from its share on, where otherwise lines lead from one
 *     to the next
 */
public record Cleanliness(String component, boolean inSteps, Curve factors) {}
