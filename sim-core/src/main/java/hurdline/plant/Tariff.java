package hurdline.plant;

import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What electricity costs.
 *
 * @param energyPerJ in hours for which no period has a price
 * @param demandPerWMonth for the demand that is billed for a calendar month, whatever its hour
 * @param periods in the file's order; of those that hold at an instant, the first with a price of
 *     energy gives it
 * @param ratchets none where a month's own demand is billed
 */
public record Tariff(
    double energyPerJ, double demandPerWMonth, List<Period> periods, List<Ratchet> ratchets) {
  public Tariff {
    Check.notBelow0("energyPerJ", energyPerJ);
    Check.notBelow0("demandPerWMonth", demandPerWMonth);
    periods = List.copyOf(periods);
    ratchets = List.copyOf(ratchets);
  }

  /** The same hours and ratchet with nothing to pay. */
  public Tariff withoutPrices() {
    return new Tariff(0, 0, periods.stream().map(Period::withoutPrices).toList(), ratchets);
  }

  /**
   * Hours with prices of their own.
   *
   * @param energyPerJ absent where a later period or the tariff itself says
   * @param demandPerWMonth for the highest demand of a month in these hours, on top of the
   *     tariff's; absent where there is no charge of its own
   */
  public record Period(
      String name, OptionalDouble energyPerJ, OptionalDouble demandPerWMonth, ClockHours hours) {
    public Period {
      energyPerJ.ifPresent(price -> Check.notBelow0("energyPerJ", price));
      demandPerWMonth.ifPresent(price -> Check.notBelow0("demandPerWMonth", price));
    }

    private Period withoutPrices() {
      return new Period(name, without(energyPerJ), without(demandPerWMonth), hours);
    }

    private static OptionalDouble without(OptionalDouble price) {
      return price.isPresent() ? OptionalDouble.of(0) : price;
    }
  }

  /**
   * A month is billed at least a share of the highest demand of the months before it.
   *
   * @param share of that demand
   * @param months before the billed one that are looked at
   * @param counted months of the year whose demand counts
   * @param beforeW highest demand of the months before the first day that count, as if reached in
   *     the month before it
   */
  public record Ratchet(double share, int months, Set<Month> counted, double beforeW) {
    public Ratchet {
      Check.someShare("share", share);
      Check.count(1, "months", months);
      counted = InOrder.copy(counted);
      Check.notBelow0("beforeW", beforeW);
    }
  }
}
