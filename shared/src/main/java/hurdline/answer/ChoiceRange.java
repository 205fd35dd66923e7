package hurdline.answer;

import java.util.List;

/**
 * Something that was open.
 *
 * @param name of the choice in the plant file, or the path of its key
 * @param values texts of its values
 */
public record ChoiceRange(String name, List<String> values) {
  public ChoiceRange {
    values = List.copyOf(values);
  }
}
