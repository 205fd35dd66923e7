package hurdline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Figures that were compared, by what they were compared for, and those that do not agree. */
final class Ledger {
  /** As a share of a figure: what a hundred thousand additions may be off by. */
  private static final double ROUNDING = 1e-9;

  /** What two figures near 0 may differ by, in the unit of the table. */
  private static final double NEAR_ZERO = 1e-7;

  private static final int MISMATCHES_LISTED = 20;

  private final Map<String, Integer> compared = new TreeMap<>();
  private final List<String> mismatches = new ArrayList<>();

  /** Two figures that are one but for rounding; two that are not defined agree. */
  void near(String what, Object where, double expected, double written) {
    near(what, where, expected, written, ROUNDING * Math.abs(expected));
  }

  /**
   * @param slack what they may differ by, in their unit: a share of what was added up
   */
  void near(String what, Object where, double expected, double written, double slack) {
    boolean agree =
        Double.isNaN(expected)
            ? Double.isNaN(written)
            : Math.abs(expected - written) <= Math.max(slack, NEAR_ZERO);
    book(what, where, agree, expected, written);
  }

  void same(String what, Object where, Object expected, Object written) {
    book(what, where, expected.equals(written), expected, written);
  }

  /** A figure between two others, rounding aside. */
  void between(String what, Object where, double low, double written, double high) {
    double slack = Math.max(NEAR_ZERO, ROUNDING * Math.abs(written));
    book(
        what,
        where,
        low - slack <= written && written <= high + slack,
        low + " to " + high,
        written);
  }

  private void book(String what, Object where, boolean agree, Object expected, Object written) {
    compared.merge(what, 1, Integer::sum);
    if (!agree) {
      mismatches.add(what + ": " + where + " is " + written + ", recomputed " + expected);
    }
  }

  /** Takes over all that another has. */
  void add(Ledger other) {
    other.compared.forEach((what, count) -> compared.merge(what, count, Integer::sum));
    mismatches.addAll(other.mismatches);
  }

  int compared(String what) {
    return compared.getOrDefault(what, 0);
  }

  int comparedInAll() {
    return compared.values().stream().mapToInt(Integer::intValue).sum();
  }

  Map<String, Integer> counts() {
    return compared;
  }

  List<String> mismatches() {
    return mismatches;
  }

  /** Those that a reader can take in. */
  String listed() {
    return mismatches.size()
        + " of "
        + comparedInAll()
        + " figures do not agree:\n"
        + String.join("\n", mismatches.subList(0, Math.min(MISMATCHES_LISTED, mismatches.size())));
  }
}
