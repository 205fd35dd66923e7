package hurdline.account;

import java.util.Arrays;

/**
 * Every load that was weighed in, one after the other: when, whose, how many bales and what they
 * weighed.
 */
public final class LoadBooks {
  /** Stands for a field where a load came by itself. */
  private static final int NO_FIELD = -1;

  private double[] atS = new double[256];
  private int[] crop = new int[256];
  private int[] field = new int[256];
  private int[] bales = new int[256];
  private double[] kg = new double[256];
  private double[] dryKg = new double[256];
  private double[] unpaidKg = new double[256];
  private double[] unpaidDryKg = new double[256];
  private double[] areaM2 = new double[256];
  private double[] failedAtS = new double[256];
  private int count;

  void reset() {
    count = 0;
  }

  /** A load of a field begins; bales are added next. */
  public void begin(int ofCrop, int ofField, double nowS) {
    if (count == atS.length) {
      grow(2 * count);
    }
    atS[count] = nowS;
    crop[count] = ofCrop;
    field[count] = ofField;
    bales[count] = 0;
    kg[count] = 0;
    dryKg[count] = 0;
    unpaidKg[count] = 0;
    unpaidDryKg[count] = 0;
    areaM2[count] = 0;
    failedAtS[count] = Double.POSITIVE_INFINITY;
    count++;
  }

  /** A load that came by itself begins. */
  public void begin(int ofCrop, double nowS) {
    begin(ofCrop, NO_FIELD, nowS);
  }

  /**
   * A bale of the load that began last.
   *
   * @param unpaid share by which its price was lowered
   * @param ofFieldM2 area of its field that was paid for with it
   */
  public void add(double massKg, double moisture, double unpaid, double ofFieldM2) {
    int load = count - 1;
    unpaidKg[load] += massKg * unpaid;
    unpaidDryKg[load] += massKg * (1 - moisture) * unpaid;
    areaM2[load] += ofFieldM2;
    bales[load]++;
    kg[load] += massKg;
    dryKg[load] += massKg * (1 - moisture);
  }

  private void grow(int room) {
    atS = Arrays.copyOf(atS, room);
    crop = Arrays.copyOf(crop, room);
    field = Arrays.copyOf(field, room);
    bales = Arrays.copyOf(bales, room);
    kg = Arrays.copyOf(kg, room);
    dryKg = Arrays.copyOf(dryKg, room);
    unpaidKg = Arrays.copyOf(unpaidKg, room);
    unpaidDryKg = Arrays.copyOf(unpaidDryKg, room);
    areaM2 = Arrays.copyOf(areaM2, room);
    failedAtS = Arrays.copyOf(failedAtS, room);
  }

  /** A load that was weighed in has failed its test. */
  public void failed(int load, double nowS) {
    failedAtS[load] = nowS;
  }

  /** When it failed its test; +∞ where it has not. */
  public double failedAtS(int load) {
    return failedAtS[load];
  }

  /** What of it is not paid for, as-is. */
  public double unpaidKg(int load) {
    return unpaidKg[load];
  }

  public double unpaidDryKg(int load) {
    return unpaidDryKg[load];
  }

  /** Area of its field that was paid for with it. */
  public double areaM2(int load) {
    return areaM2[load];
  }

  /** The number of the load that began last. */
  public int last() {
    return count - 1;
  }

  public int count() {
    return count;
  }

  public double atS(int load) {
    return atS[load];
  }

  public int crop(int load) {
    return crop[load];
  }

  /** Number of the field that it came from; below 0 for a load that came by itself. */
  public int field(int load) {
    return field[load];
  }

  public int bales(int load) {
    return bales[load];
  }

  public double kg(int load) {
    return kg[load];
  }

  public double dryKg(int load) {
    return dryKg[load];
  }
}
