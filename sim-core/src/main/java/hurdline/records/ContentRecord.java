package hurdline.records;

import java.time.LocalDate;

/**
 * What was found in a bin or in a store of finished goods on the morning of a day.
 *
 * @param product that lies in the store; empty for a bin
 * @param amount level in the unit of the bin's {@code holds}, or packages
 */
public record ContentRecord(
    int line, LocalDate date, String place, String product, double amount) {}
