package hurdline.answer;

import java.util.List;

/**
 * Something that was open.
 *
 * @param name of the choice in the plant file, or the path of its key
 * @param kind {@code key}, {@code plan} or {@code option}
 * @param values texts of its values
 */
public record ChoiceRange(String name, String kind, List<String> values) {
  public ChoiceRange {
    values = List.copyOf(values);
  }
}
