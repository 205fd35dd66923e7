package hurdline.words;

import hurdline.answer.PaperAnswer;
import java.util.ArrayList;
import java.util.List;

/**
 * What {@code check} says: per line a table of loads and headroom, the holder and the capacity on
 * paper.
 */
public final class PaperWords {
  private final PaperAnswer answer;
  private final Wording wording;

  public PaperWords(PaperAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        answer.header().file()
            + " is right: "
            + answer.header().plant()
            + ", "
            + answer.header().option()
            + ", "
            + wording.span(answer.header().from(), answer.header().to()));
    for (PaperAnswer.Line line : answer.lines()) {
      lines.add("");
      lines.addAll(lineOf(line));
    }
    return lines;
  }

  private List<String> lineOf(PaperAnswer.Line line) {
    List<String> lines = new ArrayList<>();
    String rate = wording.unit("t/h");
    lines.add(
        line.line()
            + " on "
            + line.crop()
            + ", fed by "
            + line.feed()
            + " at "
            + wording.fixed(line.feedRateTPerH(), 2, "t/h")
            + " "
            + rate
            + ":");
    int width = line.machines().stream().mapToInt(m -> m.machine().length()).max().orElse(7);
    width = Math.max(width, "machine".length());
    lines.add(row(width, "machine", "load per fed", "limit " + rate, "fed " + rate, "headroom"));
    for (PaperAnswer.Machine machine : line.machines()) {
      lines.add(
          row(
              width,
              machine.machine(),
              wording.fixed(machine.loadTPerT(), 3, ""),
              orNone(machine.limitTPerH(), 2, "t/h"),
              orNone(machine.fedTPerH(), 2, "t/h"),
              headroom(machine)));
    }
    lines.add(
        "  on paper "
            + line.holder()
            + " holds "
            + line.line()
            + " at "
            + wording.fixed(line.capacityTPerH(), 2, "t/h")
            + " "
            + rate
            + " fed: "
            + wording.amount(line.capacityT(), "t")
            + " in "
            + wording.amount(line.scheduledHours(), "h")
            + " scheduled, were nothing ever to stop");
    return lines;
  }

  private String headroom(PaperAnswer.Machine machine) {
    return Double.isNaN(machine.headroom())
        ? ""
        : wording.fixed(machine.headroom(), 0, "share") + " %";
  }

  private String orNone(double value, int decimals, String unit) {
    return Double.isNaN(value) ? "none" : wording.fixed(value, decimals, unit);
  }

  private static String row(
      int width, String machine, String load, String limit, String fed, String headroom) {
    return String.format(
            "  %-" + width + "s %12s %12s %12s %9s", machine, load, limit, fed, headroom)
        .stripTrailing();
  }
}
