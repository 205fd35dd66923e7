package hurdline.records;

import java.util.Map;

/**
 * Energy over an interval.
 *
 * @param fromS seconds since 1970
 * @param machineKWh by machine, of those with a meter of their own that was read
 */
public record PowerRecord(
    int line, double fromS, double lengthS, double kWh, Map<String, Double> machineKWh) {
  public PowerRecord {
    machineKWh = Map.copyOf(machineKWh);
  }

  /** The middle of the interval, seconds since 1970. */
  public double middleS() {
    return fromS + lengthS / 2;
  }
}
