package hurdline.account;

import java.util.Arrays;

/** Sums of one kind of mass by crop: as-is, dry, and dry by component. */
public final class MassLedger {
  private final int components;
  private final double[] kg;
  private final double[] dryKg;
  private final double[] unpaidKg; // where a bale was paid less than its price
  private final double[] unpaidDryKg;
  private final double[] areaM2; // that was paid for with the bales
  private final double[] componentDryKg; // [crop * components + component]

  MassLedger(int crops, int components) {
    this.components = components;
    kg = new double[crops];
    dryKg = new double[crops];
    unpaidKg = new double[crops];
    unpaidDryKg = new double[crops];
    areaM2 = new double[crops];
    componentDryKg = new double[crops * components];
  }

  void reset() {
    Arrays.fill(kg, 0);
    Arrays.fill(dryKg, 0);
    Arrays.fill(unpaidKg, 0);
    Arrays.fill(unpaidDryKg, 0);
    Arrays.fill(areaM2, 0);
    Arrays.fill(componentDryKg, 0);
  }

  /**
   * @param massKg as-is
   * @param moisture water over as-is mass
   * @param dryShares share of each component in the dry matter, from {@code at}; read
   */
  public void add(int crop, double massKg, double moisture, double[] dryShares, int at) {
    double dry = massKg * (1 - moisture);
    kg[crop] += massKg;
    dryKg[crop] += dry;
    final double[] sums = componentDryKg;
    for (int component = 0, sum = crop * components; component < components; component++, sum++) {
      sums[sum] += dry * dryShares[at + component];
    }
  }

  /** A mass that was added is taken out again. */
  public void takeBack(int crop, double massKg, double moisture, double[] dryShares, int at) {
    add(crop, -massKg, moisture, dryShares, at);
  }

  /**
   * Of a mass that was added, the share that its price was lowered by; below 0 where it was raised.
   */
  public void unpaid(int crop, double massKg, double moisture, double share) {
    unpaidKg[crop] += massKg * share;
    unpaidDryKg[crop] += massKg * (1 - moisture) * share;
  }

  /** Of a field that was paid for with a mass that was added. */
  public void area(int crop, double m2) {
    areaM2[crop] += m2;
  }

  public double areaM2(int crop) {
    return areaM2[crop];
  }

  /** What is not paid for, as-is. */
  public double unpaidKg(int crop) {
    return unpaidKg[crop];
  }

  public double unpaidDryKg(int crop) {
    return unpaidDryKg[crop];
  }

  public double kg(int crop) {
    return kg[crop];
  }

  public double dryKg(int crop) {
    return dryKg[crop];
  }

  public double waterKg(int crop) {
    return kg[crop] - dryKg[crop];
  }

  public double componentDryKg(int crop, int component) {
    return componentDryKg[crop * components + component];
  }
}
