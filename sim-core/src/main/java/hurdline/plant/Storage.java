package hurdline.plant;

import java.time.DayOfWeek;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Where a product waits once it is packed, who fetches it, and what is left of it is worth.
 *
 * @param store name of its store
 * @param pickUps absent where orders alone take it, package by package
 * @param worthPerKg money per mass at its moisture basis of what has not left at the end; absent
 *     where that is what it would sell for
 * @param opens packages in the store on the first day; 0 but in a season that is under way
 */
public record Storage(
    String store, Optional<PickUps> pickUps, OptionalDouble worthPerKg, int opens) {
  public Storage {
    Check.count(0, "opens", opens);
    worthPerKg.ifPresent(worth -> Check.finite("worthPerKg", worth));
  }

  /** Its worth where the file has one other than nothing. */
  public Optional<Double> pricedWorth() {
    return worthPerKg.orElse(0) == 0 ? Optional.empty() : Optional.of(worthPerKg.getAsDouble());
  }

  /** The same without a worth of its own at a price. */
  Storage withoutPrices() {
    return new Storage(
        store,
        pickUps,
        worthPerKg.isPresent() ? OptionalDouble.of(0) : OptionalDouble.empty(),
        opens);
  }

  Storage opening(int packages) {
    return new Storage(store, pickUps, worthPerKg, packages);
  }

  /**
   * Trucks that fetch it.
   *
   * @param atS when they come, seconds after midnight
   * @param loadKg as-is mass that a truck takes at most
   * @param atMost trucks of a day
   */
  public record PickUps(Set<DayOfWeek> days, int atS, double loadKg, int atMost) {
    public PickUps {
      days = InOrder.copy(days);
      Check.count(0, "atS", atS);
      Check.above0("loadKg", loadKg);
      Check.count(1, "atMost", atMost);
    }

    /** Whole packages of a full load. */
    public int packages(double packageKg) {
      return (int) Math.min(Integer.MAX_VALUE, Math.floor(loadKg / packageKg * (1 + 1e-12)));
    }
  }
}
