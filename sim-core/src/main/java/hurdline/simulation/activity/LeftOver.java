package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.simulation.yard.Hauling;
import java.util.Arrays;

/** Bales left over when campaigns ended, of each form of their crop by itself. */
public final class LeftOver {
  private final CompiledLines layout;
  private final Hauling hauling;
  private final FeedStock stock;
  private final int[][] left; // [campaign][crop]

  LeftOver(CompiledLines layout, Hauling hauling, FeedStock stock, int campaigns) {
    this.layout = layout;
    this.hauling = hauling;
    this.stock = stock;
    left = new int[campaigns][layout.naming.crops.count()];
  }

  void reset() {
    for (int[] ofCampaign : left) {
      Arrays.fill(ofCampaign, 0);
    }
  }

  /** A campaign of a line ends now. */
  void count(int campaign, int line) {
    for (int form : layout.forms[layout.crop[line]]) {
      left[campaign][form] = hauling.leftOver(form) + onTables(form);
    }
  }

  private int onTables(int crop) {
    int count = 0;
    for (int line = 0; line < layout.lines; line++) {
      count += stock.onTableAndFeeder(line, crop);
    }
    return count;
  }

  /** Of all forms together. */
  public int all(int campaign) {
    int all = 0;
    for (int ofForm : left[campaign]) {
      all += ofForm;
    }
    return all;
  }

  /** By crop, a form by itself; not to be written to. */
  public int[] byCrop(int campaign) {
    return left[campaign];
  }
}
