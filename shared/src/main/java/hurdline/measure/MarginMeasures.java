package hurdline.measure;

import java.util.List;

/** What makes up the margin. */
public final class MarginMeasures {
  private MarginMeasures() {}

  /** What comes in. */
  public static List<Measure> in() {
    return List.of(Measure.MONEY_REVENUE, Measure.MONEY_PRODUCT_STOCK, Measure.MONEY_STOCK_CHANGE);
  }

  /** What goes out. */
  public static List<Measure> out() {
    return List.of(
        Measure.MONEY_CROP_COST,
        Measure.MONEY_WAGES,
        Measure.MONEY_ELECTRICITY,
        Measure.MONEY_PACKAGES,
        Measure.MONEY_STOPS,
        Measure.MONEY_LATE_PENALTIES,
        Measure.MONEY_DRIER_FUEL,
        Measure.MONEY_FREIGHT,
        Measure.MONEY_COVERS,
        Measure.MONEY_OVERHEAD);
  }
}
