package hurdline.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and the unit behind it, such as {@code 2.5e1 hp} or a bare {@code 3}.
 *
 * <p>This is the one place that says how a number is written, in a plant file and in every flag
 * alike:
 *
 * <pre>
 * amount  = number [spaces] [unit]
 * number  = ["+" | "-"] digits ["." digits] [exponent]     also ".5" and "5."
 * exponent = ("e" | "E") ["+" | "-"] one or two digits
 * unit    = a letter, % or a currency mark, and whatever follows
 * factor  = "x" [spaces] number that is 0 or more
 * move    = ("+" | "-") [spaces] up to five digits [spaces] ("d" | "w" | "wk")     of a date, by days or weeks
 * </pre>
 *
 * <p>No thousands mark, no hexadecimal, no infinity. Which units there are is {@link Quantity}'s to
 * say.
 *
 * @param number in decimal, as it is written
 * @param unit as it is written; empty for a bare number
 */
public record Amount(BigDecimal number, String unit) {
  private static final Pattern SPLIT =
      Pattern.compile(
          "([-+]?[0-9.][0-9.,_]*(?:[eE][-+]?[0-9]+)?)\\s*((?:[A-Za-z%$€£].*)?)", Pattern.DOTALL);
  private static final Pattern NUMBER =
      Pattern.compile(
          "[-+]?(?:[0-9]{1,25}(?:\\.[0-9]{0,25})?|\\.[0-9]{1,25})(?:[eE][-+]?[0-9]{1,2})?");
  private static final Pattern WHOLE = Pattern.compile("[-+]?(?:0|[1-9][0-9]{0,17})");
  private static final Pattern MOVE = Pattern.compile("([-+]) *([0-9]{1,5}) *(d|w|wk)");
  private static final int DAYS_OF_WEEK = 7;
  private static final Pattern ODD_SPACE = Pattern.compile("[\\u00A0\\u2007\\u202F\\u200B\\uFEFF]");

  /** Beyond a double's, so that rounding to one happens once. */
  private static final MathContext DIGITS = new MathContext(22, RoundingMode.HALF_EVEN);

  private static final int LONGEST_PLAIN = 25;

  /**
   * Reads a number with or without a unit.
   *
   * @throws QuantityException if the text begins with no number; its message says why
   */
  public static Amount read(String text) {
    refuseOddSpace(text);
    Matcher parts = SPLIT.matcher(text.strip());
    if (!parts.matches()) {
      throw new QuantityException(quoted(text) + " is not a number and a unit");
    }
    String digits = parts.group(1);
    if (digits.contains(",")) {
      throw new QuantityException(
          quoted(text)
              + " has a comma in its number; write the digits together, with a point for decimals");
    }
    if (!NUMBER.matcher(digits).matches() || isHexadecimal(digits, parts.group(2))) {
      throw new QuantityException(quoted(text) + " does not begin with a plain number");
    }
    return new Amount(new BigDecimal(digits), parts.group(2).strip());
  }

  /** The amount; empty where the text is none. */
  public static Optional<Amount> find(String text) {
    try {
      return Optional.of(read(text));
    } catch (QuantityException e) {
      return Optional.empty();
    }
  }

  /**
   * Reads a factor such as {@code x0.8}; empty where the text does not begin as one.
   *
   * @throws QuantityException if no bare number of 0 or more follows the x
   */
  public static Optional<BigDecimal> factor(String text) {
    String asked = text.strip();
    if (!asked.startsWith("x") || !asked.substring(1).strip().matches("(?s)[-+.0-9].*")) {
      return Optional.empty();
    }
    Optional<Amount> read =
        find(asked.substring(1)).filter(found -> found.isBare() && found.number().signum() >= 0);
    if (read.isEmpty()) {
      refuseOddSpace(text);
      throw new QuantityException(quoted(asked) + " has no plain factor after its x");
    }
    return read.map(Amount::number);
  }

  /**
   * By how many days a text such as {@code +30d} or {@code -1 wk} moves a date; empty where it is
   * no such text.
   */
  public static OptionalInt daysMoved(String text) {
    Matcher parts = MOVE.matcher(text.strip());
    if (!parts.matches()) {
      return OptionalInt.empty();
    }
    int days = Integer.parseInt(parts.group(2)) * (parts.group(3).equals("d") ? 1 : DAYS_OF_WEEK);
    return OptionalInt.of(parts.group(1).equals("-") ? -days : days);
  }

  /** A bare whole number written with digits only; empty where the text is none. */
  public static OptionalLong whole(String text) {
    return WHOLE.matcher(text).matches()
        ? OptionalLong.of(Long.parseLong(text))
        : OptionalLong.empty();
  }

  /**
   * Where the text holds what looks like a space and is none to a program; empty where it holds
   * none.
   */
  public static OptionalInt oddSpace(String text) {
    Matcher found = ODD_SPACE.matcher(text);
    return found.find() ? OptionalInt.of(found.start()) : OptionalInt.empty();
  }

  /** The same with a plain space in place of each odd one. */
  public static String withPlainSpaces(String text) {
    return ODD_SPACE.matcher(text).replaceAll(" ");
  }

  public boolean isBare() {
    return unit.isEmpty();
  }

  /** The number alone, whatever its unit. */
  public double value() {
    return number.doubleValue();
  }

  /** The same unit with another number. */
  public Amount with(BigDecimal other) {
    return new Amount(other, unit);
  }

  /**
   * How many of another unit of the same kind it is: 500 ton in {@code t} are 453.6.
   *
   * @throws QuantityException if this has no known unit, or one of another kind
   */
  public double in(String other) {
    Scale mine = Scale.of(text(), unit);
    Scale due = Scale.of(other, other);
    if (!mine.isOfOneKindWith(due)) {
      throw new QuantityException(quoted(text()) + " has the wrong unit");
    }
    return mine.inSi(number).divide(due.inSi(BigDecimal.ONE), MathContext.DECIMAL128).doubleValue();
  }

  /**
   * The currency code, where it is an amount of money or a price.
   *
   * @throws QuantityException if it has no known unit
   */
  public Optional<String> currency() {
    return isBare() ? Optional.empty() : Scale.of(text(), unit).currency();
  }

  /** As a file or a flag may write it, in the fewest digits. */
  public String text() {
    return isBare() ? digits(number) : digits(number) + " " + unit;
  }

  /** A number as a file or a flag may write it, in the fewest digits. */
  public static String digits(BigDecimal number) {
    BigDecimal rounded = number.round(DIGITS).stripTrailingZeros();
    String plain = rounded.signum() == 0 ? "0" : rounded.toPlainString();
    return plain.length() <= LONGEST_PLAIN ? plain : rounded.toString();
  }

  static String quoted(String text) {
    String line = withPlainSpaces(text).replaceAll("\\s+", " ").strip();
    return "\"" + (line.length() > 60 ? line.substring(0, 57) + "..." : line) + "\"";
  }

  /** {@code 0x10} would else be a 0 with the unit "x10". */
  private static boolean isHexadecimal(String digits, String unit) {
    return digits.equals("0") && unit.matches("[xX][0-9a-fA-F].*");
  }

  private static void refuseOddSpace(String text) {
    if (oddSpace(text).isPresent()) {
      throw new QuantityException(
          quoted(text) + " holds a non-breaking space; type a plain space in its place, or none");
    }
  }
}
