package hurdline.plant;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What one machine or bin does in one line. Exactly one of {@code outlets} and {@code packs} is
 * given.
 *
 * @param machine the machine or bin
 * @param rateKgPerS limit on the as-is inflow, where there is one
 * @param breaks what becomes of what, first, all at once
 * @param dries share of the inflow's water that goes to the air, after {@code breaks}
 * @param ownHours of a bin's draw, where it keeps hours of its own
 * @param table bales that wait before this feeder in this line
 * @param precedence lowest is served first
 * @param rateBy corrections by attributes that the file has named
 */
public record Step(
    String machine,
    OptionalDouble rateKgPerS,
    List<Outlet> outlets,
    Optional<Packs> packs,
    List<Break> breaks,
    double dries,
    Optional<OwnHours> ownHours,
    OptionalInt table,
    int precedence,
    Curve rateByMoisture,
    Curve rateByDiameter,
    Map<String, Curve> rateBy,
    Mix mix,
    double stayS,
    Map<String, String> makes) {
  /** A mix of several screens that stayed for less would swap more than it mills. */
  public static final java.time.Duration SHORTEST_STAY = java.time.Duration.ofMinutes(1);

  public Step {
    outlets = List.copyOf(outlets);
    breaks = List.copyOf(breaks);
    makes = InOrder.copy(makes);
    rateBy = InOrder.copy(rateBy);
    rateKgPerS.ifPresent(rate -> Check.above0("rateKgPerS", rate));
    Check.share("dries", dries);
    table.ifPresent(bales -> Check.count(1, "table", bales));
    Check.count(0, "precedence", precedence);
    Check.notBelow0("stayS", stayS);
  }

  /** All that its rate is corrected by. */
  public List<Curve> rateCorrections() {
    return Stream.concat(Stream.of(rateByMoisture, rateByDiameter), rateBy.values().stream())
        .toList();
  }

  /**
   * @param to a machine, a bin, a product or {@code waste}
   * @param takes share of each component that leaves here; empty for the outlet that gets the rest
   * @param by corrections by component, by attributes that the file has named
   */
  public record Outlet(
      String to,
      Optional<Map<String, Double>> takes,
      Map<String, Curve> byMoisture,
      Map<String, Curve> byDiameter,
      Map<String, Map<String, Curve>> by) {
    public Outlet {
      by = InOrder.copy(by);
      takes.ifPresent(shares -> Check.shares("takes", shares));
    }

    /** All that its shares are corrected by. */
    List<Map<String, Curve>> corrections() {
      return Stream.concat(Stream.of(byMoisture, byDiameter), by.values().stream()).toList();
    }
  }

  /** A share of one component that becomes another. */
  public record Break(String component, String into, double share) {
    public Break {
      Check.share("share", share);
    }
  }

  /** What a filler or press fills. */
  public sealed interface Packs {
    /** The package that is filled here; the product's where absent. */
    Optional<String> packaging();
  }

  public record PacksProduct(String product, Optional<String> packaging) implements Packs {}

  /** The product of the screen that is in that mill. */
  public record PacksFromMill(String mill, Optional<String> packaging) implements Packs {}

  /** Hours of a bin's draw; what is left empty is the line's. */
  public record OwnHours(List<String> shifts, Optional<LocalDate> from, Optional<LocalDate> to) {
    public OwnHours {
      shifts = List.copyOf(shifts);
    }
  }

  /** How a mill chooses its screen. */
  public sealed interface Mix {}

  /** No mix given: the mill's first screen always. */
  public record FirstScreen() implements Mix {}

  public record Shares(List<MixShare> shares) implements Mix, WithoutOrder {
    public Shares {
      shares = List.copyOf(shares);
    }

    /** Whether all is milled on one screen. */
    boolean isOneForAll() {
      return shares.size() == 1 && shares.get(0).share() == 1;
    }
  }

  public record MixShare(String screen, double share) {
    public MixShare {
      Check.share("share", share);
    }
  }

  /**
   * The product of the earliest unmet order chooses.
   *
   * @param then what is milled while no order is open; {@link SpareScreen} decides where it is not
   *     given
   */
  public record ByOrders(Optional<WithoutOrder> then) implements Mix {}

  /** What a mill that works to orders does while none is open. */
  public sealed interface WithoutOrder {}

  public record StandStill() implements WithoutOrder {
    /** How the file says it. */
    public static String word() {
      return "stand-still";
    }
  }
}
