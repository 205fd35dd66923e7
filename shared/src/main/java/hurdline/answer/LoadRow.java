package hurdline.answer;

import java.time.LocalDate;

/**
 * A load of the first season as it was weighed in, a row of {@code loads.csv}: what growers are
 * paid by.
 *
 * @param clock time of day, {@code 07:42}
 * @param field that it came from; empty where it came by itself
 * @param bales in the crop's unit of count
 * @param weightT as-is
 * @param moisture water over weight
 * @param dryT dry matter
 */
public record LoadRow(
    LocalDate date,
    String clock,
    String field,
    int bales,
    double weightT,
    double moisture,
    double dryT) {}
