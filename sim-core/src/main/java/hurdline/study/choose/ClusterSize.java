package hurdline.study.choose;

/**
 * What a cluster has.
 *
 * @param address as the call names it
 * @param cores that simulate at once
 * @param secondsAYear how long a year of the plant as it stands took on one of them, the quickest
 *     of its first few
 */
public record ClusterSize(String address, int cores, double secondsAYear) {}
