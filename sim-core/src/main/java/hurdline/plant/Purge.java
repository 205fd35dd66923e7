package hurdline.plant;

/**
 * The first packages of a product after a changeover, which bring less.
 *
 * @param packages how many after each changeover
 * @param factor on the product's price, 0 to 1; at 0 they are waste
 * @param underWay how many of a campaign that is under way at the start are still to come; a plant
 *     file has none
 */
public record Purge(int packages, double factor, int underWay) {
  public Purge {
    Check.count(1, "packages", packages);
    Check.share("factor", factor);
    Check.count(0, "underWay", underWay);
  }

  public Purge(int packages, double factor) {
    this(packages, factor, 0);
  }
}
