package hurdline.plant.yaml;

import hurdline.plant.Job;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.plant.yaml.tree.Tree;
import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.unit.Dimension;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a machine's stops, and jobs. */
final class StopBinder {
  private static final Map<String, Counted> COUNTS = counts();
  private static final Map<String, Boolean> REPAIRS = Map.of("in-hours", false, "any-time", true);
  private static final Map<String, Boolean> REPEATS = Map.of("once", false, "yearly", true);

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
    return f.has("on") ? planned(name, f) : counted(name, f, at);
  }

  private static Stop counted(String name, Fields f, NodeReader at) {
    if (at.isMap()) {
      f.require("every");
      f.require("counted");
    }
    for (String key : List.of("at", "repeats")) {
      if (f.has(key)) {
        f.at(key).wrong("it has no date to go with", "\"on\" with the dates of a planned stop");
      }
    }
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
        Words.needs(f.at("needs")),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0));
  }

  /** A stop by date, which neither counts nor varies. */
  private static Stop planned(String name, Fields f) {
    for (String key : List.of("every", "counted", "for", "initial_age")) {
      if (f.has(key)) {
        f.at(key).wrong("a planned stop goes by its dates alone", "\"on\" or what it counts");
      }
    }
    OptionalDouble lastsS = Quantities.optional(f.at("lasts"), Dimension.TIME, Range.ABOVE_0);
    Stop.Dates dates =
        new Stop.Dates(
            dates(f.at("on")),
            Words.choice(f.at("repeats"), REPEATS, false),
            Dates.clock(f.at("at")).orElse(0));
    return new Stop(
        name,
        new Constant(0),
        new Stop.Count(Counted.CALENDAR, List.of(), Optional.of(dates)),
        new Constant(lastsS.orElse(1)),
        0,
        Words.choice(f.at("repair"), REPAIRS, true),
        Words.needs(f.at("needs")),
        Quantities.of(f.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0));
  }

  private static List<LocalDate> dates(NodeReader at) {
    List<LocalDate> dates = new ArrayList<>();
    List<NodeReader> items = at.items("dates");
    if (items.isEmpty() && at.tree().filter(Tree.Items.class::isInstance).isPresent()) {
      at.wrong("the list has no date, so it would never stop", "dates such as 2027-06-07");
    }
    for (NodeReader item : items) {
      Optional<LocalDate> date = Dates.date(item);
      if (date.filter(dates::contains).isPresent()) {
        item.wrong(item.shown() + " stands here twice", "each date once");
      } else {
        date.ifPresent(dates::add);
      }
    }
    return dates;
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
        Words.needs(f.at("needs")));
  }
}
