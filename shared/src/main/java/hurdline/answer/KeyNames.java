package hurdline.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * How the path of a key reads: {@code machines.mill.power} is the "power of the hammer mill". What
 * a path names comes last, inner things before outer ones; the section that a key stands in is left
 * out. Tables keep the path, since one types that.
 */
public final class KeyNames {
  private static final Set<String> SECTIONS =
      Set.of(
          "machines",
          "products",
          "crops",
          "lines",
          "resources",
          "places",
          "options",
          "plans",
          "packages",
          "components",
          "deliveries",
          "fields",
          "shifts",
          "steps",
          "stops",
          "screens",
          "tasks",
          "crop_prices",
          "on_hand",
          "composition",
          "outlets");

  /** Sections that a thing's own name makes plain. */
  private static final Set<String> SILENT = Set.of("money", "yard", "calendar");

  private static final String ALL = "*";

  private final Titles titles;
  private final List<String> words = new ArrayList<>();
  private final List<String> things = new ArrayList<>();

  /** The name before, whose the next one is. */
  private String outer = "";

  private KeyNames(Titles titles) {
    this.titles = titles;
  }

  public static String of(String path, Titles titles) {
    return new KeyNames(titles).read(path.split("\\."));
  }

  private String read(String[] path) {
    for (int at = 0; at < path.length; at++) {
      if (SECTIONS.contains(path[at]) && at + 1 < path.length) {
        at += named(path[at], path[at + 1]);
      } else if (at == 1 && path.length == 2 && path[0].equals("calendar")) {
        things.add("the calendar");
        words.add(ofSeason(path[1]));
      } else if (at == 0 && path.length > 2 && path[0].equals("season")) {
        things.add(path[1].equals(ALL) ? "all season entries" : "season entry " + path[1]);
        words.add(ofSeason(path[2]));
        at = 2;
      } else if (at > 0 || !SILENT.contains(path[at])) {
        words.add(word(path[at]));
      }
    }
    Collections.reverse(things);
    List<String> parts = new ArrayList<>();
    if (!words.isEmpty()) {
      parts.add(String.join(" ", words));
    }
    parts.addAll(things);
    return String.join(" of ", parts);
  }

  /**
   * A key of the calendar or of an entry of the season, of which {@code from} and {@code to} say
   * little alone.
   */
  private static String ofSeason(String name) {
    return switch (name) {
      case "from" -> "first day";
      case "to" -> "last day";
      default -> word(name);
    };
  }

  /** A key's last words where the name alone does not say what it is. */
  private static String word(String name) {
    return switch (name) {
      case ALL -> "of all";
      case "holds" -> "room";
      case "lasts" -> "duration";
      case "every" -> "interval";
      case "from" -> "start";
      case "to" -> "end";
      default -> Titles.ofName(name);
    };
  }

  /**
   * Takes up what stands under a section; how many parts of the path it has used beyond the
   * section's own.
   */
  private int named(String section, String name) {
    switch (section) {
      case "crop_prices" -> words.add("crop price");
      case "on_hand" -> words.add("stock on hand");
      case "composition" -> words.add("share");
      default -> {}
    }
    things.add(name.equals(ALL) ? "all " + plural(section) : thing(section, name));
    outer = name;
    return 1;
  }

  private static String plural(String section) {
    return switch (section) {
      case "deliveries", "crop_prices", "on_hand" -> "crops";
      case "steps" -> "machines";
      case "composition" -> "components";
      default -> section;
    };
  }

  private String thing(String section, String name) {
    return switch (section) {
      case "machines", "steps" -> titles.machineInText(name);
      case "lines" -> titles.lineInText(name);
      case "resources" -> "the " + Titles.inText(titles.resource(name));
      case "places" -> titles.placeInText(name);
      case "products" -> Titles.inText(titles.product(name));
      case "crops", "deliveries", "crop_prices", "on_hand" -> Titles.inText(titles.crop(name));
      case "options" -> "option " + Titles.inText(titles.option(name));
      case "plans" -> "plan " + Titles.inText(titles.plan(name));
      case "composition", "components" -> Titles.inText(titles.component(name));
      case "shifts" -> titles.thing("shift." + name);
      case "stops" -> "stop " + Titles.inText(titles.stop(outer, name));
      case "screens" -> "screen " + Titles.inText(titles.screen(outer, name));
      case "fields" -> "field " + Titles.inText(titles.field(outer, name));
      case "tasks" -> "task " + Titles.inText(titles.task(name));
      default -> section.substring(0, section.length() - 1) + " " + Titles.ofName(name);
    };
  }
}
