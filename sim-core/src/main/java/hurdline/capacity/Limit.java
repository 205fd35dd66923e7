package hurdline.capacity;

import java.util.List;

/**
 * What a line can be fed, and what limits it.
 *
 * @param kgPerS per scheduled second; infinite where nothing limits it
 * @param machines that limit it, the one that sets the pace first; empty where a resource does
 * @param resource that limits it, else empty
 */
public record Limit(double kgPerS, List<String> machines, String resource) {
  public Limit {
    machines = List.copyOf(machines);
  }
}
