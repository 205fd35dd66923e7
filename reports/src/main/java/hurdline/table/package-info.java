/**
 * Answers as files that other programs read: tidy CSV tables, JSON both ways, and the folder that
 * holds them.
 *
 * <p>Read {@link hurdline.table.RunTables} first: columns are fixed and shared with the verbs to
 * come. Numbers are written in full, so that they read back as the same double, and in the record's
 * units whatever the page shows; a cell is empty where a value is not defined. {@link
 * hurdline.table.RecordFile} keeps summary and series, from which the page can be made again byte
 * for byte.
 *
 * <p>No wording, no rounding, no picture lives here. May use {@code hurdline.measure} and {@code
 * hurdline.answer}, commons-csv and Gson.
 */
package hurdline.table;
