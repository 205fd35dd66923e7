package hurdline.records;

import java.time.LocalDate;

/**
 * A value of a day: bales counted in a yard, millimetres of rain, kWh of a month (its first day).
 *
 * @param what place or crop; empty where there is none
 */
public record DayRecord(int line, LocalDate date, String what, double value) {}
