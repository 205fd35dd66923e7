package hurdline.answer;

/**
 * A quantile over the seasons of the most that would lie in a yard without limit; a row of {@code
 * peaks.csv}.
 *
 * @param quantile {@code p05}, {@code p50}, {@code p95} …
 * @param unit {@code bales} or {@code modules}
 * @param low95 lower end of its 95 % interval, one of the values; NaN where the seasons are too few
 *     for one
 * @param high95 its upper end
 */
public record PeakRow(
    String crop, String quantile, String unit, double value, double low95, double high95) {}
