package hurdline.plant.yaml;

import hurdline.plant.yaml.Tree.Scalar;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads bare numbers: counts, hands, exponents, factors. */
final class Numbers {
  static final int LARGEST = 1_000_000;

  /** A number of a file without its sign, as a pattern. */
  static final String UNSIGNED =
      "(?:[0-9]{1,25}(?:\\.[0-9]{0,25})?|\\.[0-9]{1,25})(?:[eE][-+]?[0-9]{1,2})?";

  private static final Pattern WHOLE = Pattern.compile("[+-]?(?:0|[1-9][0-9]{0,9})");
  private static final Pattern NUMBER = Pattern.compile("[+-]?" + UNSIGNED);

  private Numbers() {}

  /** A bare whole number; the stand-in where none is given or it is wrong. */
  static int whole(At at, int least, int standIn) {
    String expected = "a bare whole number, " + least + " or more";
    Optional<String> text = bare(at, WHOLE, expected);
    if (text.isEmpty()) {
      return standIn;
    }
    long value = Long.parseLong(text.get());
    if (value < least || value > LARGEST) {
      at.wrong(
          at.shown() + (value < least ? " is too small" : " is too large"),
          expected + ", up to " + LARGEST);
      return standIn;
    }
    return (int) value;
  }

  /** A bare number of at least some size. */
  static OptionalDouble number(At at, double least, boolean above) {
    String expected = "a bare number" + (above ? " above " : ", at least ") + shortest(least);
    Optional<String> text = bare(at, NUMBER, expected);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(text.get());
    if (!(above ? value > least : value >= least)) {
      at.wrong(at.shown() + " is too small", expected);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  private static String shortest(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  private static Optional<String> bare(At at, Pattern pattern, String expected) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Optional<Scalar> scalar = at.scalar();
    if (scalar.isPresent()
        && scalar.get().plain()
        && pattern.matcher(scalar.get().text()).matches()) {
      return scalar.map(Scalar::text);
    }
    at.wrong(
        at.shown() + " is not " + (pattern == WHOLE ? "a bare whole number" : "a bare number"),
        expected);
    return Optional.empty();
  }
}
