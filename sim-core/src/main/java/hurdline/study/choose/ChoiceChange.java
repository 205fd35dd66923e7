package hurdline.study.choose;

import java.util.List;

/**
 * A choice of the call.
 *
 * @param name of a choice of the file, or the path of a key
 * @param values texts of the values that are left, or of those of the key; at least one
 */
public record ChoiceChange(String name, List<String> values) {
  public ChoiceChange {
    values = List.copyOf(values);
  }
}
