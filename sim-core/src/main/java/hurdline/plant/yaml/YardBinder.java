package hurdline.plant.yaml;

import hurdline.plant.Crop;
import hurdline.plant.Job;
import hurdline.plant.Yard;
import hurdline.plant.Yard.Climate;
import hurdline.plant.Yard.Cover;
import hurdline.plant.Yard.Lift;
import hurdline.plant.Yard.Limits;
import hurdline.plant.Yard.Pick;
import hurdline.plant.Yard.Place;
import hurdline.plant.Yard.Stack;
import hurdline.random.Constant;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the yard. */
final class YardBinder {
  private static final double USUAL_LIFE_YR = 10;
  private static final Map<String, Pick> PICKS = picks();
  private static final Map<String, Boolean> FULL =
      Map.of("hold-at-field", false, "turn-away", true);

  private final List<Crop> crops;

  YardBinder(List<Crop> crops) {
    this.crops = crops;
  }

  private static Map<String, Pick> picks() {
    Map<String, Pick> picks = new LinkedHashMap<>();
    picks.put("oldest-first", new Yard.OldestFirst());
    picks.put("newest-first", new Yard.NewestFirst());
    picks.put("driest-first", new Yard.DriestFirst());
    return picks;
  }

  Yard yard(NodeReader at) {
    Fields f = at.fields(MapKeys.YARD);
    Map<String, Integer> onHand = new LinkedHashMap<>();
    f.at("on_hand")
        .named("crop")
        .forEach(
            (crop, bales) -> onHand.put(crop, Quantities.whole(bales, Dimension.BALES, 1, 0, 0)));
    List<Place> places = f.at("places").each("place", YardBinder::place);
    if (f.at("places").isMap() && places.isEmpty()) {
      f.at("places")
          .wrong("the yard has no place", "at least one, such as \"shed: {holds: 1200 bales}\"");
    }
    return new Yard(
        onHand,
        places,
        pick(f.at("pick")),
        Words.choice(f.at("when_full"), FULL, false),
        decay(f.at("field_loss")),
        lifts(f.at("lift")));
  }

  private static Place place(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.YARD_PLACE);
    int holds = Quantities.whole(f.at("holds"), Dimension.BALES, 1, 0, 0);
    return new Place(
        name,
        holds,
        decay(f.at("loss")),
        Words.names(f.at("crops"), "a crop"),
        stack(f.at("stack")),
        Quantities.of(f.at("cost"), Dimension.AREA_PRICE, Range.NOT_BELOW_0, 0),
        Quantities.of(
                f.at("life"), Dimension.TIME, Range.ABOVE_0, USUAL_LIFE_YR * FileUnit.YEAR.inSi())
            / FileUnit.YEAR.inSi(),
        climate(f.at("moisture")),
        cover(f.at("cover")),
        limits(f.at("limits")));
  }

  private static Optional<Limits> limits(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.PLACE_LIMITS);
    return Optional.of(
        new Limits(
            Quantities.optional(f.at("stack_mass"), Dimension.MASS, Range.ABOVE_0),
            Quantities.optional(f.at("stack_value"), Dimension.MONEY, Range.ABOVE_0),
            Quantities.optional(f.at("mass"), Dimension.MASS, Range.ABOVE_0),
            Quantities.optional(f.at("value"), Dimension.MONEY, Range.ABOVE_0)));
  }

  private static Optional<Cover> cover(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.COVER);
    return Optional.of(
        new Cover(
            Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0),
            Numbers.whole(f.at("hands"), 0, 0),
            Quantities.of(f.at("lasts"), Dimension.TIME, Range.NOT_BELOW_0, 0),
            f.has("loss") ? OptionalDouble.of(decay(f.at("loss"))) : OptionalDouble.empty()));
  }

  private static Optional<Climate> climate(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.PLACE_MOISTURE);
    if (at.isMap() && f.has("wet") != f.has("wet_within")) {
      at.wrong(
          "\"wet\" and \"wet_within\" do not stand together",
          "both, such as \"wet: 40 %, wet_within: 12 d\", or neither under a roof");
    }
    return Optional.of(
        new Climate(
            Quantities.of(f.at("dry"), Dimension.SHARE, Range.PART, 0),
            Quantities.of(f.at("dry_within"), Dimension.TIME, Range.ABOVE_0, 1),
            Quantities.optional(f.at("wet"), Dimension.SHARE, Range.PART),
            Quantities.of(f.at("wet_within"), Dimension.TIME, Range.ABOVE_0, 1)));
  }

  private static Optional<Stack> stack(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.STACK);
    return Optional.of(
        new Stack(
            Numbers.whole(f.at("long"), 1, 1),
            Numbers.whole(f.at("wide"), 1, 1),
            Numbers.whole(f.at("high"), 1, 1),
            Quantities.of(f.at("lane"), Dimension.LENGTH, Range.NOT_BELOW_0, 0)));
  }

  /** Decay rate from a share s lost in each unit of time T: −ln(1 − s)/T. */
  private static double decay(NodeReader at) {
    OptionalDouble perS = Quantities.optional(at, Dimension.SHARE_RATE, Range.NOT_BELOW_0);
    if (perS.isEmpty()) {
      return 0;
    }
    double unitS = timeUnit(at.scalar().orElseThrow().text()).inSi();
    double share = perS.getAsDouble() * unitS;
    if (!(share < 1 - 1e-12)) {
      at.wrong(
          at.shown() + " would leave nothing",
          "a loss below 100 % of what lies there, such as \"0.4 %/month\"");
      return 0;
    }
    return -StrictMath.log1p(-share) / unitS;
  }

  private static FileUnit timeUnit(String text) {
    return FileUnit.of(text.substring(text.lastIndexOf('/') + 1).strip()).orElse(FileUnit.MONTH);
  }

  private static Pick pick(NodeReader at) {
    if (!at.isMap()) {
      return Words.choice(at, PICKS, new Yard.OldestFirst());
    }
    return new Yard.ByPlace(Words.names(at.fields(MapKeys.PICK).at("places"), "a place"));
  }

  private Map<String, Lift> lifts(NodeReader at) {
    Map<String, Lift> lifts = new LinkedHashMap<>();
    if (!at.isGiven()) {
      return lifts;
    }
    if (isOneForAll(at)) {
      Lift lift = lift(at, crops.stream().anyMatch(Crop::modules));
      crops.forEach(crop -> lifts.put(crop.name(), lift));
      return lifts;
    }
    at.named("crop").forEach((crop, entry) -> lifts.put(crop, lift(entry, isModules(crop))));
    for (Crop crop : crops) {
      if (lifts.containsKey(crop.base())) {
        lifts.putIfAbsent(crop.name(), lifts.get(crop.base()));
      }
    }
    return lifts;
  }

  /** A map by crop holds maps; one job for all crops has keys of its own. */
  private boolean isOneForAll(NodeReader at) {
    return !at.isMap()
        || at.entries().orElseThrow().isEmpty()
        || at.entries().orElseThrow().keySet().stream().anyMatch(this::isJobKey);
  }

  private boolean isJobKey(String key) {
    return MapKeys.LIFT.keys().contains(key)
        && crops.stream().noneMatch(crop -> crop.name().equals(key));
  }

  private boolean isModules(String crop) {
    return crops.stream().noneMatch(known -> known.name().equals(crop) && !known.modules());
  }

  private static Lift lift(NodeReader at, boolean modules) {
    Fields f = at.fields(MapKeys.LIFT);
    return new Lift(StopBinder.job(f), Counts.bales(f, modules, 1));
  }

  static Job atOnce() {
    return new Job(new Constant(0), List.of());
  }
}
