package hurdline.records;

import java.time.LocalDate;

/**
 * What was fed or made in a shift.
 *
 * @param what a crop where it was fed, else a product
 * @param count NaN where it is not known, as is {@code massKg}
 */
public record MadeRecord(
    int line,
    LocalDate date,
    String shift,
    String what,
    boolean isFed,
    double count,
    double massKg) {}
