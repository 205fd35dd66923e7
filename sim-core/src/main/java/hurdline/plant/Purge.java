package hurdline.plant;

/**
 * The first packages of a product after a changeover, which bring less.
 *
 * @param packages how many after each changeover
 * @param factor on the product's price, 0 to 1; at 0 they are waste
 */
public record Purge(int packages, double factor) {
  public Purge {
    Check.count(1, "packages", packages);
    Check.share("factor", factor);
  }
}
