package hurdline.plant.yaml;

import hurdline.plant.Bale;
import hurdline.plant.Component;
import hurdline.plant.Crop;
import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.unit.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads components, crops and what a field says of its bales. */
final class CropBinder {
  private static final Bale USUAL_BALE =
      new Bale(
          new Constant(1),
          new Constant(0.12),
          Optional.empty(),
          Map.of(),
          Map.of(),
          0,
          Optional.empty());
  private static final List<String> USUAL = List.of("long_fiber", "short_fiber", "hurd", "fines");

  private final NodeReader crops;
  private final Map<String, Crop> bound = new HashMap<>();

  /**
   * @param crops the section of all of them, since a form has from its crop what it does not say
   */
  CropBinder(NodeReader crops) {
    this.crops = crops;
  }

  static List<Component> components(NodeReader at) {
    if (!at.isGiven()) {
      return USUAL.stream().map(name -> new Component(name, OptionalDouble.empty())).toList();
    }
    if (at.isMap()) {
      return at.each("component", CropBinder::component);
    }
    List<Component> found = new ArrayList<>();
    for (NodeReader item : at.items("names of components")) {
      once(found, item, Words.name(item, "a component"));
    }
    if (found.isEmpty()) {
      at.wrong("there is no component", "a list of names, or a map from names to loose densities");
    }
    return found;
  }

  private static Component component(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.COMPONENT);
    return new Component(
        name, Quantities.whereGiven(f.at("bulk_density"), Dimension.DENSITY, Range.ABOVE_0));
  }

  private static void once(List<Component> found, NodeReader item, String name) {
    if (found.stream().anyMatch(component -> component.name().equals(name))) {
      item.wrong(item.shown() + " stands here twice", "each component once");
    } else if (NodeReader.isName(name)) {
      found.add(new Component(name, OptionalDouble.empty()));
    } else if (item.scalar().isPresent()) {
      item.wrong(item.shown() + " cannot be a name", "letters, digits, _ and -, up to 60 of them");
    }
  }

  /** Whether some crop is a form of another. */
  boolean hasForms() {
    return crops.isMap()
        && crops.entries().orElseThrow().keySet().stream()
            .map(crops::child)
            .anyMatch(crop -> crop.isMap() && crop.child("form_of").isGiven());
  }

  Crop crop(String name, NodeReader at) {
    Crop known = bound.get(name);
    if (known == null) {
      known = bind(name, at);
      bound.put(name, known);
    }
    return known;
  }

  private Crop bind(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.CROP);
    if (at.isMap() && !f.has("bale") && !f.has("module")) {
      at.wrong(
          "it has neither \"bale\" nor \"module\"",
          "what a bale is like, such as \"bale: {mass: 1050 lb}\"");
    }
    if (at.isMap() && !f.has("form_of")) {
      f.require("composition");
    }
    boolean modules = f.has("module");
    double dampFrom =
        Quantities.of(
            f.at("damp_from"), Dimension.SHARE, Range.PART, Crop.usuallyDampFrom(modules));
    Optional<String> formOf =
        f.has("form_of") ? Optional.of(Words.name(f.at("form_of"), "a crop")) : Optional.empty();
    Bale usual = formOf.flatMap(this::baleOf).orElse(USUAL_BALE);
    return new Crop(name, modules, bale(f, usual), dampFrom, formOf);
  }

  /** What the bales of a crop are like, where the file has it and it is no form. */
  private Optional<Bale> baleOf(String crop) {
    NodeReader at = crops.child(crop);
    return at.isMap() && !at.child("form_of").isGiven()
        ? Optional.of(crop(crop, at).bale().ofAnySize())
        : Optional.empty();
  }

  /** A bale; what the map does not say is as usual. */
  static Bale bale(Fields f, Bale usual) {
    if (f.has("bale") && f.has("module")) {
      f.at("module")
          .wrong("it has a \"bale\" and a \"module\"", "the one that the crop is counted in");
    }
    NodeReader unit = f.has("bale") ? f.at("bale") : f.at("module");
    Distribution massKg =
        RandomQuantityReader.optional(
                unit.fields(MapKeys.BALE).at("mass"), Dimension.MASS, Range.ABOVE_0)
            .orElse(usual.massKg());
    Distribution moisture =
        RandomQuantityReader.optional(f.at("moisture"), Dimension.SHARE, Range.PART)
            .orElse(usual.moisture());
    Optional<Distribution> diameter =
        RandomQuantityReader.optional(f.at("diameter"), Dimension.LENGTH, Range.ABOVE_0)
            .or(usual::diameterM);
    Map<String, Distribution> attributes = new LinkedHashMap<>(usual.attributes());
    f.at("attributes")
        .named("attribute")
        .forEach(
            (name, at) ->
                attributes.put(name, RandomQuantityReader.of(at, Dimension.SHARE, Range.SHARE, 0)));
    Map<String, Double> composition =
        f.has("composition") ? shares(f.at("composition"), "component") : usual.composition();
    double spread =
        Quantities.of(f.at("composition_cv"), Dimension.SHARE, Range.SHARE, usual.spread());
    return new Bale(
        massKg, moisture, diameter, attributes, composition, spread, size(unit).or(usual::size));
  }

  /** All measures of a square or of a round one, or none. */
  private static Optional<Bale.Size> size(NodeReader at) {
    Fields f = at.fields(MapKeys.BALE);
    boolean round = f.has("diameter") || f.has("width");
    List<String> keys = round ? List.of("width", "diameter") : List.of("long", "wide", "high");
    if (round && (f.has("long") || f.has("wide") || f.has("high"))) {
      at.wrong(
          "the measures of a square and of a round one",
          "\"diameter\" and \"width\", or \"long\", \"wide\" and \"high\"");
    }
    List<String> missing = keys.stream().filter(key -> !f.has(key)).toList();
    if (missing.size() == keys.size()) {
      return Optional.empty();
    }
    if (!missing.isEmpty()) {
      at.wrong(
          "a part of its measures is missing: " + String.join(", ", missing),
          round
              ? "both or none, such as \"diameter: 5 ft, width: 4 ft\""
              : "all three or none, such as \"long: 8 ft, wide: 4 ft, high: 3 ft\"");
    }
    double[] m =
        keys.stream()
            .mapToDouble(key -> Quantities.of(f.at(key), Dimension.LENGTH, Range.ABOVE_0, 1))
            .toArray();
    return Optional.of(new Bale.Size(m[0], m[1], round ? m[1] : m[2], round));
  }

  /** Shares by name. */
  static Map<String, Double> shares(NodeReader at, String kind) {
    Map<String, Double> shares = new LinkedHashMap<>();
    at.named(kind)
        .forEach(
            (name, entry) ->
                shares.put(name, Quantities.of(entry, Dimension.SHARE, Range.SHARE, 0)));
    return shares;
  }
}
