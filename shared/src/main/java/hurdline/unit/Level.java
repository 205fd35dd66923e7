package hurdline.unit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A value that a flag gives a key: an amount in place of what the file says, or {@code x0.8} for so
 * many times that.
 *
 * @param isFactor whether it scales what the file says
 * @param amount a bare number where it is a factor
 */
public record Level(boolean isFactor, Amount amount) {
  private static final String TIMES = "x";

  /**
   * Reads an amount or a factor.
   *
   * @throws QuantityException if the text is neither; its message says why
   */
  public static Level read(String text) {
    Optional<BigDecimal> factor = Amount.factor(text);
    return factor.isPresent() ? times(factor.get()) : new Level(false, Amount.read(text));
  }

  /** So many times what the file says. */
  public static Level times(BigDecimal factor) {
    return new Level(true, new Amount(factor, ""));
  }

  /** The same kind and unit with another number. */
  public Level with(BigDecimal number) {
    return new Level(isFactor, amount.with(number));
  }

  public BigDecimal number() {
    return amount.number();
  }

  /** The unit as it is written; {@code x} for a factor and nothing for a bare number. */
  public String unit() {
    return isFactor ? TIMES : amount.unit();
  }

  /** As a flag may write it. */
  public String text() {
    return isFactor ? TIMES + amount.text() : amount.text();
  }
}
