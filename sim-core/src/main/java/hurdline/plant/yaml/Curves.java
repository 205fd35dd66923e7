package hurdline.plant.yaml;

import hurdline.plant.Curve;
import hurdline.plant.Curve.Point;
import hurdline.plant.yaml.tree.Tree;
import hurdline.unit.Counted;
import hurdline.unit.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads corrections: lists of pairs of a property and a bare factor. */
final class Curves {
  private final Dimension property;
  private final boolean aboveZero;

  private Curves(Dimension property, boolean aboveZero) {
    this.property = property;
    this.aboveZero = aboveZero;
  }

  /** A factor on a share of what is taken, which may fall to 0. */
  static Map<String, Curve> onShares(NodeReader at, Dimension property) {
    Map<String, Curve> curves = new HashMap<>();
    at.named("component")
        .forEach((name, entry) -> curves.put(name, new Curves(property, false).read(entry)));
    return curves;
  }

  /** The same by attributes that the file has named. */
  static Map<String, Map<String, Curve>> onShares(NodeReader at) {
    Map<String, Map<String, Curve>> curves = new LinkedHashMap<>();
    at.named("attribute")
        .forEach((name, entry) -> curves.put(name, onShares(entry, Dimension.SHARE)));
    return curves;
  }

  /** Factors on a rate by attributes that the file has named. */
  static Map<String, Curve> onRates(NodeReader at) {
    Map<String, Curve> curves = new LinkedHashMap<>();
    at.named("attribute")
        .forEach((name, entry) -> curves.put(name, onRate(entry, Dimension.SHARE)));
    return curves;
  }

  /** Which of the two ways of a factor on a price a map has taken; it must be one. */
  static boolean isInSteps(NodeReader at, Fields f, String sample) {
    boolean inSteps = f.has("steps");
    if (at.isMap() && inSteps == f.has("line")) {
      at.wrong(
          inSteps ? "both \"line\" and \"steps\"" : "neither \"line\" nor \"steps\"",
          "one of them, such as \"line: " + sample + "\"");
    }
    return inSteps;
  }

  /** A factor on a price by a share, which may fall to 0. */
  static Curve onPrice(NodeReader at) {
    return new Curves(Dimension.SHARE, false).read(at);
  }

  /** A factor on a price from a mass sold on, which may fall to 0. */
  static Curve onMarket(NodeReader at) {
    return new Curves(Dimension.MASS, false).read(at);
  }

  /** A factor on a rate or an energy; at 0 nothing would ever move. */
  static Curve onRate(NodeReader at, Dimension property) {
    return new Curves(property, true).read(at);
  }

  private Curve read(NodeReader at) {
    if (!at.isGiven()) {
      return Curve.NONE;
    }
    List<NodeReader> pairs = at.items("pairs such as " + sample());
    List<Point> points = new ArrayList<>();
    for (NodeReader pair : pairs) {
      add(points, pair);
    }
    if (pairs.isEmpty() && at.tree().orElseThrow() instanceof Tree.Items) {
      at.wrong("the list has no pair", "pairs such as " + sample());
    }
    return new Curve(points);
  }

  private void add(List<Point> points, NodeReader pair) {
    List<NodeReader> two = pair.items("a value and a factor");
    if (two.size() != 2) {
      if (pair.tree().filter(Tree.Items.class::isInstance).isPresent()) {
        pair.wrong(
            "the list has " + Counted.of(two.size(), "place"),
            "a value and a factor, such as " + sample());
      }
      return;
    }
    Range range =
        switch (property) {
          case SHARE -> Range.SHARE;
          case MASS -> Range.ABOVE_0;
          default -> Range.NOT_BELOW_0;
        };
    OptionalDouble at = Quantities.optional(two.get(0), property, range);
    OptionalDouble factor = Numbers.number(two.get(1), 0, aboveZero);
    if (at.isEmpty() || factor.isEmpty()) {
      return;
    }
    if (!points.isEmpty() && !(at.getAsDouble() > points.get(points.size() - 1).at())) {
      two.get(0)
          .wrong(
              two.get(0).shown() + " does not lie above the one before it",
              "values that rise from pair to pair");
      return;
    }
    points.add(new Point(at.getAsDouble(), factor.getAsDouble()));
  }

  private String sample() {
    return property == Dimension.MASS ? "[200 ton, 0.7]" : "[12 %, 1.0]";
  }
}
