package hurdline.answer;

import java.time.LocalDate;

/**
 * One measure in one week; a row of {@code weeks.csv}.
 *
 * @param week counts from 1
 * @param from the week's first date: the horizon's first or a Monday
 * @param p05 5 % quantile over the replications
 */
public record WeekRow(
    String option,
    int week,
    LocalDate from,
    String measure,
    String unit,
    double mean,
    double p05,
    double p50,
    double p95) {}
