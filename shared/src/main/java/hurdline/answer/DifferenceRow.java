package hurdline.answer;

/**
 * How far an option lies from the base in one measure, from pairs of replications that met the same
 * chance; a row of {@code differences.csv}.
 *
 * @param difference option less base, mean of the pairs
 * @param low95 lower end of the difference's own 95 % interval
 * @param lowJoint lower end of the interval that holds together with those of the other options
 * @param interval which interval both are, as in {@link SummaryRow}
 * @param significant whether the joint interval leaves 0 out
 * @param replicationsNeeded how many it would take to tell them apart; NaN where none would
 * @param varianceRemoved share of the variance that pairing took away; NaN where nothing varies
 * @param replications in which both have a value; all other figures of the row rest on these alone
 */
public record DifferenceRow(
    String option,
    String measure,
    String unit,
    double baseMean,
    double optionMean,
    double difference,
    double low95,
    double high95,
    double lowJoint,
    double highJoint,
    String interval,
    boolean significant,
    double replicationsNeeded,
    double varianceRemoved,
    int replications) {}
