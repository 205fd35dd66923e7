package hurdline.answer;

/**
 * What a mill is to do on one of its screens; what it did is in the summary.
 *
 * @param option whose plant, or {@code base}
 * @param product what this screen makes, or empty
 * @param share of the mix, 0 to 1; NaN where orders choose the screen
 * @param orderedT ordered of the product, t; 0 where nothing is
 */
public record MillRow(
    String option, String mill, String screen, String product, double share, double orderedT) {}
