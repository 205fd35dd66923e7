package hurdline.plant.yaml;

import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.random.Beta;
import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.random.Empirical;
import hurdline.random.Exponential;
import hurdline.random.Gamma;
import hurdline.random.Lognormal;
import hurdline.random.Normal;
import hurdline.random.Triangular;
import hurdline.random.Uniform;
import hurdline.random.Weibull;
import hurdline.unit.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads amounts that may vary: a plain quantity, or a map with the name of one distribution. */
final class RandomQuantityReader {
  static final List<String> NAMES =
      List.of(
          "normal",
          "lognormal",
          "exponential",
          "gamma",
          "weibull",
          "uniform",
          "triangular",
          "beta",
          "observed");

  private final Dimension due;
  private final Range range;

  private RandomQuantityReader(Dimension due, Range range) {
    this.due = due;
    this.range = range;
  }

  /** The amount; the stand-in where none is given or it is wrong. */
  static Distribution of(NodeReader at, Dimension due, Range range, double standIn) {
    return optional(at, due, range).orElse(new Constant(standIn));
  }

  static Optional<Distribution> optional(NodeReader at, Dimension due, Range range) {
    return at.isGiven() ? new RandomQuantityReader(due, range).read(at) : Optional.empty();
  }

  private Optional<Distribution> read(NodeReader at) {
    if (at.scalar().isPresent()) {
      OptionalDouble fixed = Quantities.read(at, at.scalar().get(), due, range);
      return fixed.isPresent() ? Optional.of(new Constant(fixed.getAsDouble())) : Optional.empty();
    }
    if (!at.isMap() || at.entries().orElseThrow().size() != 1) {
      at.wrong(
          at.shown() + " is neither a quantity nor one distribution",
          due.phrase() + ", or a map with one of " + String.join(", ", NAMES));
      return Optional.empty();
    }
    String name = at.entries().orElseThrow().keySet().iterator().next();
    if (!NAMES.contains(name)) {
      at.key(name)
          .wrong(
              MessageText.quoted(name) + " is no distribution",
              Nearest.expected("a distribution", name, NAMES));
      return Optional.empty();
    }
    return distribution(at.child(name), name);
  }

  private Optional<Distribution> distribution(NodeReader at, String name) {
    int before = at.binding().findings().count();
    try {
      Distribution made = name.equals("observed") ? observed(at) : made(at, name);
      boolean sound = at.binding().findings().count() == before;
      return sound ? checked(at, made) : Optional.empty();
    } catch (IllegalArgumentException e) {
      // Its words are in SI; the file's are not.
      if (at.binding().findings().count() == before) {
        at.wrong("nothing can be drawn from this", asked(name));
      }
      return Optional.empty();
    }
  }

  private static String asked(String name) {
    return switch (name) {
      case "uniform" -> "\"low\" at or below \"high\"";
      case "triangular" -> "\"low\", \"mode\" and \"high\" in rising order";
      case "beta" ->
          "\"mean\" between \"low\" and \"high\", and an \"sd\" that such a range can have";
      case "observed" -> "at least one observed value";
      case "normal" -> "\"low\" below \"high\", with some of the distribution between them";
      default ->
          "a mean or scale above 0, \"low\" below \"high\", and some of the distribution between"
              + " them";
    };
  }

  /** Refuses what is only ever drawn at or below zero where that makes no sense. */
  private Optional<Distribution> checked(NodeReader at, Distribution made) {
    boolean never = range == Range.ABOVE_0 && !(made.at(1 - 1e-9) > 0);
    if (never) {
      at.wrong("this is never above 0", due.phrase() + range.phrase());
    }
    return never ? Optional.empty() : Optional.of(made);
  }

  private Distribution observed(NodeReader at) {
    List<Double> values =
        at.items("observed values").stream()
            .map(
                item ->
                    Quantities.of(item, due, range == Range.ABOVE_0 ? Range.NOT_BELOW_0 : range, 1))
            .toList();
    return new Empirical(values);
  }

  private Distribution made(NodeReader at, String name) {
    Fields f = at.fields(MapKeys.valueOf(name.toUpperCase(Locale.ROOT)));
    if (!at.isMap() || !f.isWhole()) {
      throw new IllegalArgumentException("a key is missing");
    }
    double low = bound(f.at("low"), Double.NEGATIVE_INFINITY);
    double high = bound(f.at("high"), Double.POSITIVE_INFINITY);
    return switch (name) {
      case "normal" -> new Normal(centre(f, "mean"), spread(f), low, high);
      case "lognormal" -> new Lognormal(centre(f, "mean"), spread(f), low, high);
      case "exponential" -> new Exponential(centre(f, "mean"), low, high);
      case "gamma" -> new Gamma(centre(f, "mean"), spread(f), low, high);
      case "weibull" ->
          new Weibull(
              Numbers.number(f.at("shape"), 0, true).orElse(1), centre(f, "scale"), low, high);
      case "uniform" -> new Uniform(low, high);
      case "triangular" -> new Triangular(low, centre(f, "mode"), high);
      case "beta" -> new Beta(centre(f, "mean"), spread(f), low, high);
      default -> throw new IllegalStateException(name);
    };
  }

  private double centre(Fields f, String key) {
    return Quantities.of(f.at(key), due, range == Range.ABOVE_0 ? Range.NOT_BELOW_0 : range, 1);
  }

  private double spread(Fields f) {
    return Quantities.of(f.at("sd"), due, Range.NOT_BELOW_0, 0);
  }

  private double bound(NodeReader at, double none) {
    Range within = range == Range.SHARE || range == Range.PART ? Range.SHARE : Range.NOT_BELOW_0;
    return Quantities.of(at, due, within, none);
  }
}
