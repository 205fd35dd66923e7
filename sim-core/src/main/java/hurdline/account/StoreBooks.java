package hurdline.account;

import java.util.Arrays;

/**
 * Levels of stores, which go up and down by packages: means, peaks, the highest level of every day,
 * and hours in which a full package found no room.
 */
public final class StoreBooks {
  private static final double DAY_S = 86_400;

  private final int days;
  private final double[] levelKg; // [store]
  private final double[] sinceS;
  private final double[] kgSeconds;
  private final double[] peakKg;
  private final double[] fullS;
  private final int[] waiting; // full packages without room
  private final double[] dayPeakKg; // [store * days + day]
  private final int[] dayOf; // [store] the last day filled in

  public StoreBooks(int stores, int days) {
    this.days = days;
    levelKg = new double[stores];
    sinceS = new double[stores];
    kgSeconds = new double[stores];
    peakKg = new double[stores];
    fullS = new double[stores];
    waiting = new int[stores];
    dayPeakKg = new double[stores * days];
    dayOf = new int[stores];
  }

  public void reset() {
    Arrays.fill(levelKg, 0);
    Arrays.fill(sinceS, 0);
    Arrays.fill(kgSeconds, 0);
    Arrays.fill(peakKg, 0);
    Arrays.fill(fullS, 0);
    Arrays.fill(waiting, 0);
    Arrays.fill(dayPeakKg, 0);
    Arrays.fill(dayOf, 0);
  }

  /** A level goes up, or down where {@code moreKg} is below 0. */
  public void changes(int store, double moreKg, double nowS) {
    bookTo(store, nowS);
    levelKg[store] += moreKg;
    peakKg[store] = Math.max(peakKg[store], levelKg[store]);
    int today = store * days + dayOf[store];
    dayPeakKg[today] = Math.max(dayPeakKg[today], levelKg[store]);
  }

  /** So many more full packages find no room. */
  public void waits(int store, int more, double nowS) {
    bookTo(store, nowS);
    waiting[store] += more;
  }

  public void finish(double endS) {
    for (int store = 0; store < levelKg.length; store++) {
      bookTo(store, endS);
    }
  }

  private void bookTo(int store, double nowS) {
    double passedS = nowS - sinceS[store];
    sinceS[store] = nowS;
    kgSeconds[store] += passedS * levelKg[store];
    fullS[store] += waiting[store] > 0 ? passedS : 0;
    int day = (int) Math.min(days - 1, nowS / DAY_S);
    while (dayOf[store] < day) { // what lies there as a day begins is its first level
      dayPeakKg[store * days + ++dayOf[store]] = levelKg[store];
    }
  }

  public double levelKg(int store) {
    return levelKg[store];
  }

  public double kgSeconds(int store) {
    return kgSeconds[store];
  }

  public double peakKg(int store) {
    return peakKg[store];
  }

  public double fullS(int store) {
    return fullS[store];
  }

  public double dayPeakKg(int store, int day) {
    return dayPeakKg[store * days + day];
  }
}
