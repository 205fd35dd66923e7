package hurdline.answer;

import java.time.LocalDate;

/**
 * What became of one order; a row of {@code orders.csv}.
 *
 * @param option {@code base} or the options that are applied
 * @param order its place by due date among those of the product, from 1
 * @param massT at the product's moisture basis
 * @param years simulated calendars
 * @param met in how many of them it was met, late or not
 * @param onTime in how many it was met by its date
 * @param onTimeLow95 lower end of the 95 % interval of the chance to be on time; NaN without one
 * @param onTimeHigh95 its upper end
 * @param metDay median day of the horizon on which it was met, from 1; NaN where it never was
 * @param lateDays mean days begun after its date
 * @param lateDays95 the same, 95 % quantile
 * @param missingT mean of what of it was not made
 * @param penalty mean of what was charged for its being late; NaN without money
 */
public record OrderRow(
    String option,
    String product,
    int order,
    double massT,
    LocalDate due,
    int years,
    int met,
    int onTime,
    double onTimeLow95,
    double onTimeHigh95,
    double metDay,
    double lateDays,
    double lateDays95,
    double missingT,
    double penalty) {}
