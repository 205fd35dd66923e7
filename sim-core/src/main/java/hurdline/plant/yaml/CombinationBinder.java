package hurdline.plant.yaml;

import hurdline.plant.Choice;
import hurdline.plant.Choices.Combination;
import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Level;
import hurdline.unit.QuantityException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code never} and {@code keep}: combinations of values, listed or from one to another. */
final class CombinationBinder {
  private final List<Choice> all;

  /**
   * @param all choices of the file
   */
  CombinationBinder(List<Choice> all) {
    this.all = all;
  }

  List<Combination> combinations(NodeReader at) {
    return at.list(
        "maps from the name of a choice to a value, or to a list of values", this::combination);
  }

  private Combination combination(NodeReader at) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    at.named("choice")
        .forEach(
            (name, node) -> {
              Optional<Choice> choice =
                  all.stream().filter(of -> of.name().equals(name)).findFirst();
              if (choice.isEmpty()) {
                at.key(name)
                    .wrong(
                        "there is no choice \"" + name + "\"",
                        Nearest.expected(
                            "a choice", name, all.stream().map(Choice::name).toList()));
                return;
              }
              values.put(
                  name, node.isMap() ? range(node, choice.get()) : values(node, choice.get()));
            });
    if (at.isMap() && values.isEmpty() && at.entries().orElseThrow().isEmpty()) {
      at.wrong("the combination is empty", "a map from the name of a choice to a value");
    }
    return new Combination(values);
  }

  private static List<String> texts(Choice choice) {
    return choice.values().stream().map(Choice.Value::text).toList();
  }

  private static List<String> values(NodeReader at, Choice choice) {
    List<String> known = texts(choice);
    List<NodeReader> each =
        at.tree().filter(Items.class::isInstance).isPresent() ? at.items("values") : List.of(at);
    List<String> texts = new ArrayList<>();
    for (NodeReader item : each) {
      String text = item.scalar().map(Scalar::text).orElse("");
      if (!known.contains(text) && !known.isEmpty()) {
        item.wrong(
            item.shown() + " is no value of \"" + choice.name() + "\"",
            Nearest.expected("a value", text, known));
      }
      texts.add(text);
    }
    return texts;
  }

  /** Values from one to another, both included, in whatever unit of their kind. */
  private static List<String> range(NodeReader at, Choice choice) {
    Fields f = at.fields(MapKeys.CHOICE_RANGE);
    if (!f.has("from") && !f.has("to")) {
      at.wrong("the range has no end", "\"from\", \"to\" or both");
      return List.of();
    }
    Optional<Level> from = SteppedValues.level(f.at("from"));
    Optional<Level> to = SteppedValues.level(f.at("to"));
    if (f.has("from") && from.isEmpty() || f.has("to") && to.isEmpty()) {
      return List.of();
    }
    List<String> inside = new ArrayList<>();
    for (String text : texts(choice)) {
      OptionalDouble overFrom = over(text, from);
      OptionalDouble overTo = over(text, to);
      if (overFrom.isEmpty() || overTo.isEmpty()) {
        at.wrong(
            "the values of \"" + choice.name() + "\" do not compare with the range",
            "amounts of one kind, or a list of values");
        return List.of();
      }
      boolean fromOn = from.isEmpty() || overFrom.getAsDouble() >= 0;
      if (fromOn && (to.isEmpty() || overTo.getAsDouble() <= 0)) {
        inside.add(text);
      }
    }
    if (inside.isEmpty() && !choice.values().isEmpty()) {
      at.wrong(
          "no value of \"" + choice.name() + "\" lies in the range",
          "one that holds some of " + String.join(", ", texts(choice)));
    }
    return inside;
  }

  /** What a value has beyond an end, 0 beyond none; empty where they are not of one kind. */
  private static OptionalDouble over(String text, Optional<Level> end) {
    try {
      return end.isEmpty() ? OptionalDouble.of(0) : ChoicePrice.over(Level.read(text), end.get());
    } catch (QuantityException noAmount) {
      return OptionalDouble.empty();
    }
  }
}
