package hurdline.answer;

/**
 * One measure of one plant in one cell of a grid; a row of {@code grid.csv}.
 *
 * @param cell its place in the list of cells, from 0
 * @param plant the option or season plan
 * @param low95 lower end of the 95 % interval of the mean; NaN for one replication
 * @param replications how many gave the measure a value
 * @param interval which interval it is, as in {@link SummaryRow}
 */
public record GridRow(
    int cell,
    String plant,
    String measure,
    String unit,
    double mean,
    double low95,
    double high95,
    int replications,
    String interval) {}
