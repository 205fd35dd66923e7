package hurdline.answer;

/** What became of the rows of a file; the last three come to the first. */
public record RecordFileRow(String file, int rows, int used, int joined, int setAside) {}
