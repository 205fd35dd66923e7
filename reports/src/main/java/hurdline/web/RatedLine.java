package hurdline.web;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.text.CapacityWords;
import hurdline.text.Wording;
import java.util.List;

/**
 * Rated and expected capacity of one line, in words, and how much each machine has to spare.
 *
 * @param next what would limit it next; empty where nothing with a capacity limits it
 */
record RatedLine(
    String title, String rated, String expected, String next, List<RatedMachine> machines) {

  /**
   * One machine.
   *
   * @param limits whether it is among those that limit the line
   * @param headroom expected feed over the feeder's own rate, less one, in percent; empty without
   *     limit or load
   * @param loadPercent the feeder's rate over expected feed, at most 100
   */
  record RatedMachine(
      String name, String title, String headroom, int loadPercent, boolean limits) {}

  static List<RatedLine> of(CheckAnswer answer, Wording wording) {
    return answer.capacity().lines().stream().map(line -> of(line, wording)).toList();
  }

  private static RatedLine of(Capacity.Line line, Wording wording) {
    CapacityWords words = new CapacityWords(line, wording);
    List<String> limiting = line.limits().expected().machines();
    return new RatedLine(
        wording.titles().line(line.line()),
        words.rated(),
        words.expected(),
        words.next().orElse(""),
        line.machines().stream()
            .map(machine -> of(machine, limiting.contains(machine.machine()), wording))
            .toList());
  }

  private static RatedMachine of(Capacity.Machine machine, boolean limits, Wording wording) {
    double headroom = machine.headroom();
    boolean none = Double.isNaN(headroom);
    return new RatedMachine(
        machine.machine(),
        wording.titles().machine(machine.machine()),
        none ? "" : wording.fixed(headroom, 0, "share") + " %",
        none ? 0 : (int) Math.round(Math.min(100, 100 / (1 + headroom))),
        limits);
  }
}
