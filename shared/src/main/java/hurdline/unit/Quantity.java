package hurdline.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  private static final Pattern SPLIT =
      Pattern.compile(
          "([-+]?[0-9.][0-9.,_]*(?:[eE][-+]?[0-9]+)?)\\s*((?:[A-Za-z%$€£].*)?)", Pattern.DOTALL);
  private static final Pattern NUMBER =
      Pattern.compile(
          "[-+]?(?:[0-9]{1,25}(?:\\.[0-9]{0,25})?|\\.[0-9]{1,25})(?:[eE][-+]?[0-9]{1,2})?");
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  /**
   * Reads a quantity of one dimension.
   *
   * @throws QuantityException if the text is not such a quantity; its message says why
   */
  public static Quantity read(String text, Dimension due) {
    Matcher parts = SPLIT.matcher(text.strip());
    if (!parts.matches()) {
      throw new QuantityException(quoted(text) + " is not a number and a unit");
    }
    if (parts.group(2).isEmpty()) {
      number(text, parts.group(1));
      throw new QuantityException(quoted(text) + " has no unit");
    }
    return new Parts(text, number(text, parts.group(1)), parts.group(2)).quantity(due);
  }

  private static BigDecimal number(String text, String digits) {
    if (digits.contains(",")) {
      throw new QuantityException(
          quoted(text)
              + " has a comma in its number; write the digits together, with a point for decimals");
    }
    if (!NUMBER.matcher(digits).matches()) {
      throw new QuantityException(quoted(text) + " does not begin with a plain number");
    }
    return new BigDecimal(digits.endsWith(".") ? digits.substring(0, digits.length() - 1) : digits);
  }

  static String quoted(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return "\"" + (line.length() > 60 ? line.substring(0, 57) + "..." : line) + "\"";
  }

  /** The text cut into its number and its unit. */
  private record Parts(String text, BigDecimal number, String unit) {

    Quantity quantity(Dimension due) {
      BigDecimal value = number;
      Base top = null;
      List<Base> under = new ArrayList<>();
      Optional<String> currency = Optional.empty();
      for (String symbol : unit.split("/", -1)) {
        Optional<FileUnit> known = FileUnit.of(symbol);
        if (known.isEmpty() && !(top == null && CURRENCY.matcher(symbol).matches())) {
          throw unknownUnit(symbol);
        }
        if (top == null) {
          top = known.map(FileUnit::base).orElse(Base.MONEY);
          value = known.isPresent() ? value.multiply(known.get().factor()) : value;
          currency = known.isPresent() ? Optional.empty() : Optional.of(symbol);
        } else {
          under.add(known.get().base());
          value = value.divide(known.get().factor(), MathContext.DECIMAL128);
        }
      }
      if (!due.fits(top, under)) {
        throw new QuantityException(quoted(text) + " has the wrong unit");
      }
      return new Quantity(value.doubleValue(), currency);
    }

    private QuantityException unknownUnit(String symbol) {
      return Nearby.symbol(symbol)
          .map(
              near ->
                  new QuantityException(
                      quoted(text) + " has no known unit; perhaps \"" + near + "\" was meant"))
          .orElseGet(() -> new QuantityException(quoted(text) + " has no known unit"));
    }
  }
}
