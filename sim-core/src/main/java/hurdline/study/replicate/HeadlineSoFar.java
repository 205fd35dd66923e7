package hurdline.study.replicate;

/**
 * What the replications done so far say of one figure.
 *
 * @param label what it is, a few words
 * @param unit of the engine, such as {@code t}
 * @param low95 NaN where too few are done
 */
public record HeadlineSoFar(String label, String unit, double mean, double low95, double high95) {
  /** Where too few replications are done to say anything. */
  public static HeadlineSoFar unknown() {
    return new HeadlineSoFar("", "", Double.NaN, Double.NaN, Double.NaN);
  }
}
