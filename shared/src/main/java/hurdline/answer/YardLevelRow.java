package hurdline.answer;

import java.time.LocalDate;

/**
 * The most that lay in the yard on a date; a row of {@code yard_levels.csv}.
 *
 * @param place a place's name, or {@code *} for all places together
 * @param unit {@code bales} or {@code modules}
 * @param p05 5 % quantile over the replications
 */
public record YardLevelRow(
    String option,
    LocalDate date,
    String crop,
    String place,
    String unit,
    double mean,
    double p05,
    double p50,
    double p95) {
  /** Whether this is the level of all places together. */
  public boolean isWholeYard() {
    return place.equals("*");
  }
}
