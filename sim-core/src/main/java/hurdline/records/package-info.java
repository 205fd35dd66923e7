/**
 * A plant's own records, read: stops, shifts, scale tickets, what was made, yard counts, power,
 * bills, rain.
 *
 * <p>Start with {@link hurdline.records.RecordsFolder}: it reads what lies in a folder into {@link
 * hurdline.records.Records}, with an {@link hurdline.records.Account} that has one line for every
 * row. A row is used, joined to another or set aside, always with its line number and reason;
 * nothing is mended by guess. The rules are those of {@code line-configs/RECORDS.md}. Nothing here
 * fits or simulates anything.
 */
package hurdline.records;
