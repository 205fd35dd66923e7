package hurdline.answer;

import java.util.List;
import java.util.Optional;

/**
 * What the lines can do on average, by formula: no clock, no draws, each crop at its mean
 * composition, moisture and diameter; and what is ordered of it.
 *
 * @param lines one per line that a campaign uses
 * @param orders one per set of products whose orders compete for the same mill, or per product
 */
public record Capacity(List<Line> lines, List<Orders> orders) {
  public Capacity {
    lines = List.copyOf(lines);
    orders = List.copyOf(orders);
  }

  public static Capacity none() {
    return new Capacity(List.of(), List.of());
  }

  public Optional<Line> line(String name) {
    return lines.stream().filter(line -> line.line().equals(name)).findFirst();
  }

  /**
   * One line.
   *
   * @param feed the machine that feeds it
   * @param feedRateTPerH the feeder's own rate, t/h as-is, corrected for the mean lot
   * @param scheduledHours hours of its campaigns' shifts less rests
   * @param limits what it can be fed, and what limits it
   * @param machines in order of flow
   * @param resources those that its machines wait for
   */
  public record Line(
      String line,
      String crop,
      String feed,
      double feedRateTPerH,
      double scheduledHours,
      Limits limits,
      List<Machine> machines,
      List<Resource> resources) {
    public Line {
      machines = List.copyOf(machines);
      resources = List.copyOf(resources);
    }
  }

  /**
   * @param rated if nothing ever stops
   * @param expected with mean stops, package changes, screen changes and lifts; machines between
   *     which no bin lies stop together
   * @param next what limits the line once its bottleneck does not; empty where the bottleneck is
   *     nothing that has a capacity
   */
  public record Limits(Limit rated, Limit expected, List<Next> next) {
    public Limits {
      next = List.copyOf(next);
    }
  }

  /**
   * @param fedTPerH per scheduled hour, t/h as-is; NaN where nothing limits it
   * @param machines that limit it, the one that sets the pace first; empty where a resource does
   * @param resource that limits it, else empty
   */
  public record Limit(double fedTPerH, List<String> machines, String resource) {
    public Limit {
      machines = List.copyOf(machines);
    }
  }

  /**
   * @param cause what is taken not to limit, a word of {@link hurdline.measure.Cause}
   * @param freed the machines or the resource that this means
   */
  public record Next(String cause, List<String> freed, Limit rated, Limit expected) {
    public Next {
      freed = List.copyOf(freed);
    }
  }

  /**
   * One machine of a line.
   *
   * @param kind as the plant file spells it
   * @param loadTPerT what reaches it per tonne fed, t/t as-is
   * @param limitTPerH its own limit, t/h of its inflow; NaN if it has none
   * @param ratedTPerH the feed at which it is full, per scheduled hour; NaN without limit or load
   * @param expectedTPerH the same with its mean stops, changes and lifts, the machine alone
   * @param headroom expected feed over the feeder's own rate, less one: 0.25 is a quarter to spare,
   *     below 0 it cannot keep up with the feeder; NaN without limit or load
   */
  public record Machine(
      String machine,
      String kind,
      double loadTPerT,
      double limitTPerH,
      double ratedTPerH,
      double expectedTPerH,
      double headroom) {}

  /**
   * A resource that machines of the line wait for.
   *
   * @param expectedTPerH the feed at which their jobs keep it busy all the time
   * @param headroom as of a machine
   */
  public record Resource(String resource, double expectedTPerH, double headroom) {}

  /**
   * Orders against what can be made.
   *
   * @param products whose orders these are
   * @param orderedT in all
   * @param ofHours what they take of the scheduled hours at expected capacity, 1 is all
   * @param ofCrop what they take of the mean crop, 1 is all
   * @param firstLate due date of the first that cannot be met in time, else empty
   */
  public record Orders(
      List<String> products, double orderedT, double ofHours, double ofCrop, String firstLate) {
    public Orders {
      products = List.copyOf(products);
    }

    /** Share of all that can be made; above 1 they cannot all be met. */
    public double share() {
      return Math.max(ofHours, ofCrop);
    }
  }
}
