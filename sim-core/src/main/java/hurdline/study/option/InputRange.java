package hurdline.study.option;

import hurdline.unit.Level;
import hurdline.unit.QuantityException;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An input and how far it may lie off.
 *
 * @param key its path in the plant file
 * @param low a number with its unit, or {@code x0.8} for so many times what the file says
 * @param high as {@code low}, in the same unit
 */
public record InputRange(String key, String low, String high) {
  /** Digits of a factor that is worked out. */
  private static final MathContext FACTOR_DIGITS = new MathContext(12);

  public InputRange {
    if (!areEnds(low, high)) {
      throw new IllegalArgumentException(
          low + " and " + high + "; expected two numbers in one unit");
    }
  }

  /** A share less and a share more than the file says. */
  public static InputRange around(String key, double share) {
    return new InputRange(key, times(1 - share), times(1 + share));
  }

  /** Whether two such values can be the ends of one input. */
  public static boolean areEnds(String low, String high) {
    try {
      return Level.read(low).unit().equals(Level.read(high).unit());
    } catch (QuantityException e) {
      return false;
    }
  }

  double lowNumber() {
    return Level.read(low).number().doubleValue();
  }

  double highNumber() {
    return Level.read(high).number().doubleValue();
  }

  /** The unit of both numbers; {@code x} where they are factors. */
  String unit() {
    return Level.read(low).unit();
  }

  /** So many times what the file says, as a flag may write it. */
  static String times(double factor) {
    return Level.times(new BigDecimal(factor).round(FACTOR_DIGITS)).text();
  }
}
