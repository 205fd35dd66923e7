package hurdline.plant.yaml;

import hurdline.plant.Machine;
import hurdline.plant.Machine.Common;
import hurdline.plant.Machine.Grinding;
import hurdline.plant.Machine.PlainKind;
import hurdline.plant.Machine.Screen;
import hurdline.plant.yaml.tree.Tree;
import hurdline.unit.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads machines and bins, each by the keys of its kind. */
final class MachineBinder {
  static final Map<String, MapKeys> KINDS = kinds();

  private static final Map<MapKeys, String> OWN_KEYS =
      Map.of(
          MapKeys.MILL, "grinding",
          MapKeys.BIN, "holds",
          MapKeys.PRESS, "boxes",
          MapKeys.FILLER, "spouts",
          MapKeys.FEEDER, "feed_table",
          MapKeys.CYCLONE, "collects");
  private static final Map<String, Boolean> DRAWS = Map.of("while-up", false, "with-flow", true);

  private MachineBinder() {}

  private static Map<String, MapKeys> kinds() {
    Map<String, MapKeys> kinds = new LinkedHashMap<>();
    kinds.put("bale-feeder", MapKeys.FEEDER);
    kinds.put("hammer-mill", MapKeys.MILL);
    kinds.put("cyclone", MapKeys.CYCLONE);
    kinds.put("bag-filler", MapKeys.FILLER);
    kinds.put("press", MapKeys.PRESS);
    kinds.put("bin", MapKeys.BIN);
    for (PlainKind kind : PlainKind.values()) {
      kinds.put(kind.name().toLowerCase(Locale.ROOT).replace('_', '-'), MapKeys.PLAIN);
    }
    return kinds;
  }

  /** The keys that go with the kind; those of a plain machine where the kind is unknown. */
  static MapKeys shape(NodeReader at) {
    NodeReader kind = kindOf(at);
    String word = kind.scalar().map(Tree.Scalar::text).orElse("");
    MapKeys known = KINDS.get(word);
    return known != null
        ? known
        : hurdline.plant.Nearest.to(word, KINDS.keySet()).map(KINDS::get).orElse(guess(at));
  }

  /** The value of "kind", also where that key is misspelt. */
  private static NodeReader kindOf(NodeReader at) {
    if (at.isMap() && !at.child("kind").isGiven()) {
      for (String key : at.entries().orElseThrow().keySet()) {
        if (hurdline.plant.Nearest.to(key, List.of("kind")).isPresent()) {
          return at.child("kind", key);
        }
      }
    }
    return at.child("kind");
  }

  /** The kind by a key that only it has, so that a missing kind is the only thing told. */
  private static MapKeys guess(NodeReader at) {
    for (MapKeys shape : OWN_KEYS.keySet()) {
      if (at.child(OWN_KEYS.get(shape)).isGiven()) {
        return shape;
      }
    }
    return MapKeys.PLAIN;
  }

  static Machine machine(String name, NodeReader at) {
    MapKeys shape = shape(at);
    Fields f = at.fields(shape);
    Words.choice(f.at("kind"), KINDS, MapKeys.PLAIN);
    return switch (shape) {
      case FEEDER ->
          new Machine.BaleFeeder(
              name, common(f), Quantities.whole(f.at("feed_table"), Dimension.BALES, 1, 1, 2));
      case CYCLONE ->
          new Machine.Cyclone(
              name, common(f), Quantities.of(f.at("collects"), Dimension.SHARE, Range.SHARE, 1));
      case FILLER ->
          new Machine.Packer(name, common(f), false, Numbers.whole(f.at("spouts"), 1, 1));
      case PRESS -> new Machine.Packer(name, common(f), true, Numbers.whole(f.at("boxes"), 1, 1));
      case BIN -> bin(name, f);
      case MILL -> mill(name, f);
      default -> new Machine.Plain(name, plainKind(f), common(f));
    };
  }

  private static PlainKind plainKind(Fields f) {
    String word = f.at("kind").scalar().map(Tree.Scalar::text).orElse("");
    for (PlainKind kind : PlainKind.values()) {
      if (kind.name().equals(word.toUpperCase(Locale.ROOT).replace('-', '_'))) {
        return kind;
      }
    }
    return PlainKind.CONVEYOR;
  }

  private static Common common(Fields f) {
    double powerW = Quantities.of(f.at("power"), Dimension.POWER, Range.NOT_BELOW_0, 0);
    boolean withFlow = Words.choice(f.at("draws"), DRAWS, false);
    return new Common(powerW, withFlow, f.at("stops").each("stop", StopBinder::stop));
  }

  private static Machine bin(String name, Fields f) {
    NodeReader holdsAt = f.at("holds");
    boolean byVolume = isVolume(holdsAt);
    Dimension due = byVolume ? Dimension.VOLUME : Dimension.MASS;
    double holds = Quantities.of(holdsAt, due, Range.ABOVE_0, 1e30);
    OptionalDouble startAt = Quantities.optional(f.at("start_at"), due, Range.ABOVE_0);
    OptionalDouble stopAt = Quantities.optional(f.at("stop_at"), due, Range.NOT_BELOW_0);
    if (f.has("stop_at") && !f.has("start_at")) {
      f.at("stop_at")
          .wrong("\"stop_at\" stands without \"start_at\"", "both, or neither for a plain bin");
    }
    return new Machine.Bin(name, holds, byVolume, startAt.orElse(0), stopAt.orElse(0));
  }

  private static boolean isVolume(NodeReader at) {
    try {
      return at.scalar().isPresent()
          && hurdline.unit.Quantity.read(at.scalar().get().text(), Dimension.VOLUME) != null;
    } catch (hurdline.unit.QuantityException e) {
      return false;
    }
  }

  private static Machine mill(String name, Fields f) {
    Common common = common(f);
    if (f.has("power")
        && common.powerW() == 0
        && !f.here().binding().findings().covers(f.at("power").path())) {
      f.at("power")
          .wrong(
              "the motor has no power, so the mill would never move",
              "a power such as \"25 hp\", above 0");
    }
    List<Screen> screens = f.at("screens").each("screen", MachineBinder::screen);
    if (screens.isEmpty() && f.at("screens").isMap()) {
      f.at("screens")
          .wrong("the mill has no screen", "at least one, such as \"medium: {opening: 6 mm}\"");
    }
    return new Machine.HammerMill(
        name,
        common,
        grinding(f.at("grinding")),
        screens,
        RandomQuantityReader.of(f.at("screen_change"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        Words.needs(f.at("needs")));
  }

  private static Screen screen(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.SCREEN);
    return new Screen(
        name,
        Quantities.of(f.at("opening"), Dimension.LENGTH, Range.ABOVE_0, 1),
        Quantities.of(f.at("fines"), Dimension.SHARE, Range.SHARE, 0));
  }

  private static Grinding grinding(NodeReader at) {
    Fields f = at.fields(MapKeys.GRINDING);
    return new Grinding(
        Quantities.of(f.at("energy"), Dimension.ENERGY_PER_MASS, Range.ABOVE_0, 1),
        Quantities.of(f.at("measured_at"), Dimension.LENGTH, Range.ABOVE_0, 1),
        Numbers.number(f.at("exponent"), 0, false).orElse(0),
        Quantities.of(f.at("motor_load"), Dimension.SHARE, Range.SOME_SHARE, 1),
        Quantities.of(f.at("no_load"), Dimension.SHARE, Range.SHARE, 0),
        Curves.onRate(f.at("by_moisture"), Dimension.SHARE));
  }
}
