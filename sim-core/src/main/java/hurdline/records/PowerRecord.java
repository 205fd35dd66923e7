package hurdline.records;

/**
 * Energy over an interval.
 *
 * @param fromS seconds since 1970
 */
public record PowerRecord(int line, double fromS, double lengthS, double kWh) {}
