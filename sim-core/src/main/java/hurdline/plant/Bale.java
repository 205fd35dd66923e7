package hurdline.plant;

import hurdline.random.Distribution;
import java.util.Map;
import java.util.Optional;

/**
 * What a bale (or module) of a crop or field is like.
 *
 * @param massKg as-is mass
 * @param moisture water over as-is mass, 0 to below 1
 * @param diameterM of the stalks, where the crop has one
 * @param attributes shares by name that the file has given them, such as retting
 * @param composition share of each component in the dry matter; a component left out has none
 * @param size where it is given
 * @param spread relative standard deviation of each share from bale to bale
 */
public record Bale(
    Distribution massKg,
    Distribution moisture,
    Optional<Distribution> diameterM,
    Map<String, Distribution> attributes,
    Map<String, Double> composition,
    double spread,
    Optional<Size> size) {
  public Bale {
    attributes = InOrder.copy(attributes);
    composition = InOrder.copy(composition);
    Check.shares("composition", composition);
    Check.share("spread", spread);
  }

  /** Mean as-is mass; what is drawn below 0 counts as 0. */
  public double meanMassKg() {
    return massKg.meanWithin(0, Double.POSITIVE_INFINITY);
  }

  /** The same of no known measures. */
  public Bale ofAnySize() {
    return new Bale(massKg, moisture, diameterM, attributes, composition, spread, Optional.empty());
  }

  /**
   * Outer measures; a stack's length runs along the bale's.
   *
   * @param round whether it is a cylinder that lies on its round side, as wide and high as its
   *     diameter
   */
  public record Size(double longM, double wideM, double highM, boolean round) {
    public Size {
      Check.above0("longM", longM);
      Check.above0("wideM", wideM);
      Check.above0("highM", highM);
    }
  }
}
