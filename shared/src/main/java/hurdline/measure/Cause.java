package hurdline.measure;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What holds a line: the word that stands for {@code <cause>} in {@code
 * line.<line>.hours.limited_by.<cause>}. Machine, stop and resource names hold no dot, so a cause
 * word can be taken apart again.
 */
public enum Cause {
  /** A machine's own rate; the word is the machine's name. */
  RATE("<machine>"),
  /** A stop of a machine: {@code mill.hammers}. */
  STOP("<machine>.<stop>"),
  /** A package change under way: {@code hurd_bagger.package_change}. */
  PACKAGE_CHANGE("<machine>.package_change"),
  /** A screen swap under way: {@code mill.screen_change}. */
  SCREEN_CHANGE("<machine>.screen_change"),
  /** The queue at a resource: {@code resource.loader}. */
  RESOURCE("resource.<resource>"),
  /** A full package that finds no room: {@code no_room.shed}. */
  STORE("no_room.<store>"),
  /** The lift that sets bales on the table, under way. */
  LIFT("lift"),
  /** No bale of the crop in the yard. */
  NO_BALES("no_bales"),
  /** Bales of the crop lie in the yard and may not be fed yet. */
  KEPT_APART("kept_apart"),
  /** The crop has run out; bins run empty. */
  CROP_DONE("crop_done"),
  /** No unmet order asks for a product. */
  NO_ORDER("no_order"),
  /** A machine is not on duty while the line is. */
  NO_CREW("no_crew");

  private static final String RESOURCE_HEAD = "resource.";
  private static final String STORE_HEAD = "no_room.";
  private static final String TWINS = "+"; // no name holds it

  private final String pattern;

  Cause(String pattern) {
    this.pattern = pattern;
  }

  /** The cause word, its placeholders filled in their order. */
  public String of(String... names) {
    return Names.fill(pattern, names);
  }

  /** The kind of a cause word. */
  public static Cause kindOf(String cause) {
    if (cause.startsWith(RESOURCE_HEAD)) {
      return RESOURCE;
    }
    if (cause.startsWith(STORE_HEAD)) {
      return STORE;
    }
    for (Cause kind : values()) {
      if (kind.pattern.equals(cause)) {
        return kind;
      }
    }
    int dot = cause.indexOf('.');
    if (dot < 0) {
      return RATE;
    }
    String what = cause.substring(dot + 1);
    return what.equals("package_change")
        ? PACKAGE_CHANGE
        : what.equals("screen_change") ? SCREEN_CHANGE : STOP;
  }

  /** The machine that a cause word names, or the empty string. */
  public static String machineOf(String cause) {
    return switch (kindOf(cause)) {
      case RATE -> cause;
      case STOP, PACKAGE_CHANGE, SCREEN_CHANGE -> cause.substring(0, cause.indexOf('.'));
      default -> "";
    };
  }

  /**
   * The word that stands for machines that are alike and in parallel where a cause word names a
   * machine: {@code mill_a+mill_b}. In {@code line.<line>.hours.limited_by.<cause>} each stands
   * alone.
   */
  public static String ofTwins(List<String> machines) {
    return String.join(TWINS, machines);
  }

  /** The machines that a cause word names; several are twins, none where it names no machine. */
  public static List<String> machinesOf(String cause) {
    String machine = machineOf(cause);
    return machine.isEmpty() ? List.of() : List.of(machine.split(Pattern.quote(TWINS)));
  }

  /** The resource that a cause word names, or the empty string. */
  public static String resourceOf(String cause) {
    return kindOf(cause) == RESOURCE ? cause.substring(RESOURCE_HEAD.length()) : "";
  }

  /** How what a cause names is read. */
  public interface Reader {
    String machine(String name);

    /** A stop of a machine as a cause word names it. */
    String stop(String machine, String name);

    String resource(String name);

    String store(String name);
  }

  private static String machines(String cause, Reader reader) {
    return machinesOf(cause).stream().map(reader::machine).collect(Collectors.joining(" and "));
  }

  /** In words, to follow "limited by": {@code the rate of the mill}. */
  public static String inWords(String cause, Reader reader) {
    String machine = machines(cause, reader);
    String tail = cause.substring(cause.indexOf('.') + 1);
    return switch (kindOf(cause)) {
      case RATE -> "the rate of " + machine;
      case STOP -> "the stop " + reader.stop(machineOf(cause), tail) + " of " + machine;
      case PACKAGE_CHANGE -> "the package change at " + machine;
      case SCREEN_CHANGE -> "the screen change of " + machine;
      case RESOURCE -> "the wait for " + reader.resource(tail);
      case STORE -> "want of room in " + reader.store(tail);
      case LIFT -> "the lift that sets bales on the table";
      case NO_BALES -> "want of bales";
      case KEPT_APART -> "bales kept apart until released";
      case CROP_DONE -> "the end of the crop";
      case NO_ORDER -> "want of orders";
      case NO_CREW -> "a machine outside its hours";
    };
  }

  /** In a few words, for a chart: {@code mill: own rate}. */
  public static String label(String cause, Reader reader) {
    String machine = machines(cause, reader);
    String tail = cause.substring(cause.indexOf('.') + 1);
    return switch (kindOf(cause)) {
      case RATE -> machine + ": own rate";
      case STOP -> machine + ": " + reader.stop(machineOf(cause), tail);
      case PACKAGE_CHANGE -> machine + ": package change";
      case SCREEN_CHANGE -> machine + ": screen change";
      case RESOURCE -> "wait for " + reader.resource(tail);
      case STORE -> reader.store(tail) + ": full";
      case LIFT -> "lift to the table";
      case NO_BALES -> "no bales";
      case KEPT_APART -> "kept apart until released";
      case CROP_DONE -> "crop done";
      case NO_ORDER -> "no order";
      case NO_CREW -> "no crew";
    };
  }

  /** What to make of the cause, one sentence for the reader of a report. */
  public String sentence() {
    return switch (this) {
      case RATE -> "The machine ran as fast as it can and everything else waited for it.";
      case STOP ->
          "The machine stood in the stop named after the dot, waiting for its repair included.";
      case PACKAGE_CHANGE ->
          "A full package was being changed and no other spout or box was ready.";
      case SCREEN_CHANGE -> "The mill's screen was being changed.";
      case RESOURCE -> "A job waited for this resource, which was busy elsewhere.";
      case STORE -> "A full package stood on its spout or in its box, for the store had no room.";
      case LIFT -> "The table was empty while bales were on their way to it.";
      case NO_BALES -> "The yard had no bale of this crop.";
      case KEPT_APART ->
          "All bales of this crop in the yard were in loads kept apart until they are released.";
      case CROP_DONE -> "The crop had run out; the crew saw the bins run empty.";
      case NO_ORDER -> "No unmet order asked for a product.";
      case NO_CREW ->
          "A machine with hours of its own was outside its hours while the line was staffed.";
    };
  }
}
