package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Amount;
import hurdline.unit.Dimension;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.util.OptionalDouble;

/** Reads plain quantities: a number and a unit. */
final class Quantities {
  /**
   * Of any unit; sums and products of such numbers stay numbers. A plant's price in the smallest
   * currency is below it.
   */
  private static final double MOST = 1e15;

  private Quantities() {}

  /** The quantity in SI; the stand-in where none is given or it is wrong. */
  static double of(NodeReader at, Dimension due, Range range, double standIn) {
    return optional(at, due, range).orElse(standIn);
  }

  static OptionalDouble optional(NodeReader at, Dimension due, Range range) {
    if (!at.isGiven()) {
      return OptionalDouble.empty();
    }
    if (at.scalar().isEmpty()) {
      at.wrong(
          at.shown() + " stands where one fixed value is due; this may not vary", due.phrase());
      return OptionalDouble.empty();
    }
    return read(at, at.scalar().get(), due, range);
  }

  /** The quantity where the key is given, the stand-in where what is given is wrong. */
  static OptionalDouble whereGiven(NodeReader at, Dimension due, Range range) {
    return at.isGiven() ? OptionalDouble.of(of(at, due, range, 1)) : OptionalDouble.empty();
  }

  static OptionalDouble read(NodeReader at, Scalar scalar, Dimension due, Range range) {
    try {
      Quantity quantity = Quantity.read(scalar.text(), due);
      if (!(Math.abs(Amount.read(scalar.text()).value()) <= MOST)) {
        at.wrong(
            MessageText.quoted(scalar.text()) + " is more than any plant has",
            due.phrase() + range.phrase());
        return OptionalDouble.empty();
      }
      String fault = range.fault(quantity.si());
      if (fault != null) {
        at.wrong(MessageText.quoted(scalar.text()) + " " + fault, due.phrase() + range.phrase());
        return OptionalDouble.empty();
      }
      return sameMoney(at, scalar, quantity)
          ? OptionalDouble.of(quantity.si())
          : OptionalDouble.empty();
    } catch (QuantityException e) {
      at.wrong(e.getMessage(), due.phrase() + range.phrase());
      return OptionalDouble.empty();
    }
  }

  private static boolean sameMoney(NodeReader at, Scalar scalar, Quantity quantity) {
    if (quantity.currency().isEmpty()) {
      return true;
    }
    String code = quantity.currency().get();
    Binding binding = at.binding();
    if (binding.currency().isEmpty()) {
      binding.keepTo(code);
    }
    String kept = binding.currency().get();
    if (!kept.equals(code)) {
      at.wrong(
          MessageText.quoted(scalar.text()) + " is in " + code, "the file's one currency, " + kept);
    }
    return kept.equals(code);
  }

  /** A quantity that must come out whole, such as days or bales. */
  static int whole(NodeReader at, Dimension due, double unitInSi, int least, int standIn) {
    OptionalDouble si = optional(at, due, Range.NOT_BELOW_0);
    if (si.isEmpty()) {
      return standIn;
    }
    double count = si.getAsDouble() / unitInSi;
    if (!(Math.abs(count - Math.rint(count)) < 1e-9)) {
      at.wrong(
          at.shown() + " is not a whole number",
          due == Dimension.TIME ? "whole days, such as \"5 d\"" : due.phrase());
      return standIn;
    }
    if (!(count >= least && count <= Numbers.LARGEST)) {
      at.wrong(
          at.shown() + (count < least ? " is too few" : " is too many"),
          "from " + least + " to " + Numbers.LARGEST);
      return standIn;
    }
    return (int) Math.rint(count);
  }
}
