package hurdline.worth;

import java.util.List;

/**
 * The rates at which payments have a net present value of zero.
 *
 * <p>With x = 1/(1 + i) the present value is a sum of powers of x, and every rate above −100 % is one of its roots above
 * zero. Payments that change their sign once have exactly one such root (Descartes' rule of signs); with more changes
 * there may be none, one or several, and all of them are found.
 *
 * @param rates all of them, shares a year, rising
 */
public record InternalRate(List<Double> rates) {
  public InternalRate {
    rates = List.copyOf(rates);
  }

  public static InternalRate of(Cash cash) {
    return new InternalRate(
        PowerSum.of(cash.atYr(), cash.amounts()).rootsAbove0().stream().map(x -> 1 / x - 1).sorted().toList());
  }

  /** The one rate; NaN where there is none or several. */
  public double only() {
    return rates.size() == 1 ? rates.get(0) : Double.NaN;
  }
}
