package hurdline.plant;

import hurdline.random.Distribution;
import java.util.Optional;

/**
 * A crop, counted in bales or, where {@code modules} is set, in modules.
 *
 * @param dampFrom moisture from which it is risky to store, water over the whole mass; {@code
 *     check} and every report go by it
 * @param formOf the crop that also comes in this form, with bales of its own; absent for a crop
 */
public record Crop(
    String name, boolean modules, Bale bale, double dampFrom, Optional<String> formOf) {
  private static final double DRIER_SHARE = 0.9;

  public Crop {
    Check.part("dampFrom", dampFrom);
  }

  /**
   * From where a crop is damp if its file does not say.
   *
   * <p>Large bales, 15 %: extension advice for fiber crops in Ontario and Alberta is below it,
   * which lies between that for large hay bales in California (14 %) and in the South of the USA
   * (16 to 18 %). Modules, 14 %: lint yellows sharply above (Cotton Incorporated, after Curley et
   * al. 1987).
   */
  public static double usuallyDampFrom(boolean modules) {
    return modules ? 0.14 : 0.15;
  }

  /** The crop itself, or the one whose form it is. */
  public String base() {
    return formOf.orElse(name);
  }

  /** Whether one bale in ten or more of this moisture is damp. */
  public boolean isDamp(Distribution moisture) {
    return moisture.at(DRIER_SHARE) >= dampFrom;
  }
}
