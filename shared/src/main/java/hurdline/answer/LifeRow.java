package hurdline.answer;

/**
 * What one life of an option comes to; a row a quantity of {@code lives.csv}.
 *
 * @param life counts from 1; its first year is that replication, each further year the next
 * @param netPresentValue in the file's currency
 * @param internalRate share a year; NaN where there is none or there are several
 * @param simplePayback years; NaN where it never pays back or there is nothing to pay back
 * @param discountedPayback years; NaN as {@code simplePayback}
 */
public record LifeRow(
    String option,
    int life,
    double netPresentValue,
    double internalRate,
    double simplePayback,
    double discountedPayback) {}
