package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Lot;
import java.util.Arrays;

/**
 * What lies in the bins: lots, first in, first out, each with the composition that it came with.
 *
 * <p>The lots are the one truth: a bin is empty when its last lot is used up. The level, in the
 * unit of the bin's capacity, is a running sum that is set anew from the lots when asked to, so
 * that it cannot drift away from them.
 */
final class Bins {
  /** A lot below this mass is joined to the next one, kg. */
  private static final double CRUMB_KG = 1e-6;

  /** Shares that differ by no more than this are one blend. */
  private static final double SAME_SHARE = 1e-12;

  enum Fill {
    EMPTY,
    BETWEEN,
    FULL
  }

  private final int components;
  private final int width;
  private final boolean[] byVolume;
  private final double[] looseKgPerM3;
  private final double[][] mass;
  private final double[][] content;
  private final int[] first;
  private final int[] count;

  final Fill[] fill;

  /** [bin] whether its draw waits for the level to reach {@code startAt}. */
  final boolean[] barred;

  /** [bin] level in kg or m3, and all mass in it. */
  final double[] level;

  final double[] massKg;

  /** [bin][width] the blend that arrives: a {@link Lot} in a row. */
  final double[][] blend;

  /** [bin] volume of a kg of that blend, m3; 1 in bins that hold a mass. */
  final double[] blendUnit;

  private final double[] holds;
  private final double[] startAt;
  private final double[] fresh;

  Bins(CompiledLines layout) {
    components = layout.components;
    width = Lot.width(layout);
    byVolume = layout.byVolume;
    looseKgPerM3 = layout.looseKgPerM3;
    holds = layout.holds;
    startAt = layout.startAt;
    int n = layout.bins;
    mass = new double[n][16];
    content = new double[n][16 * width];
    first = new int[n];
    count = new int[n];
    fill = new Fill[n];
    barred = new boolean[n];
    level = new double[n];
    massKg = new double[n];
    blend = new double[n][width];
    blendUnit = new double[n];
    fresh = new double[width];
  }

  void reset() {
    Arrays.fill(first, 0);
    Arrays.fill(count, 0);
    Arrays.fill(fill, Fill.EMPTY);
    Arrays.fill(level, 0);
    Arrays.fill(massKg, 0);
    for (int b = 0; b < barred.length; b++) {
      barred[b] = startAt[b] > 0;
    }
  }

  /** An empty bin holds so much of the blend that arrives, as a season under way finds it. */
  void open(int bin, double units) {
    openLot(bin);
    add(bin, units / blendUnit[bin]);
    level[bin] = units;
    fill[bin] = units < holds[bin] ? Fill.BETWEEN : Fill.FULL;
    barred[bin] = units < startAt[bin];
  }

  /** The array in which the next blend of a bin is prepared before {@link #arrives}. */
  double[] fresh() {
    Arrays.fill(fresh, 0);
    return fresh;
  }

  /** The blend as last prepared. */
  double[] prepared() {
    return fresh;
  }

  /**
   * Takes the prepared blend as what arrives from now on; a new lot begins where it differs.
   *
   * @return whether the lot that the bin hands on has another composition now
   */
  boolean arrives(int bin) {
    double[] now = blend[bin];
    System.arraycopy(fresh, 0, now, 0, width);
    blendUnit[bin] = unit(bin, now, 0);
    return fill[bin] != Fill.EMPTY && openLot(bin);
  }

  /** Capacity units in a kg of a lot. */
  private double unit(int bin, double[] lot, int at) {
    if (!byVolume[bin]) {
      return 1;
    }
    double volume = 0;
    for (int c = 0; c < components; c++) {
      volume += (lot[at + c] + lot[at + components + c]) / looseKgPerM3[c];
    }
    return volume;
  }

  /** Begins to store what arrives. */
  void leaveEmpty(int bin) {
    fill[bin] = Fill.BETWEEN;
    openLot(bin);
  }

  /** Whether the lot that the bin hands on has another composition now. */
  private boolean openLot(int bin) {
    if (count[bin] > 0) {
      int last = slot(bin, count[bin] - 1);
      if (same(content[bin], last * width, blend[bin])) {
        return false;
      }
      if (mass[bin][last] < CRUMB_KG) {
        boolean joins = count[bin] > 1 && mass[bin][last] > 0;
        if (joins) {
          join(bin, slot(bin, count[bin] - 2), last);
        }
        // alone it takes the new blend's name; its own content is within the balance's rounding
        System.arraycopy(blend[bin], 0, content[bin], last * width, width);
        return count[bin] == 1 || joins && count[bin] == 2;
      }
    }
    if (count[bin] == mass[bin].length) {
      grow(bin);
    }
    count[bin]++;
    int at = slot(bin, count[bin] - 1);
    mass[bin][at] = 0;
    System.arraycopy(blend[bin], 0, content[bin], at * width, width);
    return false;
  }

