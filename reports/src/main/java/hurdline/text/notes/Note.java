package hurdline.text.notes;

/**
 * A titled sentence of a report.
 *
 * @param title a few words: {@code Wages}
 * @param text whole sentences in plain words
 */
public record Note(String title, String text) {}
