package hurdline.plant;

import java.util.Map;

/**
 * Invariants of the records' constructors. Each refuses NaN and infinities and names the value and
 * its bound. A plant file never comes this far with such a value, for its reader says where it
 * stands; this is for plants made by code.
 */
final class Check {
  private Check() {}

  static void finite(String name, double value) {
    require(Math.abs(value) <= Double.MAX_VALUE, name, value, "a finite number");
  }

  static void notBelow0(String name, double value) {
    require(value >= 0 && value <= Double.MAX_VALUE, name, value, "a finite number, 0 or above");
  }

  static void above0(String name, double value) {
    require(value > 0 && value <= Double.MAX_VALUE, name, value, "a finite number above 0");
  }

  /** A factor, or a growth, that has a least value. */
  static void above(double least, String name, double value) {
    require(
        value > least && value <= Double.MAX_VALUE, name, value, "a finite number above " + least);
  }

  static void atLeast(double least, String name, double value) {
    require(
        value >= least && value <= Double.MAX_VALUE,
        name,
        value,
        "a finite number, " + least + " or above");
  }

  /** From none to all. */
  static void share(String name, double value) {
    require(value >= 0 && value <= 1, name, value, "a share from 0 to 1");
  }

  /** Above none, up to all. */
  static void someShare(String name, double value) {
    require(value > 0 && value <= 1, name, value, "a share above 0, up to 1");
  }

  /** From none to below all. */
  static void part(String name, double value) {
    require(value >= 0 && value < 1, name, value, "a share from 0 to below 1");
  }

  static void shares(String name, Map<String, Double> values) {
    values.forEach((key, value) -> share(name + " of " + key, value));
  }

  static void count(int least, String name, int value) {
    if (value < least) {
      throw new IllegalArgumentException(
          name + " is " + value + "; expected " + least + " or more");
    }
  }

  private static void require(boolean holds, String name, double value, String expected) {
    if (!holds) {
      throw new IllegalArgumentException(name + " is " + value + "; expected " + expected);
    }
  }
}
