package hurdline.answer;

/**
 * What a tenth more of one thing brings in one measure, from pairs of replications that met the
 * same chance; a row of {@code gain.csv}.
 *
 * @param what a machine or bin by its name, {@code resource.<r>} or {@code shift.<s>}
 * @param more what there is more of; not in the table
 * @param gain with more less without, mean of the pairs
 * @param low95 lower end of the interval that holds together with those of all other things in this
 *     measure with 95 % confidence
 * @param high95 its upper end
 * @param interval which interval it is, as in {@link SummaryRow}
 * @param significant whether that interval leaves 0 out
 */
public record GainRow(
    String what,
    Increase more,
    String measure,
    String unit,
    double gain,
    double low95,
    double high95,
    String interval,
    boolean significant) {}
