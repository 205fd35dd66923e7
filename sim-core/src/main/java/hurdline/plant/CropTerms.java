package hurdline.plant;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What growers of a crop are paid besides its price.
 *
 * @param perM2 for the area of a field, with each bale its share
 * @param advance absent where nothing is paid on contract
 */
public record CropTerms(double perM2, Optional<Advance> advance) {
  public CropTerms {
    Check.notBelow0("perM2", perM2);
  }

  /**
   * Paid on contract for each field and taken off what its bales come to.
   *
   * @param perM2 for its area
   * @param perKg for its mean yield
   * @param kept whether the grower keeps what the bales do not come to
   * @param paid on the morning of which day; the calendar's first where absent
   * @param interestPerS what a sum costs while it is paid and not earned, a share of it in a second
   */
  public record Advance(
      double perM2, double perKg, boolean kept, Optional<LocalDate> paid, double interestPerS) {
    public Advance {
      Check.notBelow0("perM2", perM2);
      Check.notBelow0("perKg", perKg);
      Check.notBelow0("interestPerS", interestPerS);
    }

    /** What is paid for a field. */
    public double of(Delivery.Field field) {
      double meanKgPerM2 = field.yieldKgPerM2().meanWithin(0, Double.POSITIVE_INFINITY);
      return field.areaM2() * (perM2 + perKg * meanKgPerM2);
    }
  }

  /** Whether a poor crop leaves the plant with an advance that it does not get back. */
  public boolean hasFloor() {
    return advance.map(Advance::kept).orElse(false);
  }
}
