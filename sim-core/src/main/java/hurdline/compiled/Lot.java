package hurdline.compiled;

import hurdline.plant.LotAttribute;

/**
 * What a kilogram as is of some material is: dry matter and water by component, and its attributes.
 * Written over and over.
 */
public final class Lot {
  public final double[] dry;
  public final double[] water;

  /** [attribute] of those that the plant has; 0 where the crop lacks it. */
  public final double[] attribute;

  public Lot(CompiledLines layout) {
    int components = layout.components;
    dry = new double[components];
    water = new double[components];
    attribute = new double[layout.naming.attributes.size()];
  }

  /**
   * Says what a kilogram has of a component.
   *
   * @param share of the dry matter
   * @param moisture share of water in the mass as is
   */
  public void set(int component, double share, double moisture) {
    dry[component] = (1 - moisture) * share;
    water[component] = moisture * share;
  }

  /**
   * Numbers that a lot takes up in a row: dry matter by component, then water likewise, then what
   * its attributes bring.
   */
  public static int width(CompiledLines layout) {
    return 2 * layout.components + layout.naming.attributes.size();
  }

  /** Becomes the lot that stands in a row from a place on. */
  public void read(double[] row, int at) {
    int n = dry.length;
    System.arraycopy(row, at, dry, 0, n);
    System.arraycopy(row, at + n, water, 0, n);
    System.arraycopy(row, at + 2 * n, attribute, 0, attribute.length);
  }

  /** Adds what a mass of this lot brings of each attribute to a row. */
  public void mixAttributes(double[] row, double massKg) {
    int at = 2 * dry.length;
    for (int a = 0; a < attribute.length; a++) {
      row[at + a] += LotAttribute.brings(massKg, attribute[a]);
    }
  }
}
