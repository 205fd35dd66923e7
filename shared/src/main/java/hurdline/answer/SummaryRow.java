package hurdline.answer;

/**
 * One measure over all replications; a row of {@code summary.csv}.
 *
 * @param option {@code base} or the options that are applied
 * @param low95 lower end of the 95 % interval of the mean; NaN for one replication
 * @param high95 its upper end
 * @param sd sample standard deviation over the replications; NaN for one
 * @param p05 5 % quantile over the replications
 * @param replications how many gave the measure a value
 * @param interval which interval {@code low95} and {@code high95} are: {@code student}, {@code
 *     hall}, {@code skewed} for Student's where it holds less often than it says, {@code
 *     clopper-pearson} of a chance; {@code cut} behind it where a limit lies at a bound of the
 *     measure; empty where there is none
 */
public record SummaryRow(
    String option,
    String measure,
    String unit,
    double mean,
    double low95,
    double high95,
    double sd,
    double p05,
    double p50,
    double p95,
    double least,
    double most,
    int replications,
    String interval) {}
