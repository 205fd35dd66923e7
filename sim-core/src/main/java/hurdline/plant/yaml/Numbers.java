package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Amount;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Reads bare numbers: counts, hands, exponents, factors. */
final class Numbers {
  static final int LARGEST = 1_000_000;

  private Numbers() {}

  /** A bare whole number; the stand-in where none is given or it is wrong. */
  static int whole(NodeReader at, int least, int standIn) {
    String expected = "a bare whole number, " + least + " or more";
    if (!at.isGiven()) {
      return standIn;
    }
    OptionalLong read = plain(at).map(Amount::whole).orElse(OptionalLong.empty());
    if (read.isEmpty()) {
      at.wrong(at.shown() + " is not a bare whole number" + slip(at), expected);
      return standIn;
    }
    long value = read.getAsLong();
    if (value < least || value > LARGEST) {
      at.wrong(
          at.shown() + (value < least ? " is too small" : " is too large"),
          expected + ", up to " + LARGEST);
      return standIn;
    }
    return (int) value;
  }

  /** A bare number of at least some size. */
  static OptionalDouble number(NodeReader at, double least, boolean above) {
    String expected = "a bare number" + (above ? " above " : ", at least ") + shortest(least);
    if (!at.isGiven()) {
      return OptionalDouble.empty();
    }
    Optional<Amount> read = plain(at).flatMap(Amount::find).filter(Amount::isBare);
    if (read.isEmpty()) {
      at.wrong(at.shown() + " is not a bare number" + slip(at), expected);
      return OptionalDouble.empty();
    }
    double value = read.get().value();
    if (!(above ? value > least : value >= least)) {
      at.wrong(at.shown() + " is too small", expected);
      return OptionalDouble.empty();
    }
    if (!(value <= LARGEST)) {
      at.wrong(at.shown() + " is too large", expected + ", up to " + LARGEST);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  private static String shortest(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  /** The text of a scalar that stands without quotes. */
  private static Optional<String> plain(NodeReader at) {
    return at.scalar().filter(Scalar::plain).map(Scalar::text);
  }

  /** A comma is what most often makes a number none. */
  private static String slip(NodeReader at) {
    return plain(at).filter(text -> text.matches("[-+]?[0-9]+(,[0-9]+)+")).isPresent()
        ? ": it has a comma in it"
        : "";
  }
}
