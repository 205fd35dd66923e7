package hurdline.plant;

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
   */
  public record Advance(double perM2, double perKg, boolean kept) {
    public Advance {
      Check.notBelow0("perM2", perM2);
      Check.notBelow0("perKg", perKg);
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
