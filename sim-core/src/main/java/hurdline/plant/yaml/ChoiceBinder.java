package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
import hurdline.plant.Nearest;
import hurdline.plant.Option;
import hurdline.plant.Plan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.unit.Counted;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Reads what is open in a plant: choices, and combinations of their values. */
final class ChoiceBinder {
  private static final List<String> KINDS = List.of("key", "keys", "plan", "option");
  private static final Set<String> NOT_OPEN = Set.of("hurdline", "options", "plans", "choices");
  private static final String BASE = "base";
  private static final double USUAL_LIFE_YR = 10;

  private final Optional<Tree> tree; // empty where a whole section is missing, which is said once
  private final Plant plant;

  private ChoiceBinder(Optional<Tree> tree, Plant plant) {
    this.tree = tree;
    this.plant = plant;
  }

  /**
   * @param tree the plant's, read by this binding
   * @param plant what was bound of it
   */
  static Choices choices(Tree tree, Plant plant, Binding binding) {
    NodeReader at = NodeReader.top(tree, binding).child("choices");
    Optional<Tree> meant =
        BoundPlant.lacksASection(binding.findings())
            ? Optional.empty()
            : Optional.of(binding.misspellings().corrected(tree));
    ChoiceBinder binder = new ChoiceBinder(meant, plant);
    List<Choice> all = new ArrayList<>();
    at.named("choice")
        .forEach(
            (name, node) -> {
              if (!name.equals("never") && !name.equals("keep")) {
                all.add(binder.choice(name, node));
              }
            });
    if (!at.isMap()) {
      return Choices.none();
    }
    CombinationBinder of = new CombinationBinder(all);
    return new Choices(all, of.combinations(at.child("never")), of.combinations(at.child("keep")));
  }

