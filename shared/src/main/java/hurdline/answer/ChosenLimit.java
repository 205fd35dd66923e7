package hurdline.answer;

/**
 * What limits a line longest.
 *
 * @param cause a cause word, see {@link hurdline.measure.Cause}
 * @param share mean share of the line's scheduled hours
 */
public record ChosenLimit(String line, String cause, double share) {}
