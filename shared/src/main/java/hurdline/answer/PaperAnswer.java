package hurdline.answer;

import java.util.List;

/**
 * The lines' capacity on paper: no clock, no chance, each crop at its mean composition, moisture
 * and diameter.
 *
 * @param header plant and settings; 0 replications
 * @param lines one per line that a campaign uses
 * @param warnings what is allowed but looks wrong, whole lines
 */
public record PaperAnswer(Header header, Outline outline, List<Line> lines, List<String> warnings)
    implements Answer {
  public PaperAnswer {
    lines = List.copyOf(lines);
    warnings = List.copyOf(warnings);
  }

  /**
   * One line on paper.
   *
   * @param feed the machine that feeds it
   * @param feedRateTPerH the feeder's own rate, t/h as-is, corrected for the mean lot
   * @param capacityTPerH what the line can be fed on average, t/h: the least of the machines'
   *     {@code fedTPerH}
   * @param holder the machine that sets it
   * @param scheduledHours hours of its campaigns' shifts less rests
   * @param capacityT capacity times scheduled hours, t
   */
  public record Line(
      String line,
      String crop,
      String feed,
      double feedRateTPerH,
      double capacityTPerH,
      String holder,
      double scheduledHours,
      double capacityT,
      List<Machine> machines) {
    public Line {
      machines = List.copyOf(machines);
    }
  }

  /**
   * One machine of a line, in order of flow.
   *
   * @param kind as the plant file spells it
   * @param loadTPerT what reaches it per tonne fed, t/t as-is
   * @param limitTPerH its own limit, t/h of its inflow; NaN if it has none
   * @param fedTPerH the feed at which it is full, limit over load; NaN without limit or load
   * @param headroom limit over its load at the feeder's rate, less one: 0.25 is a quarter to spare,
   *     below 0 it holds the line back; NaN without limit or load
   */
  public record Machine(
      String machine,
      String kind,
      double loadTPerT,
      double limitTPerH,
      double fedTPerH,
      double headroom) {}
}
