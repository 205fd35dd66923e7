package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.plant.Change;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plants of a comparison: base and options, and the same with something more changed in both.
 */
public final class OptionPlants {
  private final PlantOrigin source;
  private final PlantChanges base;

  public OptionPlants(PlantOrigin source, PlantChanges base) {
    this.source = source;
    this.base = base;
  }

  /** The names joined in one such as {@code A+B}. */
  public static List<String> parts(String option) {
    return Arrays.stream(option.split("\\+", -1)).map(String::strip).toList();
  }

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public Plant base(Change... more) {
    return source.variants().with(changes(List.of(), more));
  }

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public Plant of(String option, Change... more) {
    return source.variants().with(changes(parts(option), more));
  }

  /** What is changed with an option, in the order in which it is applied. */
  public List<Change> changes(String option) {
    return List.of(changes(parts(option)));
  }

  private Change[] changes(List<String> names, Change... more) {
    List<Change> all = new ArrayList<>();
    names.forEach(name -> all.add(new Change.Named(name)));
    all.addAll(base.changes());
    all.addAll(List.of(more));
    return all.toArray(Change[]::new);
  }

  /** Several together cost what they cost alone and live as long as the longest. */
  public static CompareAnswer.Option joined(String option, List<Option> known) {
    List<Option> parts = joinedOf(option, known);
    return new CompareAnswer.Option(
        option,
        String.join(
            "; ", parts.stream().map(Option::says).filter(says -> !says.isEmpty()).toList()),
        parts.stream().mapToDouble(Option::cost).sum(),
        parts.stream().mapToDouble(Option::lifeYr).max().orElseThrow(),
        parts.stream().mapToDouble(Option::salvage).sum());
  }

  /** The options joined in one such as {@code A+B}. */
  static List<Option> joinedOf(String option, List<Option> known) {
    return parts(option).stream()
        .map(part -> known.stream().filter(o -> o.name().equals(part)).findFirst().orElseThrow())
        .toList();
  }
}
