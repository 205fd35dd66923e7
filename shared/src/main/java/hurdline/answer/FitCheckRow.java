package hurdline.answer;

/**
 * Something that the records say and the file does not have as a figure of its own.
 *
 * @param what in words
 * @param said what the file comes to; NaN where it says nothing
 * @param found what the records come to
 * @param error standard error of that
 * @param note what follows
 */
public record FitCheckRow(
    String what, String unit, double said, double found, double error, int rows, String note) {}
