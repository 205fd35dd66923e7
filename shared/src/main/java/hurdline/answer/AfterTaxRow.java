package hurdline.answer;

/**
 * A year of a purchase after its loan and tax, on average over its service lives, not discounted; a
 * row of {@code after_tax.csv}. For planning, before an accountant has looked at it.
 *
 * @param year end of the year, counted from the purchase
 * @param added to the margin in the year
 * @param salvage at the end of the life
 * @param tax below 0 where other income is taxed less
 * @param left of what is added and the salvage, less interest, repayment and tax
 */
public record AfterTaxRow(
    String option,
    double year,
    String unit,
    double added,
    double salvage,
    double interest,
    double repayment,
    double depreciation,
    double tax,
    double left) {}
