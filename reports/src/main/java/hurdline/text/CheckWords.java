package hurdline.text;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.List;

/**
 * What {@code check} says: per line a table of loads and capacities, what limits it and what would
 * next.
 */
public final class CheckWords {
  /** Columns of a row beside the name. */
  private static final int FIGURES = 2 + 3 * 8 + 2 * 10;

  private final CheckAnswer answer;
  private final Wording wording;

  public CheckWords(CheckAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * @param width columns that a line of the tables may have
   */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    lines.add(
        answer.header().file()
            + " is right: "
            + answer.header().plant()
            + ", "
            + wording.titles().option(answer.header().option())
            + ", "
            + wording.span(answer.header().from(), answer.header().to()));
    lines.addAll(new CheckHeadline(answer, wording).sentences());
    for (Capacity.Line line : answer.capacity().lines()) {
      lines.add("");
      lines.addAll(lineOf(line, width));
    }
    new OrderWords(answer.capacity(), wording)
        .all()
        .forEach(text -> lines.add("orders      " + text));
    lines.add("");
    lines.addAll(legend());
    return lines;
  }

  /** What the two figures are, and what they leave out. */
  public static List<String> legend() {
    return List.of(
        "Load: how much of what is fed reaches a machine, 1 being all. Limit: what it takes itself. Rated and"
            + " expected: what the line could be fed if nothing but this machine limited it. Headroom: expected"
            + " over the feeder's own rate, less one.",
        "Rated: nothing stops. Expected: mean stops, package changes, screen changes and lifts, and the"
            + " hands that they need; in the table each machine alone.",
        "Queues come on top: waits for a hand that is busy elsewhere, full and empty bins, yard and"
            + " weather. A run simulates them.");
  }

  private List<String> lineOf(Capacity.Line line, int columns) {
    List<String> lines = new ArrayList<>();
    String rate = wording.unit("t/h");
    lines.add(
        wording.titles().line(line.line())
            + " on "
            + Titles.inText(wording.titles().crop(line.crop()))
            + ", fed by "
            + wording.titles().machineInText(line.feed())
            + " at "
            + wording.fixed(line.feedRateTPerH(), 2, "t/h")
            + " "
            + rate
            + "; all in "
            + rate
            + ":");
    int width =
        line.machines().stream()
            .mapToInt(m -> wording.titles().machine(m.machine()).length())
            .max()
            .orElse(7);
    width = Math.min(Math.max(width, "machine".length()), columns - FIGURES);
    lines.addAll(row(width, "machine", "load", "limit", "rated", "expected", "headroom"));
    for (Capacity.Machine machine : line.machines()) {
      lines.addAll(
          row(
              width,
              wording.titles().machine(machine.machine()),
              wording.fixed(machine.loadTPerT(), 3, ""),
              orNone(machine.limitTPerH()),
              orNone(machine.ratedTPerH()),
              orNone(machine.expectedTPerH()),
              headroom(machine.headroom())));
    }
    for (Capacity.Resource resource : line.resources()) {
      lines.addAll(
          row(
              width,
              wording.titles().resource(resource.resource()),
              "",
              "",
              "",
              orNone(resource.expectedTPerH()),
              headroom(resource.headroom())));
    }
    CapacityWords words = new CapacityWords(line, wording);
    lines.add("  rated     " + words.rated());
    lines.add("  expected  " + words.expected());
    words.next().ifPresent(next -> lines.add("  next      " + next));
    return lines;
  }

  private String headroom(double share) {
    return Double.isNaN(share) ? "" : wording.fixed(share, 0, "share") + " %";
  }

  private String orNone(double tPerH) {
    return Double.isNaN(tPerH) ? "none" : wording.fixed(tPerH, 2, "t/h");
  }

  /** A name that is too long goes on in the next line. */
  private static List<String> row(
      int width,
      String name,
      String load,
      String limit,
      String rated,
      String expected,
      String room) {
    List<String> names = TableText.wrapped(name, width);
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
                "  %-" + width + "s %7s %7s %7s %9s %9s",
                names.get(0),
                load,
                limit,
                rated,
                expected,
                room)
            .stripTrailing());
    names.subList(1, names.size()).forEach(rest -> lines.add("  " + rest));
    return lines;
  }
}
