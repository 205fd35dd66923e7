package hurdline.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A unit as it is written, such as {@code USD/kW/month}, taken apart.
 *
 * @param currency what stands before the first slash, where that is a currency code
 * @param unit what stands before the first slash, where that is a unit
 * @param under what it is divided by, in turn
 */
record Scale(Optional<String> currency, Optional<FileUnit> unit, List<FileUnit> under) {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  /**
   * Reads a unit.
   *
   * @param text the amount that it belongs to, for messages
   * @throws QuantityException if there is no such unit; its message says which may be meant
   */
  static Scale of(String text, String written) {
    String[] symbols = written.split("/", -1);
    Optional<FileUnit> first = FileUnit.of(symbols[0]);
    if (first.isEmpty() && !CURRENCY.matcher(symbols[0]).matches()) {
      throw unknown(text, symbols[0]);
    }
    List<FileUnit> under = new ArrayList<>();
    for (int at = 1; at < symbols.length; at++) {
      String symbol = symbols[at];
      under.add(FileUnit.of(symbol).orElseThrow(() -> unknown(text, symbol)));
    }
    return new Scale(first.isPresent() ? Optional.empty() : Optional.of(symbols[0]), first, under);
  }

  private static QuantityException unknown(String text, String symbol) {
    String near =
        Nearby.symbol(symbol).map(known -> "; perhaps \"" + known + "\" was meant").orElse("");
    return new QuantityException(Amount.quoted(text) + " has no known unit" + near);
  }

  Base top() {
    return unit.map(FileUnit::base).orElse(Base.MONEY);
  }

  /** The bases below the slashes, in the order of {@link Base}. */
  List<Base> divisors() {
    return under.stream().map(FileUnit::base).sorted().toList();
  }

  /** So many of the unit in SI, rounded once at the end. */
  BigDecimal inSi(BigDecimal number) {
    BigDecimal value = unit.isPresent() ? number.multiply(unit.get().factor()) : number;
    for (FileUnit divisor : under) {
      value = value.divide(divisor.factor(), MathContext.DECIMAL128);
    }
    return value;
  }

  boolean isOfOneKindWith(Scale other) {
    return top() == other.top()
        && divisors().equals(other.divisors())
        && currency.equals(other.currency);
  }
}
