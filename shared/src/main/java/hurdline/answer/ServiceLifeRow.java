package hurdline.answer;

/**
 * What one life of an option comes to; a row a quantity of {@code service_lives.csv}.
 *
 * @param life counts from 1
 * @param netPresentValue in the file's currency
 * @param internalRate share a year, the one that agrees with the sign of the net present value; NaN
 *     where there is none above −50 %
 * @param otherRate another above −50 %, of several the lowest; NaN where there is none
 * @param simplePayback years; NaN where it never pays back or there is nothing to pay back
 * @param discountedPayback years; NaN as {@code simplePayback}
 */
public record ServiceLifeRow(
    String option,
    int life,
    double netPresentValue,
    double internalRate,
    double otherRate,
    double simplePayback,
    double discountedPayback) {}
