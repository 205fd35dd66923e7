package hurdline.account;

import hurdline.compiled.YardPlan;
import java.util.Arrays;

/**
 * How many bales lie in the places: peaks at every rise, means as integrals over the whole horizon,
 * hours without room, and the highest level of every day.
 */
public final class YardLevels {
  private static final double DAY_S = 86_400;

  private final YardPlan plan;
  private final int crops;
  private final int columns; // a crop's places and, last, all of them together
  private final int days;
  private final int[] level; // [crop * columns + column]
  private final int[] dayPeak; // [(crop * columns + column) * days + day]
  private final int[] dayOf; // [crop * columns + column], the last day filled in
  private final int[] placeLevel;
  private final int[] placePeak;
  private final int[] peak; // [crop]
  private final int[] placesWithRoom; // [crop]
  private final double[] baleSeconds;
  private final double[] fullS;
  private final double[] bookedToS;

  YardLevels(YardPlan plan) {
    this.plan = plan;
    crops = plan.crops();
    columns = plan.places() + 1;
    days = plan.days();
    level = new int[crops * columns];
    dayPeak = new int[crops * columns * days];
    dayOf = new int[crops * columns];
    placeLevel = new int[plan.places()];
    placePeak = new int[plan.places()];
    peak = new int[crops];
    placesWithRoom = new int[crops];
    baleSeconds = new double[crops];
    fullS = new double[crops];
    bookedToS = new double[crops];
    reset();
  }

  void reset() {
    Arrays.fill(level, 0);
    Arrays.fill(dayPeak, 0);
    Arrays.fill(dayOf, 0);
    Arrays.fill(placeLevel, 0);
    Arrays.fill(placePeak, 0);
    Arrays.fill(peak, 0);
    Arrays.fill(baleSeconds, 0);
    Arrays.fill(fullS, 0);
    Arrays.fill(bookedToS, 0);
    Arrays.fill(placesWithRoom, 0);
    for (int place = 0; place < plan.places(); place++) {
      if (plan.holds(place) > 0) {
        roomChanges(place, 1);
      }
    }
  }

  /** A bale comes to lie in a place. */
  public void enters(int crop, int place, double nowS) {
    bookTo(crop, nowS);
    changes(crop, place, 1, nowS);
    peak[crop] = Math.max(peak[crop], inYard(crop));
    int lies = ++placeLevel[place];
    placePeak[place] = Math.max(placePeak[place], lies);
    if (lies == plan.holds(place)) {
      bookAllTo(place, nowS);
      roomChanges(place, -1);
    }
  }

  /** A bale leaves its place. */
  public void leaves(int crop, int place, double nowS) {
    bookTo(crop, nowS);
    changes(crop, place, -1, nowS);
    if (placeLevel[place]-- == plan.holds(place)) {
      bookAllTo(place, nowS);
      roomChanges(place, 1);
    }
  }

  void finish(double endS) {
    for (int crop = 0; crop < crops; crop++) {
      bookTo(crop, endS);
      for (int at = crop * columns; at < (crop + 1) * columns; at++) {
        fillDays(at, days - 1);
      }
    }
  }

  private void changes(int crop, int place, int more, double nowS) {
    int day = (int) Math.min(days - 1, nowS / DAY_S);
    change(crop * columns + place, more, day);
    change(crop * columns + columns - 1, more, day);
  }

  private void change(int at, int more, int day) {
    fillDays(at, day);
    level[at] += more;
    int today = at * days + day;
    dayPeak[today] = Math.max(dayPeak[today], level[at]);
  }

  /** What lay there when a day began counts as that day's first level. */
  private void fillDays(int at, int day) {
    while (dayOf[at] < day) {
      dayPeak[at * days + ++dayOf[at]] = level[at];
    }
  }

  private void roomChanges(int place, int more) {
    for (int crop = 0; crop < crops; crop++) {
      if (plan.takes(place, crop)) {
        placesWithRoom[crop] += more;
      }
    }
  }

  private void bookAllTo(int place, double nowS) {
    for (int crop = 0; crop < crops; crop++) {
      if (plan.takes(place, crop)) {
        bookTo(crop, nowS);
      }
    }
  }

  private void bookTo(int crop, double nowS) {
    double passedS = nowS - bookedToS[crop];
    bookedToS[crop] = nowS;
    baleSeconds[crop] += passedS * inYard(crop);
    if (placesWithRoom[crop] == 0) {
      fullS[crop] += passedS;
    }
  }

  /** Bales of the crop in the places now. */
  public int inYard(int crop) {
    return level[crop * columns + columns - 1];
  }

  public int peak(int crop) {
    return peak[crop];
  }

  public int placePeak(int place) {
    return placePeak[place];
  }

  /** Bales times seconds in the places; over the horizon's length it is the mean. */
  public double baleSeconds(int crop) {
    return baleSeconds[crop];
  }

  /** Time in which no place that takes the crop had room. */
  public double fullS(int crop) {
    return fullS[crop];
  }

  /**
   * Highest level of the crop in one place on one day; {@code place} may be the number of places,
   * for all together.
   */
  public int dayPeak(int crop, int place, int day) {
    return dayPeak[(crop * columns + place) * days + day];
  }
}
