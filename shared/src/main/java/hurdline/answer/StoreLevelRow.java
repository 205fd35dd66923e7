package hurdline.answer;

import java.time.LocalDate;

/**
 * The most that lay in a store of products on a date; a row of {@code store_levels.csv}.
 *
 * @param store a store's name
 * @param mean as-is mass over the replications
 * @param p05 5 % quantile over the replications
 */
public record StoreLevelRow(
    String option, LocalDate date, String store, double mean, double p05, double p50, double p95) {}