  private Choice choice(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.CHOICE);
    List<String> given = KINDS.stream().filter(f::has).toList();
    if (at.isMap() && given.size() != 1) {
      at.wrong(
          given.isEmpty()
              ? "it does not say what is chosen"
              : "it says " + String.join(" and ", given),
          "exactly one of " + String.join(", ", KINDS));
    }
    if (given.size() != 1) {
      return new Choice(name, Choice.Kind.KEY, List.of());
    }
    List<Choice.Value> values =
        switch (given.get(0)) {
          case "plan" -> named(f, "plan", plant.plans().stream().map(Plan::name).toList());
          case "option" -> named(f, "option", plant.options().stream().map(Option::name).toList());
          default -> keyed(f);
        };
    refuseTwice(values, at);
    Choice.Kind kind =
        given.get(0).startsWith("key")
            ? Choice.Kind.KEY
            : f.has("plan") ? Choice.Kind.PLAN : Choice.Kind.OPTION;
    return new Choice(name, kind, values);
  }

  private static void refuseTwice(List<Choice.Value> values, NodeReader at) {
    Set<String> met = new HashSet<>();
    values.stream()
        .map(Choice.Value::text)
        .filter(text -> !met.add(text.replaceAll("\\s", "")))
        .findFirst()
        .ifPresent(text -> at.wrong("it has \"" + text + "\" twice", "each value once"));
  }

  /** Plans or options of the file; {@code base} is neither. */
  private List<Choice.Value> named(Fields f, String kind, List<String> known) {
    for (String key : List.of("values", "from", "to", "step")) {
      if (f.has(key)) {
        f.at(key).wrong("names under \"" + kind + "\" are the values", "no \"" + key + "\" here");
      }
    }
    List<String> texts = new ArrayList<>();
    for (NodeReader item : f.at(kind).items("names")) {
      String text = Words.name(item, "a " + kind);
      for (String name : text.split("\\+", -1)) {
        if (!name.strip().equals(BASE) && !known.contains(name.strip())) {
          item.wrong(
              "\"" + name.strip() + "\" is no " + kind + " of this file",
              Nearest.expected("base or the name of one", name.strip(), known));
        }
      }
      texts.add(text);
    }
    List<List<Choice.Purchase>> own = texts.stream().map(this::ofOptions).toList();
    return valued(f, texts, texts.stream().map(ChoiceBinder::ofName).toList(), own);
  }

  private static List<Change> ofName(String name) {
    return name.equals(BASE) ? List.of() : List.of(new Change.Named(name));
  }

  /** An option is bought at its own cost where none is said. */
  private List<Choice.Purchase> ofOptions(String text) {
    List<String> names = Stream.of(text.split("\\+", -1)).map(String::strip).toList();
    return plant.options().stream()
        .filter(option -> names.contains(option.name()))
        .filter(option -> option.cost() != 0 || option.salvage() != 0)
        .map(option -> new Choice.Purchase(option.cost(), option.lifeYr(), option.salvage()))
        .toList();
  }

  /** Values of one key or of several. */
  private List<Choice.Value> keyed(Fields f) {
    List<NodeReader> paths =
        f.has("key") ? List.of(f.at("key")) : f.at("keys").items("paths of keys");
    List<String> keys = paths.stream().map(path -> Words.name(path, "a key")).toList();
    boolean isOpen = true;
    for (int at = 0; at < keys.size(); at++) {
      String first = keys.get(at).split("\\.", 2)[0];
      if (NOT_OPEN.contains(first)) {
        paths.get(at).wrong("\"" + first + "\" cannot be chosen", "a key of the plant itself");
        isOpen = false;
      }
    }
    boolean stepped = Stream.of("from", "to", "step").anyMatch(f::has);
    if (f.has("values") == stepped) {
      f.here()
          .wrong(
              stepped ? "it has both values and steps" : "it has no values",
              "either \"values\", or \"from\", \"to\" and \"step\"");
      return List.of();
    }
    if (stepped) {
      Stream.of("from", "to", "step").filter(key -> !f.has(key)).forEach(f::missing);
    }
    List<String> texts = new ArrayList<>();
    List<List<Change>> changes = new ArrayList<>();
    if (stepped) {
      for (String text : SteppedValues.of(f.at("from"), f.at("to"), f.at("step"))) {
        texts.add(text);
        changes.add(keys.stream().map(key -> (Change) new Change.Value(key, text)).toList());
      }
    } else {
      for (NodeReader item : f.at("values").items("values")) {
        read(item, keys)
            .ifPresent(
                each -> {
                  texts.add(
                      String.join(
                          ", ",
                          each.stream().distinct().toList().size() == 1
                              ? each.subList(0, 1)
                              : each));
                  List<Change> made = new ArrayList<>();
                  for (int key = 0; key < keys.size(); key++) {
                    made.add(new Change.Value(keys.get(key), each.get(key)));
                  }
                  changes.add(made);
                });
      }
    }
    if (isOpen
        && tree.isPresent()
        && !f.at("values").binding().findings().covers(f.here().path())) {
      changes.forEach(made -> tryOn(made, f.here()));
    }
    return valued(
        f, texts, changes, texts.stream().map(text -> List.<Choice.Purchase>of()).toList());
  }

  /** One value for all keys, or a list with one for each. */
  private static Optional<List<String>> read(NodeReader item, List<String> keys) {
    if (item.scalar().isPresent()) {
      String text = item.scalar().get().text();
      return Optional.of(keys.stream().map(key -> text).toList());
    }
    if (item.tree().filter(Items.class::isInstance).isPresent()) {
      List<String> each =
          item.items("values").stream()
              .map(value -> value.scalar().map(Scalar::text).orElse(""))
              .toList();
      if (each.size() == keys.size() && each.stream().noneMatch(String::isEmpty)) {
        return Optional.of(each);
      }
    }
    item.wrong(
        item.shown() + " is no value",
        keys.size() == 1 ? "one value" : "one value for all keys, or a list of " + keys.size());
    return Optional.empty();
  }

  /** What the plant's tree cannot take; whether a plant comes of it shows when it is chosen. */
  private void tryOn(List<Change> changes, NodeReader at) {
    try {
      Tree changed = tree.orElseThrow();
      for (Change change : changes) {
        changed = ValueChange.apply(changed, (Change.Value) change);
      }
    } catch (UnreadableException wrong) {
      at.wrong(wrong.finding().problem().said(), wrong.finding().problem().expected());
    }
  }

  private static List<Choice.Value> valued(
      Fields f, List<String> texts, List<List<Change>> changes, List<List<Choice.Purchase>> own) {
    List<Double> costs = f.has("cost") ? ChoicePrice.costs(f.at("cost"), texts) : List.of();
    boolean manyLives = f.at("life").tree().filter(Items.class::isInstance).isPresent();
    List<Double> lives =
        (manyLives ? f.at("life").items("lives") : List.of(f.at("life")))
            .stream().map(ChoiceBinder::lifeYr).toList();
    if (f.has("cost") && costs.size() != texts.size()) {
      return List.of(); // which is said
    }
    if (manyLives && lives.size() != texts.size()) {
      f.at("life")
          .wrong(
              "it has "
                  + Counted.of(lives.size(), "life")
                  + " and "
                  + Counted.of(texts.size(), "value"),
              "one for each");
      return List.of();
    }
    List<Choice.Value> values = new ArrayList<>();
    for (int at = 0; at < texts.size(); at++) {
      double lifeYr = lives.get(manyLives ? at : 0);
      List<Choice.Purchase> purchases = own.get(at);
      if (f.has("cost")) {
        double cost = costs.get(at);
        purchases = cost == 0 ? List.of() : List.of(new Choice.Purchase(cost, lifeYr, 0));
      }
      values.add(new Choice.Value(texts.get(at), changes.get(at), purchases));
    }
    return values;
  }

  private static double lifeYr(NodeReader at) {
    OptionalDouble lifeS = Quantities.optional(at, Dimension.TIME, Range.ABOVE_0);
    return lifeS.isPresent() ? lifeS.getAsDouble() / FileUnit.YEAR.inSi() : USUAL_LIFE_YR;
  }
}
