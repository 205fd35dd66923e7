package hurdline.answer;

/**
 * What became of a row of the records.
 *
 * @param verdict {@code used}, {@code joined} or {@code set aside}
 * @param whatFor the figures it serves
 * @param why what is to be said of it; empty where it is plain
 */
public record RecordRow(String file, int line, String verdict, String whatFor, String why) {}
