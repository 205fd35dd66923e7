package hurdline.plant;

import java.util.List;
import java.util.Map;

/**
 * All that is open in a plant.
 *
 * @param all each choice
 * @param never combinations that are left out
 * @param kept combinations that no statistic may leave out
 */
public record Choices(List<Choice> all, List<Combination> never, List<Combination> kept) {
  public Choices {
    all = List.copyOf(all);
    never = List.copyOf(never);
    kept = List.copyOf(kept);
  }

  /** Nothing is open. */
  public static Choices none() {
    return new Choices(List.of(), List.of(), List.of());
  }

  /**
   * Values of some choices, whatever the others are.
   *
   * @param values texts of values by the name of the choice, any of which will do
   */
  public record Combination(Map<String, List<String>> values) {
    public Combination {
      values = Map.copyOf(values);
    }

    /**
     * @param chosen text of the value of each choice by name
     */
    public boolean isMetBy(Map<String, String> chosen) {
      return values.entrySet().stream()
          .allMatch(of -> of.getValue().contains(chosen.get(of.getKey())));
    }
  }
}
