package hurdline.answer;

import hurdline.measure.Cause;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What people read in place of the names of a plant file: the title that the file gives, else the
 * name with its underscores as spaces.
 *
 * <p>The methods of one kind give a title as it stands in headings, tables and charts ({@code
 * Hammer mill}); {@link #inText} makes of it what stands within a sentence ({@code hammer mill}).
 *
 * @param given titles by {@link #key}, in the plant file's order
 */
public record Titles(Map<String, String> given) {
  private static final String BASE = "base";
  private static final Pattern TOGETHER = Pattern.compile("\\+");

  public Titles {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  /** Every name is read as it is. */
  public static Titles none() {
    return new Titles(Map.of());
  }

  /** With those of another plant for what has none here. */
  public Titles and(Titles others) {
    Map<String, String> all = new LinkedHashMap<>(given);
    others.given.forEach(all::putIfAbsent);
    return new Titles(all);
  }

  /** What {@code given} has a title under; names hold no dot. */
  public static String key(String kind, String name) {
    return kind + "." + name;
  }

  /** With what-ifs of these names read as a reader's marks have it. */
  public Titles marking(List<String> names, UnaryOperator<String> marks) {
    Map<String, String> all = new LinkedHashMap<>(given);
    names.stream()
        .filter(WhatIf::isOne)
        .forEach(name -> all.put(key("option", name), WhatIf.read(name, this, marks)));
    return new Titles(all);
  }

  /** A name without a title; this is the one place that says how it reads. */
  public static String ofName(String name) {
    return name.replace('_', ' ');
  }

  /**
   * The title within a sentence: its first letter small, unless a further capital or a digit in the
   * first two words shows that it is a name or an abbreviation ({@code North Bench}, {@code HVAC
   * fan}).
   */
  public static String inText(String title) {
    String[] words = title.split(" ", 3);
    String head = words.length > 1 ? words[0] + words[1] : words[0];
    boolean plain =
        head.codePoints().skip(1).noneMatch(c -> Character.isUpperCase(c) || Character.isDigit(c));
    return plain && head.length() > 1
        ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1)
        : title;
  }

  /** A sentence's first word. */
  public static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  public String crop(String name) {
    return of("crop", name);
  }

  /** A crop's title within a sentence. */
  public String cropInText(String name) {
    return inText(crop(name));
  }

  public String machine(String name) {
    return of("machine", name);
  }

  /** {@code the hammer mill}. */
  public String machineInText(String name) {
    return "the " + inText(machine(name));
  }

  public String product(String name) {
    return of("product", name);
  }

  /** A product's title within a sentence. */
  public String productInText(String name) {
    return inText(product(name));
  }

  public String line(String name) {
    return of("line", name);
  }

  /** {@code the stalk line}. */
  public String lineInText(String name) {
    return "the " + inText(line(name));
  }

  public String resource(String name) {
    return of("resource", name);
  }

  public String store(String name) {
    return of("store", name);
  }

  /** {@code the bale shed}. */
  public String storeInText(String name) {
    return "the " + inText(store(name));
  }

  /** {@code the open yard}. */
  public String placeInText(String name) {
    return "the " + inText(place(name));
  }

  public String place(String name) {
    return of("place", name);
  }

  /** A stop of a machine, or of machines that are named together, which then is the first one's. */
  public String stop(String machine, String name) {
    return part("stop", machine.split("\\+")[0], name);
  }

  /** Several stops at once, {@code choke+belt}: {@code choke and belt}. */
  public String stops(String machine, String names) {
    return Arrays.stream(TOGETHER.split(names))
        .map(name -> inText(stop(machine, name)))
        .collect(Collectors.joining(" and "));
  }

  public String screen(String mill, String name) {
    return part("screen", mill, name);
  }

  public String field(String crop, String name) {
    return part("field", crop, name);
  }

  public String shift(String name) {
    return of("shift", name);
  }

  public String task(String name) {
    return of("task", name);
  }

  public String component(String name) {
    return of("component", name);
  }

  /** What an analysis makes more of: {@code mill}, {@code resource.loader}, {@code shift.day}. */
  public String thing(String what) {
    int dot = what.indexOf('.');
    if (dot < 0) {
      return machine(what);
    }
    String name = what.substring(dot + 1);
    return switch (what.substring(0, dot)) {
      case "resource" -> resource(name);
      case "shift" ->
          given.containsKey(key("shift", name)) ? inText(shift(name)) : "shift " + ofName(name);
      default -> what.substring(0, dot) + " " + ofName(name);
    };
  }

  /**
   * An option, several together ({@code a+b}), a what-if, or the plant as it stands, which is
   * {@code base}.
   */
  public String option(String name) {
    if (WhatIf.isOne(name)) {
      String marked = given.get(key("option", name));
      return marked == null ? WhatIf.read(name, this, value -> value) : marked;
    }
    return alternative("option", name, "the plant as it stands");
  }

  /** A season plan; the season as the file has it is {@code base}. */
  public String plan(String name) {
    return alternative("plan", name, "the season as it stands");
  }

  private String alternative(String kind, String name, String base) {
    if (name.equals(BASE)) {
      return base;
    }
    String[] each = TOGETHER.split(name);
    StringBuilder together = new StringBuilder(of(kind, each[0]));
    for (int i = 1; i < each.length; i++) {
      together.append(" + ").append(inText(of(kind, each[i])));
    }
    return together.toString();
  }

  /** What limits a line, to follow "limited by": {@code the rate of the hammer mill}. */
  public String cause(String cause) {
    return Cause.inWords(cause, new InText());
  }

  /** The same in a few words, for a chart: {@code Hammer mill: own rate}. */
  public String causeLabel(String cause) {
    return Cause.label(cause, new Label());
  }

  private String of(String kind, String name) {
    String title = given.get(key(kind, name));
    return title == null ? ofName(name) : title;
  }

  /** What belongs to a machine or a crop. */
  private String part(String kind, String owner, String name) {
    String title = given.get(key(kind, owner + "." + name));
    return title == null ? ofName(name) : title;
  }

  private class Label implements Cause.Reader {
    @Override
    public String machine(String name) {
      return Titles.this.machine(name);
    }

    @Override
    public String stop(String machine, String name) {
      return inText(Titles.this.stop(machine, name));
    }

    @Override
    public String resource(String name) {
      return inText(Titles.this.resource(name));
    }

    @Override
    public String store(String name) {
      return Titles.this.store(name);
    }
  }

  private final class InText extends Label {
    @Override
    public String machine(String name) {
      return machineInText(name);
    }

    @Override
    public String resource(String name) {
      return "the " + super.resource(name);
    }

    @Override
    public String store(String name) {
      return storeInText(name);
    }
  }
}
