package hurdline.spark;

import hurdline.plant.Change;
import hurdline.plant.InputDraws;
import hurdline.plant.PlantTexts;
import hurdline.study.choose.ChoiceChange;
import hurdline.study.choose.PlanRecipe;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plant and how its plans are made and simulated, as texts and numbers that can travel.
 *
 * @param id of one choosing, so that a machine makes the plant once
 * @param changes the name of an option or plan alone, or path and value of a key
 * @param narrowed name of a choice, then its values
 * @param draws where they come from alone, then the keys, then each row; empty for none
 */
record WorkText(
    String id,
    String name,
    String text,
    Map<String, String> rain,
    long seed,
    List<List<String>> changes,
    List<List<String>> narrowed,
    List<String> measures,
    List<List<String>> draws)
    implements Serializable {

  static WorkText of(String id, PlantTexts plant, PlanRecipe recipe) {
    return new WorkText(
        id,
        plant.name(),
        plant.text(),
        new LinkedHashMap<>(plant.rain()),
        recipe.seed(),
        new ArrayList<>(recipe.before().stream().map(WorkText::words).toList()),
        new ArrayList<>(recipe.narrowed().stream().map(WorkText::words).toList()),
        new ArrayList<>(recipe.measures()),
        new ArrayList<>(recipe.draws().map(WorkText::words).orElse(List.of())));
  }

  private static List<List<String>> words(InputDraws draws) {
    List<List<String>> words = new ArrayList<>(List.of(List.of(draws.said()), draws.keys()));
    words.addAll(draws.rows());
    return words;
  }

  private static List<String> words(Change change) {
    if (change instanceof Change.Value value) {
      return List.of(value.path(), value.value());
    }
    return List.of(((Change.Named) change).name());
  }

  private static List<String> words(ChoiceChange change) {
    List<String> words = new ArrayList<>(List.of(change.name()));
    words.addAll(change.values());
    return List.copyOf(words);
  }

  PlantTexts plant() {
    return new PlantTexts(name, text, rain);
  }

  PlanRecipe recipe() {
    return new PlanRecipe(
        seed,
        changes.stream().map(WorkText::change).toList(),
        narrowed.stream()
            .map(words -> new ChoiceChange(words.get(0), words.subList(1, words.size())))
            .toList(),
        measures,
        draws.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new InputDraws(draws.get(0).get(0), draws.get(1), draws.subList(2, draws.size()))));
  }

  private static Change change(List<String> words) {
    return words.size() == 1
        ? new Change.Named(words.get(0))
        : new Change.Value(words.get(0), words.get(1));
  }
}
