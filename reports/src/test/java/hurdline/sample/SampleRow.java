package hurdline.sample;

import hurdline.answer.SummaryRow;

/** A row of the base plant that is the same in all of 40 years. */
public final class SampleRow {
  private SampleRow() {}

  public static SummaryRow of(String measure, String unit, double mean) {
    return new SummaryRow(
        "base", measure, unit, mean, mean, mean, 0, mean, mean, mean, mean, mean, 40, "student");
  }
}
