package hurdline.plant;

import java.util.List;

/**
 * Something that jobs hold while they last.
 *
 * @param count how many there are, 0 or more
 * @param first kinds of job ({@code unload}, {@code change} …) or {@code machine.stop}, served in
 *     this order before all others
 */
public record Resource(String name, int count, List<String> first) {
  public Resource {
    Check.count(0, "count", count);
    first = List.copyOf(first);
  }
}
