package hurdline.answer;

/**
 * A reason given for rows of a file.
 *
 * @param reason without what differs from row to row
 * @param exampleLine of the first such row
 * @param example its reason in full
 */
public record RecordReasonRow(
    String file, String verdict, int rows, String reason, int exampleLine, String example) {}