  /**
   * A crumb goes into the lot before it: there may be thousands in a year, too much for rounding.
   */
  private void join(int bin, int lot, int crumb) {
    double kg = mass[bin][lot] + mass[bin][crumb];
    for (int k = 0; k < width; k++) {
      double one = mass[bin][lot] * content[bin][lot * width + k];
      double other = mass[bin][crumb] * content[bin][crumb * width + k];
      content[bin][lot * width + k] = (one + other) / kg;
    }
    mass[bin][lot] = kg;
    mass[bin][crumb] = 0;
  }

  private boolean same(double[] lots, int at, double[] other) {
    for (int k = 0; k < width; k++) {
      if (!(Math.abs(lots[at + k] - other[k]) <= SAME_SHARE)) {
        return false;
      }
    }
    return true;
  }

  private void grow(int bin) {
    int n = mass[bin].length;
    double[] wider = new double[2 * n];
    double[] longer = new double[2 * n * width];
    for (int k = 0; k < count[bin]; k++) {
      int at = slot(bin, k);
      wider[k] = mass[bin][at];
      System.arraycopy(content[bin], at * width, longer, k * width, width);
    }
    mass[bin] = wider;
    content[bin] = longer;
    first[bin] = 0;
  }

  private int slot(int bin, int place) {
    int at = first[bin] + place;
    return at < mass[bin].length ? at : at - mass[bin].length;
  }

  /** Stores arriving material in the newest lot. */
  void add(int bin, double kg) {
    mass[bin][slot(bin, count[bin] - 1)] += kg;
    massKg[bin] += kg;
    level[bin] += kg * blendUnit[bin];
  }

  /** Takes from the oldest lot. */
  void take(int bin, double kg) {
    mass[bin][first[bin]] -= kg;
    massKg[bin] -= kg;
    level[bin] -= kg * frontUnit(bin);
  }

  double frontKg(int bin) {
    return mass[bin][first[bin]];
  }

  double frontUnit(int bin) {
    return count[bin] == 0 ? blendUnit[bin] : unit(bin, content[bin], first[bin] * width);
  }

  boolean oneLot(int bin) {
    return count[bin] == 1;
  }

  /** The oldest lot is used up: the next comes, or the bin is empty. */
  void dropFront(int bin) {
    massKg[bin] -= mass[bin][first[bin]];
    if (count[bin] == 1) {
      empty(bin);
      return;
    }
    first[bin] = slot(bin, 1);
    count[bin]--;
  }

  private void empty(int bin) {
    count[bin] = 0;
    first[bin] = 0;
    level[bin] = 0;
    massKg[bin] = 0;
    fill[bin] = Fill.EMPTY;
    barred[bin] = startAt[bin] > 0;
  }

  /** The same for all bins that are neither full nor empty. */
  void sumLots() {
    for (int b = 0; b < fill.length; b++) {
      if (fill[b] == Fill.BETWEEN) {
        sumLots(b);
      }
    }
  }

  /** Sets level and mass to the sum of the lots. */
  void sumLots(int bin) {
    double kg = 0;
    double units = 0;
    for (int k = 0; k < count[bin]; k++) {
      int at = slot(bin, k);
      kg += mass[bin][at];
      units += mass[bin][at] * unit(bin, content[bin], at * width);
    }
    massKg[bin] = kg;
    level[bin] = units;
  }

  /** Copies the lot that the bin hands on into a head's loads. */
  void handOn(int bin, HeadLoads to) {
    boolean passes = count[bin] == 0;
    double[] from = passes ? blend[bin] : content[bin];
    int at = passes ? 0 : first[bin] * width;
    to.lot.read(from, at);
  }

  /** Dry matter of a component in all lots, kg. */
  double dryKg(int bin, int component) {
    double kg = 0;
    for (int k = 0; k < count[bin]; k++) {
      int at = slot(bin, k);
      kg += mass[bin][at] * content[bin][at * width + component];
    }
    return kg;
  }

  double waterKg(int bin) {
    double kg = 0;
    for (int k = 0; k < count[bin]; k++) {
      int at = slot(bin, k);
      for (int c = 0; c < components; c++) {
        kg += mass[bin][at] * content[bin][at * width + components + c];
      }
    }
    return kg;
  }
}
