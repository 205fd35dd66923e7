package hurdline.answer;

/**
 * One measure in one calendar month; a row of {@code months.csv}.
 *
 * @param month {@code 2027-01}
 * @param p05 5 % quantile over the replications
 */
public record MonthRow(
    String option,
    String month,
    String measure,
    String unit,
    double mean,
    double p05,
    double p50,
    double p95) {}
