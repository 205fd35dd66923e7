package hurdline.unit;

import java.util.Optional;

/**
 * A number and a unit such as {@code 3.6 t/h}, read and brought to SI.
 *
 * <p>The conversion is done in decimal and rounded once, so that {@code 57 %} is the double nearest
 * to 0.57.
 *
 * @param si the value in SI: kg, s, W, J, m, m2, m3, shares of 1, bales, money and their quotients
 * @param currency the currency code, where the quantity is counted in money
 */
public record Quantity(double si, Optional<String> currency) {
  /**
   * Reads a quantity of one dimension.
   *
   * @throws QuantityException if the text is not such a quantity; its message says why
   */
  public static Quantity read(String text, Dimension due) {
    Amount amount = Amount.read(text);
    if (amount.isBare()) {
      throw new QuantityException(Amount.quoted(text) + " has no unit");
    }
    Scale scale = Scale.of(text, amount.unit());
    if (!due.fits(scale.top(), scale.divisors())) {
      throw new QuantityException(Amount.quoted(text) + " has the wrong unit");
    }
    return new Quantity(scale.inSi(amount.number()).doubleValue(), scale.currency());
  }
}
