package hurdline.simulation.activity;

import hurdline.simulation.yard.Bales;
import java.util.Arrays;

/** What lies on the tables of lines and in their feeders, by crop; a form of one by itself. */
public final class FeedStock {
  private static final int NONE = -1;

  private final ReplicationState present;
  private final Bales bales;
  private final Tables tables; // by line
  private final int[] feeding; // bale, by line
  private final int[][] forms; // by line
  private final int[] component; // of the yard's numbering, by ours

  FeedStock(
      ReplicationState present,
      Bales bales,
      Tables tables,
      int[] feeding,
      int[][] forms,
      int[] component) {
    this.present = present;
    this.bales = bales;
    this.tables = tables;
    this.feeding = feeding;
    this.forms = forms;
    this.component = component;
  }

  private double restKg(int l) {
    return present.network.restKg[present.layout.feedHead[l]];
  }

  /** Bales on the table and in the feeder, a begun one counted as one. */
  public int onTableAndFeeder(int l) {
    return tables.count(l) + (feeding[l] == NONE ? 0 : 1);
  }

  /** Of one crop, a form by itself. */
  public int onTableAndFeeder(int l, int crop) {
    int count = isFeeding(l, crop) ? 1 : 0;
    for (int i = 0; i < tables.count(l); i++) {
      count += bales.crop(tables.bale(l, i)) == crop ? 1 : 0;
    }
    return count;
  }

  private boolean isFeeding(int l, int crop) {
    return feeding[l] != NONE && bales.crop(feeding[l]) == crop;
  }

  /** Adds up what lies on the table and in the feeder: as-is, dry, and dry by component. */
  public double stillHereKg(int l, double[] componentKg) {
    double all = 0;
    for (int form : forms[l]) {
      all += stillHereKg(l, form, componentKg);
    }
    return all;
  }

  /** The same of one crop, a form by itself. */
  public double stillHereKg(int l, int crop, double[] componentKg) {
    double all = 0;
    for (int i = 0; i < tables.count(l); i++) {
      int bale = tables.bale(l, i);
      if (bales.crop(bale) == crop) {
        all += bales.add(bale, bales.massKg(bale), component, componentKg);
      }
    }
    if (isFeeding(l, crop)) {
      all += bales.add(feeding[l], restKg(l), component, componentKg);
    }
    return all;
  }

  /** What was taken off the price of the same, in as-is mass and in dry mass. */
  public void stillUnpaidKg(int l, int crop, double[] asIsAndDry) {
    Arrays.fill(asIsAndDry, 0);
    for (int i = 0; i < tables.count(l); i++) {
      int bale = tables.bale(l, i);
      if (bales.crop(bale) == crop) {
        unpaid(bale, bales.massKg(bale), asIsAndDry);
      }
    }
    if (isFeeding(l, crop)) {
      unpaid(feeding[l], restKg(l), asIsAndDry);
    }
  }

  /** The area that was paid for with the same. */
  public double stillAreaM2(int l, int crop) {
    double m2 = 0;
    for (int i = 0; i < tables.count(l); i++) {
      int bale = tables.bale(l, i);
      m2 += bales.crop(bale) == crop ? bales.areaM2(bale, bales.massKg(bale)) : 0;
    }
    return isFeeding(l, crop) ? m2 + bales.areaM2(feeding[l], restKg(l)) : m2;
  }

  private void unpaid(int bale, double kg, double[] to) {
    to[0] += kg * bales.unpaid(bale);
    to[1] += kg * (1 - bales.moisture(bale)) * bales.unpaid(bale);
  }
}
