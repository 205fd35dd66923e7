package hurdline.records;

import hurdline.records.Spans.Span;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was fed or made in a shift.
 *
 * @param what a crop where it was fed, else a product
 * @param when within the shift; empty where the row does not say
 * @param count NaN where it is not known, as is {@code massKg}
 */
public record MadeRecord(
    int line,
    LocalDate date,
    String shift,
    String what,
    boolean isFed,
    Optional<Span> when,
    double count,
    double massKg) {}
