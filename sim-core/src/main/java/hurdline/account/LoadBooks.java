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
    count++;
  }

  /** A load that came by itself begins. */
  public void begin(int ofCrop, double nowS) {
    begin(ofCrop, NO_FIELD, nowS);
  }

  /** A bale of the load that began last. */
  public void add(double massKg, double moisture) {
    int load = count - 1;
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
