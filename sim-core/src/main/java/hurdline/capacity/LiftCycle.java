package hurdline.capacity;

/**
 * Mean time from one lift of b bales to the next at a feeder that the yard never keeps waiting:
 * with the time f to feed one bale, the lift ℓ, n places on the table and h carriers,
 *
 * <pre>
 *   max(b·f, ℓ / min(h, g), (ℓ + max(0, b − 1 − r)·f) / g)      g = ⌊n/b⌋ groups of places, r = n − g·b
 * </pre>
 *
 * <p>A lift is asked for when b places are free. At a feeder that waits, the first bale leaves the
 * table at once and the last b − 1 feeds later, less what the r places over allow. Exact where all
 * lifts last the same.
 */
final class LiftCycle {
  private LiftCycle() {}

  /**
   * @param feedS time to feed one bale
   * @param bales moved at once, 1 to {@code places}
   * @param carriers infinite where a lift needs nobody
   */
  static double meanS(double feedS, double liftS, int bales, int places, double carriers) {
    int groups = places / bales;
    int over = places - groups * bales;
    double atOnce = Math.min(carriers, groups);
    if (!(atOnce > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double refillS = (liftS + Math.max(0, bales - 1 - over) * feedS) / groups;
    return Math.max(bales * feedS, Math.max(liftS / atOnce, refillS));
  }
}
