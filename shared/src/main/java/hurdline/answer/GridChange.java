package hurdline.answer;

/**
 * Where along the one key of a grid the best plant changes.
 *
 * @param measure in which it is the best
 * @param before the best plant below the change
 * @param after the best plant above it
 * @param at the key's value at which the mean difference of the two is 0, on a straight line
 *     between the two cells beside it
 * @param lastBefore the last cell below in which {@code before} is significantly the better; −1 for
 *     none
 * @param firstAfter the first cell above in which {@code after} is significantly the better; −1 for
 *     none
 */
public record GridChange(
    String measure, String before, String after, double at, int lastBefore, int firstAfter) {}
