package hurdline.capacity;

import java.util.Set;

/**
 * What is taken not to limit a line.
 *
 * @param machines by name: without a rate, stops, package changes and screen changes
 * @param resources by name: as many as are asked for
 * @param lifts whether bales are on the table at once
 */
public record Freed(Set<String> machines, Set<String> resources, boolean lifts) {
  public Freed {
    machines = Set.copyOf(machines);
    resources = Set.copyOf(resources);
  }

  public static Freed nothing() {
    return new Freed(Set.of(), Set.of(), false);
  }

  public static Freed machines(Set<String> machines) {
    return new Freed(machines, Set.of(), false);
  }

  public static Freed resource(String resource) {
    return new Freed(Set.of(), Set.of(resource), false);
  }

  public static Freed ofLifts() {
    return new Freed(Set.of(), Set.of(), true);
  }
}
