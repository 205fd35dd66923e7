package hurdline.simulation.yard;

import hurdline.compiled.Lot;
import java.util.Arrays;
import java.util.List;

/**
 * All bales that exist at present, as columns of one table; a used-up bale's row is handed out
 * again.
 *
 * <p>A bale's mass is that of the instant {@link #knownAtS}; whoever books a loss moves both on.
 * Rows can be strung on lists through {@link #next}: those at a field, those on a truck.
 */
public final class Bales {
  private static final int NONE = -1;

  final int components;
  final int attributes;
  int[] crop; // NONE for a free row
  int[] place; // NONE where it lies in no place of the yard
  int[] next;
  int[] turn; // in which it came to its place
  double[] massKg;
  double[] moisture;
  double[] attribute; // [bale * attributes + attribute], 0 where the crop has none
  double[] unpaid; // share by which its price was lowered, 0 before it is weighed in
  double[] areaM2; // of its field, where that is paid for, as far as it is neither lost nor fed
  boolean[] goesAsItCame; // will fail the test for which it is kept apart
  double[] weighedInS;
  double[] knownAtS;
  double[] pickKey; // the lower is picked first
  double[] pickTie;
  double[] dryShare; // [bale * components + component]
  private int rows;
  private int free = NONE;

  public Bales(int components, int attributes) {
    this.components = components;
    this.attributes = attributes;
    int room = 256;
    crop = new int[room];
    place = new int[room];
    next = new int[room];
    turn = new int[room];
    massKg = new double[room];
    moisture = new double[room];
    attribute = new double[room * attributes];
    unpaid = new double[room];
    areaM2 = new double[room];
    goesAsItCame = new boolean[room];
    weighedInS = new double[room];
    knownAtS = new double[room];
    pickKey = new double[room];
    pickTie = new double[room];
    dryShare = new double[room * components];
  }

  public void reset() {
    rows = 0;
    free = NONE;
  }

  /** A new row; all but the crop is for the caller to fill in. */
  public int add(int ofCrop) {
    int bale = free;
    if (bale == NONE) {
      bale = rows++;
      if (bale == crop.length) {
        grow(2 * rows);
      }
    } else {
      free = next[bale];
    }
    crop[bale] = ofCrop;
    place[bale] = NONE;
    next[bale] = NONE;
    unpaid[bale] = 0;
    areaM2[bale] = 0;
    goesAsItCame[bale] = false;
    return bale;
  }

  /** The bale is used up or gone. */
  void free(int bale) {
    if (crop[bale] == NONE) {
      throw new IllegalStateException("bale " + bale + " is gone already");
    }
    crop[bale] = NONE;
    place[bale] = NONE;
    next[bale] = free;
    free = bale;
  }

  /** Of a form its own number; none for a free row. */
  public int crop(int bale) {
    return crop[bale];
  }

  /** As of the instant when it was last known. */
  public double massKg(int bale) {
    return massKg[bale];
  }

  /** Where it lies in the yard; none where it lies in no place. */
  public int place(int bale) {
    return place[bale];
  }

  /** In which it came to its place. */
  public int turn(int bale) {
    return turn[bale];
  }

  /**
   * Writes what a kilogram of a bale is.
   *
   * @param component of this table, by the lot's numbering
   */
  public void lot(int bale, int[] component, Lot lot) {
    int at = bale * components;
    for (int c = 0; c < lot.dry.length; c++) {
      lot.set(c, dryShare[at + component[c]], moisture[bale]);
    }
    attributes(bale, lot.attribute);
  }

  /**
   * Adds the dry matter of a mass of a bale, by component.
   *
   * @param component of this table, by the numbering of what is added to
   * @return the mass
   */
  public double add(int bale, double kg, int[] component, double[] componentKg) {
    double dry = kg * (1 - moisture[bale]);
    for (int c = 0; c < componentKg.length; c++) {
      componentKg[c] += dry * dryShare[bale * components + component[c]];
    }
    return kg;
  }

  /** Share by which a bale's price was lowered. */
  public double unpaid(int bale) {
    return unpaid[bale];
  }

  /** Area of its field that a mass of a bale stands for, where that is paid for. */
  public double areaM2(int bale, double kg) {
    return areaM2[bale] == 0 ? 0 : areaM2[bale] * kg / massKg[bale];
  }

  public double moisture(int bale) {
    return moisture[bale];
  }

  /** Writes a bale's attributes. */
  private void attributes(int bale, double[] to) {
    System.arraycopy(attribute, bale * attributes, to, 0, attributes);
  }

  /** Rows in use are among those below this. */
  public int rows() {
    return rows;
  }

  /** A bale that another year has left, at time zero; its place is for the caller to fill in. */
  public int add(CarriedOverStock.Bale left) {
    int bale = add(left.crop());
    massKg[bale] = left.massKg();
    moisture[bale] = left.moisture();
    System.arraycopy(left.attribute(), 0, attribute, bale * attributes, attributes);
    unpaid[bale] = left.unpaid();
    areaM2[bale] = left.areaM2();
    weighedInS[bale] = -left.ageS();
    knownAtS[bale] = -left.knownS();
    System.arraycopy(left.dryShare(), 0, dryShare, bale * components, components);
    return bale;
  }

  /** The bales of a list for another year. */
  public void told(int first, int at, double endS, List<CarriedOverStock.Bale> to) {
    for (int bale = first; bale != NONE; bale = next[bale]) {
      to.add(told(bale, at, endS));
    }
  }

  /** The bale for another year; its mass must be that of the end. */
  public CarriedOverStock.Bale told(int bale, int at, double endS) {
    double[] shares = Arrays.copyOfRange(dryShare, bale * components, (bale + 1) * components);
    double[] values = new double[attributes];
    attributes(bale, values);
    return new CarriedOverStock.Bale(
        crop[bale],
        at,
        massKg[bale],
        moisture[bale],
        values,
        unpaid[bale],
        areaM2[bale],
        endS - weighedInS[bale],
        0,
        shares);
  }

  /**
   * Lets a bale shrink as a whole: m · e^(−rate · time).
   *
   * @return the mass lost since it was last known, kg
   */
  double shrink(int bale, double lossPerS, double nowS) {
    double before = massKg[bale];
    double passedS = nowS - knownAtS[bale];
    knownAtS[bale] = nowS;
    if (lossPerS > 0 && passedS > 0) {
      massKg[bale] = before * StrictMath.exp(-lossPerS * passedS);
    }
    return before - massKg[bale];
  }

  private void grow(int room) {
    crop = Arrays.copyOf(crop, room);
    place = Arrays.copyOf(place, room);
    next = Arrays.copyOf(next, room);
    turn = Arrays.copyOf(turn, room);
    massKg = Arrays.copyOf(massKg, room);
    moisture = Arrays.copyOf(moisture, room);
    attribute = Arrays.copyOf(attribute, room * attributes);
    unpaid = Arrays.copyOf(unpaid, room);
    areaM2 = Arrays.copyOf(areaM2, room);
    goesAsItCame = Arrays.copyOf(goesAsItCame, room);
    weighedInS = Arrays.copyOf(weighedInS, room);
    knownAtS = Arrays.copyOf(knownAtS, room);
    pickKey = Arrays.copyOf(pickKey, room);
    pickTie = Arrays.copyOf(pickTie, room);
    dryShare = Arrays.copyOf(dryShare, room * components);
  }

  /** No bale, and no crop or place of one. */
  public static int none() {
    return NONE;
  }
}
