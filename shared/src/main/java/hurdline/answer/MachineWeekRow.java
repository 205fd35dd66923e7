package hurdline.answer;

/**
 * How hard a machine worked for a crop in a week, means over the replications; a row of {@code
 * machine_weeks.csv}. Weeks in which it did nothing for the crop have no row.
 *
 * @param week counts from 1
 * @param hours with flow, or for a machine alongside with its line in its hours
 * @param workedT mass that it took in
 */
public record MachineWeekRow(
    String plan, String machine, int week, String crop, double hours, double workedT) {}
