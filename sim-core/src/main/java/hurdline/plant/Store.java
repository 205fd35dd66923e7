package hurdline.plant;

/**
 * A store in which full packages wait until they leave.
 *
 * @param holdsKg as-is mass of packages that it has room for
 */
public record Store(String name, double holdsKg) {
  public Store {
    Check.above0("holdsKg", holdsKg);
  }
}
