package hurdline.study.choose;

/**
 * What a cluster has.
 *
 * @param address as the call names it
 * @param cores that simulate at once
 */
public record ClusterSize(String address, int cores) {}
