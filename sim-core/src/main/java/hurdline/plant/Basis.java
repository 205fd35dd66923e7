package hurdline.plant;

/** How a mass is brought to the one that is paid for. */
public sealed interface Basis {
  /**
   * @param kg as it lies on the scale
   */
  double paidKg(double kg, double dryKg);

  /** Paid as it is weighed, water and all. */
  record AsIs() implements Basis {
    @Override
    public double paidKg(double kg, double dryKg) {
      return kg;
    }
  }

  /**
   * Dry mass d brought to a moisture b: d / (1 − b).
   *
   * @param moisture water over mass, from 0 to below 1
   */
  record At(double moisture) implements Basis {
    public At {
      Check.part("moisture", moisture);
    }

    @Override
    public double paidKg(double kg, double dryKg) {
      return dryKg / (1 - moisture);
    }
  }
}
