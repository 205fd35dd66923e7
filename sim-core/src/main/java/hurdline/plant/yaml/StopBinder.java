package hurdline.plant.yaml;

import hurdline.plant.Job;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.plant.yaml.tree.Tree;
import hurdline.random.Distribution;
import hurdline.unit.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads a machine's stops, and jobs. */
final class StopBinder {
  private static final Map<String, Counted> COUNTS = counts();
  private static final Map<String, Boolean> REPAIRS = Map.of("in-hours", false, "any-time", true);

  private StopBinder() {}

  private static Map<String, Counted> counts() {
    Map<String, Counted> counts = new LinkedHashMap<>();
    for (Counted counted : Counted.values()) {
      counts.put(counted.name().toLowerCase(Locale.ROOT), counted);
    }
    return counts;
  }

  static Stop stop(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.STOP);
    int before = at.binding().findings().count();
    Counted counted = Words.choice(f.at("counted"), COUNTS, null);
    Dimension due = due(f, counted);
    Distribution every = RandomQuantityReader.of(f.at("every"), due, Range.NOT_BELOW_0, 1);
    Distribution lasts =
        RandomQuantityReader.of(f.at("lasts"), Dimension.TIME, Range.NOT_BELOW_0, 1);
    double already = Quantities.of(f.at("initial_age"), due, Range.NOT_BELOW_0, 0);
    if (at.binding().findings().count() == before && isZero(every) && isZero(lasts)) {
      f.at("every")
          .wrong(
              "\"every\" and \"lasts\" are both 0, so it would stop without end",
              "an amount above 0 for one of them");
    }
    return new Stop(
        name,
        every,
        new Stop.Count(counted == null ? Counted.CREWED : counted, onlyFor(f.at("for"))),
        lasts,
        already,
        Words.choice(f.at("repair"), REPAIRS, false),
        Words.optionalName(f.at("needs"), "a resource"),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0));
  }

  /** Lines and crops to which a stop belongs; none where it belongs to all. */
  private static List<String> onlyFor(NodeReader at) {
    List<String> names = Words.names(at, "a line or a crop");
    if (names.isEmpty() && at.tree().filter(Tree.Items.class::isInstance).isPresent()) {
      at.wrong(
          "the list names no line, so it would never stop",
          "lines or crops, such as \"for: [stalk]\", or no \"for\" for a stop of all lines");
    }
    return names;
  }

  /**
   * A mass where worked material is counted, else a time; by what stands there if the count is not
   * known.
   */
  private static Dimension due(Fields f, Counted counted) {
    if (counted != null) {
      return counted == Counted.MASS ? Dimension.MASS : Dimension.TIME;
    }
    String text = f.at("every").scalar().map(Tree.Scalar::text).orElse("");
    return text.matches(".*[0-9]\\s*(t|kg|lb|ton)") ? Dimension.MASS : Dimension.TIME;
  }

  /** What the clock cannot tell from 0; an amount of material so small is none either. */
  private static boolean isZero(Distribution amount) {
    return !(amount.at(1 - 1e-9) > 1e-6);
  }

  /** A job; absent where the key is. */
  static Optional<Job> job(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.JOB);
    return Optional.of(job(f));
  }

  static Job job(Fields f) {
    return new Job(
        RandomQuantityReader.of(f.at("lasts"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        Words.optionalName(f.at("needs"), "a resource"));
  }
}
