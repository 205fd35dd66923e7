package hurdline.compiled;

import hurdline.plant.Cleanliness;

/** By which factor the price of a package changes with what is left in it, compiled. */
public final class Grading {
  /** The component whose share counts. */
  public final int component;

  private final PriceCurve price;

  Grading(Cleanliness cleanliness, int component) {
    this.component = component;
    price = new PriceCurve(cleanliness.inSteps(), cleanliness.factors());
  }

  /**
   * @param share of a package's dry matter
   */
  public double factor(double share) {
    return price.factor(share);
  }
}
