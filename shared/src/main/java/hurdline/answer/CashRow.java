package hurdline.answer;

/**
 * What an option has brought in by a time of its life, discounted; a row of {@code cash.csv}.
 *
 * @param year since it was paid for, 0 at the beginning; the last may lie within a year
 * @param unit the currency
 * @param p05 5 % quantile over the lives
 */
public record CashRow(
    String option, double year, String unit, double mean, double p05, double p50, double p95) {}
