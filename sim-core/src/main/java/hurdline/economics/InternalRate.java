package hurdline.economics;

import java.util.List;
import java.util.stream.Stream;

/**
 * The rates above −50 % a year at which payments have a net present value of zero.
 *
 * <p>With x = 1/(1 + i) the present value is a sum of powers of x, and every rate above −100 % is
 * one of its roots above zero. Payments that change their sign once have exactly one such root
 * (Descartes' rule of signs); with more changes there may be none, one or several. A rate at or
 * below −50 %, at which money halves in a year, comes of a small loss in a late year and says
 * nothing about a purchase; it is left out.
 *
 * @param rates all of them, shares a year, rising
 * @see "Sullivan, Wicks and Koelling, Engineering Economy, ch. 5, on multiple rates of return"
 */
public record InternalRate(List<Double> rates) {
  /**
   * Common practice, no source: no purchase is judged by a rate at which money halves in a year or
   * faster.
   */
  private static final double LOWEST = -0.5;

  /** Rates are found to some 1e-14; one this near the discount rate is on neither side of it. */
  private static final double ROUNDING = 1e-9;

  public InternalRate {
    rates = List.copyOf(rates);
  }

  public static InternalRate of(Cash cash) {
    return new InternalRate(
        PowerSum.of(cash.atYr(), cash.amounts()).rootsAbove0().stream()
            .map(x -> 1 / x - 1)
            .filter(rate -> rate > LOWEST)
            .sorted()
            .toList());
  }

  /** The one rate; NaN where there is none or several. */
  public double only() {
    return rates.size() == 1 ? rates.get(0) : Double.NaN;
  }

  /**
   * The rate that an investor means: the one up to which the purchase stays worth its price as the
   * discount rate rises, or if it loses as it is, the one to which the discount rate would have to
   * fall. So it is above the discount rate exactly where the net present value is above zero. NaN
   * where there is none on that side.
   *
   * @param cash of which these are the rates
   * @param discount share a year
   */
  public double against(Cash cash, double discount) {
    Stream<Double> near = rates.stream().filter(rate -> Math.abs(rate - discount) < ROUNDING);
    return near.findFirst()
        .or(
            () ->
                cash.netPresentValue(discount) > 0
                    ? rates.stream().filter(rate -> rate > discount).findFirst()
                    : rates.stream().filter(rate -> rate < discount).reduce((first, last) -> last))
        .orElse(Double.NaN);
  }

  /** The others, rising. */
  public List<Double> othersThan(double rate) {
    return rates.stream().filter(other -> other != rate).toList();
  }
}
