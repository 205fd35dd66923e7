package hurdline.fit;

import java.util.Map;

/**
 * What reaches each machine of each line for each mass that is fed, by the plant file's own shares.
 *
 * @param perFed by line, then by machine
 */
public record LineLoads(Map<String, Map<String, Double>> perFed) {
  double of(String line, String machine) {
    return perFed.getOrDefault(line, Map.of()).getOrDefault(machine, Double.NaN);
  }
}
