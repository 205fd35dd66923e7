package hurdline.random;

/**
 * Invariants of the distributions' constructors; each refuses NaN and names the value and its
 * bound.
 */
final class Check {
  private Check() {}

  static void finite(String name, double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(name + " is " + value + "; expected a finite number");
    }
  }

  static void above0(String name, double value) {
    finite(name, value);
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " is " + value + "; expected above 0");
    }
  }

  static void notBelow0(String name, double value) {
    finite(name, value);
    if (!(value >= 0)) {
      throw new IllegalArgumentException(name + " is " + value + "; expected 0 or above");
    }
  }

  static void inOrder(String lesser, double less, String greater, double more) {
    finite(lesser, less);
    finite(greater, more);
    if (!(less <= more)) {
      throw new IllegalArgumentException(
          lesser + " is " + less + "; expected at most " + greater + ", " + more);
    }
  }

  /** A range to cut to: either end may be infinite, and there must be something between them. */
  static void cut(double low, double high) {
    if (!(low < high)) {
      throw new IllegalArgumentException("low is " + low + "; expected below high, " + high);
    }
  }

  /** A cut that leaves nothing to draw would have to divide by nothing. */
  static void leavesSomething(double share, double low, double high) {
    if (!(share > 0)) {
      throw new IllegalArgumentException(
          "low "
              + low
              + " to high "
              + high
              + " holds none of the distribution; expected a range it can fall in");
    }
  }

  /** The fixed value that a spread of 0 leaves must itself lie in the range. */
  static void holds(double value, double low, double high) {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "mean is " + value + " with sd 0; expected inside low " + low + " to high " + high);
    }
  }

  /** The amount, or the end of the range that rounding has put it beyond. */
  static double within(double low, double amount, double high) {
    return amount < low ? low : amount > high ? high : amount;
  }
}
