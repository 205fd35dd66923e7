package hurdline.study.yard;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of a yard.
 *
 * @param crop whose yard; none for the file's first crop
 * @param place which is made larger or smaller; none for the last one whose ground has a price,
 *     else the last
 * @param overflow share of seasons in which it may overflow
 * @param acres share of seasons that must finish the crop, where it is asked how much can be
 *     contracted
 * @param carryOver bales that may be left when the season ends, for it to have finished the crop
 * @param gain whether it is asked what shortens the peak
 */
public record YardAsk(
    Optional<String> crop,
    Optional<String> place,
    double overflow,
    OptionalDouble acres,
    int carryOver,
    boolean gain) {
  public YardAsk {
    share("overflow", overflow);
    acres.ifPresent(share -> share("acres", share));
    if (carryOver < 0) {
      throw new IllegalArgumentException("carryOver is " + carryOver + "; expected 0 or more");
    }
  }

  /** Only the size, of the file's first crop. */
  static YardAsk of(double overflow) {
    return new YardAsk(
        Optional.empty(), Optional.empty(), overflow, OptionalDouble.empty(), 0, false);
  }

  private static void share(String name, double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(name + " is " + share + "; expected above 0 and below 1");
    }
  }
}
