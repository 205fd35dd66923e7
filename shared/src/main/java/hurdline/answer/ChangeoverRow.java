package hurdline.answer;

import java.time.LocalDate;

/**
 * What a plan would gain without one of its changeovers, the campaign before it running on through
 * its days; a row of {@code changeovers.csv}.
 *
 * @param from first date of the changeover
 * @param to its last date
 * @param worth mean of the margin without it less the margin with it
 * @param low95 lower end of the interval that holds together with those of all other rows
 * @param interval which interval it is, as in {@link SummaryRow}
 */
public record ChangeoverRow(
    String plan,
    LocalDate from,
    LocalDate to,
    String unit,
    double worth,
    double low95,
    double high95,
    String interval,
    boolean significant) {}
