package hurdline.plant.yaml;

import hurdline.plant.Line;
import hurdline.plant.Step;
import hurdline.plant.Step.Break;
import hurdline.plant.Step.Mix;
import hurdline.plant.Step.MixShare;
import hurdline.plant.Step.Outlet;
import hurdline.plant.Step.OwnHours;
import hurdline.plant.Step.Packs;
import hurdline.unit.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Reads lines and their steps. */
final class LineBinder {
  private static final String FROM = "from-";
  private static final String AIM = "a machine, a bin, a product or \"waste\"";

  private final Map<String, MapKeys> machines;

  /**
   * @param machines the shape of each machine, which says what its steps may have
   */
  LineBinder(Map<String, MapKeys> machines) {
    this.machines = machines;
  }

  Line line(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.LINE);
    return new Line(
        name,
        Words.name(f.at("crop"), "a crop"),
        Words.name(f.at("feed"), "a bale-feeder"),
        Words.names(f.at("auxiliaries"), "a machine"),
        f.at("steps").each("machine", this::step));
  }

  private Step step(String machine, NodeReader at) {
    MapKeys shape = machines.containsKey(machine) ? ofKind(machines.get(machine)) : likely(at);
    Fields f = at.fields(shape);
    oneWayOut(f);
    if (shape == MapKeys.MILL_STEP) {
      followsOrders(f);
    }
    return new Step(
        machine,
        Quantities.whereGiven(f.at("rate"), Dimension.MASS_RATE, Range.ABOVE_0),
        outlets(f),
        packs(f),
        f.at("breakage").each("component", LineBinder::breaking),
        Quantities.of(f.at("dries"), Dimension.SHARE, Range.SHARE, 0),
        ownHours(f.at("own_hours")),
        table(f.at("feed_table")),
        Numbers.whole(f.at("priority"), 0, 1),
        Curves.onRate(f.at("rate_by_moisture"), Dimension.SHARE),
        Curves.onRate(f.at("rate_by_diameter"), Dimension.LENGTH),
        Curves.onRates(f.at("rate_by")),
        mix(f),
        Quantities.of(f.at("min_run"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        makes(f.at("makes")));
  }

  private static MapKeys ofKind(MapKeys machine) {
    return switch (machine) {
      case BIN -> MapKeys.BIN_STEP;
      case FEEDER -> MapKeys.FEEDER_STEP;
      case MILL -> MapKeys.MILL_STEP;
      default -> MapKeys.STEP;
    };
  }

  /**
   * Of a machine that is not known, which is told elsewhere: the step that may have all these keys.
   */
  private static MapKeys likely(NodeReader at) {
    Set<String> keys = at.entries().map(Map::keySet).orElse(Set.of());
    return Stream.of(MapKeys.MILL_STEP, MapKeys.FEEDER_STEP, MapKeys.BIN_STEP)
        .filter(shape -> shape.keys().containsAll(keys))
        .findFirst()
        .orElse(MapKeys.MILL_STEP);
  }

  private static void oneWayOut(Fields f) {
    List<String> given = List.of("to", "outlets", "packs").stream().filter(f::has).toList();
    if (given.isEmpty() && f.here().isMap()) {
      f.here()
          .wrong(
              "it leads nowhere: it has none of to, outlets and packs",
              "one of them, such as \"to: waste\" or \"packs: tow\"");
    } else if (given.size() > 1) {
      f.at(given.get(1))
          .wrong("it has " + String.join(" and ", given), "one of to, outlets and packs");
    }
  }

  private static void followsOrders(Fields f) {
    if (f.has("then") && f.at("mix").scalar().isEmpty()) {
      f.at("then").wrong("it follows no orders", "\"mix: orders\" before it, or no \"then\"");
    }
  }

  private static List<Outlet> outlets(Fields f) {
    if (f.has("to")) {
      return List.of(
          new Outlet(Words.name(f.at("to"), AIM), Optional.empty(), Map.of(), Map.of(), Map.of()));
    }
    List<Outlet> found = f.at("outlets").list("outlets", LineBinder::outlet);
    if (f.has("outlets") && found.isEmpty()) {
      f.at("outlets")
          .wrong(
              "there is no outlet",
              "a list of outlets such as {to: hurd_bin, takes: {hurd: 88 %}}");
    }
    return found;
  }

  private static Outlet outlet(NodeReader at) {
    Fields f = at.fields(MapKeys.OUTLET);
    Optional<Map<String, Double>> takes =
        f.has("takes")
            ? Optional.of(CropBinder.shares(f.at("takes"), "component"))
            : Optional.empty();
    return new Outlet(
        Words.name(f.at("to"), AIM),
        takes,
        Curves.onShares(f.at("by_moisture"), Dimension.SHARE),
        Curves.onShares(f.at("by_diameter"), Dimension.LENGTH),
        Curves.onShares(f.at("by")));
  }

  private static Optional<Packs> packs(Fields f) {
    Optional<String> packaging = Words.optionalName(f.at("package"), "a package");
    if (packaging.isPresent() && !f.has("packs")) {
      f.at("package").wrong("nothing is packed here", "\"packs\" beside it, or no \"package\"");
    }
    return Words.optionalName(f.at("packs"), "a product, or \"from\" and a mill")
        .map(
            word ->
                word.startsWith(FROM)
                    ? new Step.PacksFromMill(word.substring(FROM.length()).strip(), packaging)
                    : new Step.PacksProduct(word, packaging));
  }

  private static Break breaking(String component, NodeReader at) {
    Fields f = at.fields(MapKeys.BREAK);
    return new Break(
        component,
        Words.name(f.at("into"), "a component"),
        Quantities.of(f.at("share"), Dimension.SHARE, Range.SHARE, 0));
  }

  private static Optional<OwnHours> ownHours(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.OWN_HOURS);
    if (at.isMap() && at.entries().orElseThrow().isEmpty()) {
      at.wrong("the map is empty", "shifts, from or to");
    }
    return Optional.of(
        new OwnHours(
            Words.names(f.at("shifts"), "a shift"),
            Dates.date(f.at("from")),
            Dates.date(f.at("to"))));
  }

  private static OptionalInt table(NodeReader at) {
    return at.isGiven()
        ? OptionalInt.of(Quantities.whole(at, Dimension.BALES, 1, 1, 2))
        : OptionalInt.empty();
  }

  private static Mix mix(Fields f) {
    NodeReader at = f.at("mix");
    if (!at.isGiven()) {
      return new Step.FirstScreen();
    }
    if (at.scalar().isPresent()) {
      if (!at.scalar().get().text().equals("orders")) {
        at.wrong(at.shown() + " is no mix", "a list of screens with their shares, or \"orders\"");
      }
      return new Step.ByOrders(then(f.at("then")));
    }
    return shares(at);
  }

  private static Step.Shares shares(NodeReader at) {
    List<MixShare> shares = at.list("screens with their shares", LineBinder::mixShare);
    if (shares.isEmpty() && !at.isMap()) {
      at.wrong("the mix names no screen", "at least one, such as {screen: medium, share: 100 %}");
    }
    return new Step.Shares(shares);
  }

  private static Optional<Step.WithoutOrder> then(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    if (at.scalar().isEmpty()) {
      return Optional.of(shares(at));
    }
    String word = at.scalar().get().text();
    return Optional.of(
        word.equals(Step.StandStill.word())
            ? new Step.StandStill()
            : new Step.Shares(List.of(new MixShare(word, 1))));
  }

  private static MixShare mixShare(NodeReader at) {
    Fields f = at.fields(MapKeys.MIX_SHARE);
    return new MixShare(
        Words.name(f.at("screen"), "a screen"),
        Quantities.of(f.at("share"), Dimension.SHARE, Range.SHARE, 0));
  }

  private static Map<String, String> makes(NodeReader at) {
    Map<String, String> makes = new LinkedHashMap<>();
    at.named("screen")
        .forEach((screen, product) -> makes.put(screen, Words.name(product, "a product")));
    return makes;
  }
}
