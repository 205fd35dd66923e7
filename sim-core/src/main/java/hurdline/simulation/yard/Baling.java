package hurdline.simulation.yard;

import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.plant.Delivery;
import hurdline.random.Draws;
import hurdline.random.RandomStreams;
import java.util.Arrays;
import java.util.OptionalInt;

/**
 * The balers: on each dry day that counts a field's baler makes its bales at even distances over
 * the receiving hours, until the field's crop is in bales. Where there are fewer balers than fields
 * a baler goes on to the next field in turn, from the day after on.
 *
 * <p>Day by day {@code n} bales, the k-th at {@code from + k · length / n}. Where n is no whole
 * number the bales of all its baling days are counted through, so that two days of 2.5 bales make 2
 * and 3.
 */
public final class Baling {
  private static final double DAY_S = 86_400;

  /** What is left of a field below this share of it is rounding, not a bale. */
  private static final double CRUMB = 1e-9;

  private final YardPlan yard;
  private final Haulage haulage;
  private final DryDays[] weather; // by crop
  private final BaleDraws[] draws; // by field
  private final double[] meanKg;
  private final int[] readyDay;
  private final int[] day;
  private final double[] days; // baling days begun
  private final double[] made;
  private final double[] cropKg;
  private final double[] leftKg;
  private final double[] areaM2PerKg; // by field, 0 where no area is paid for
  private final Integer[] inTurn; // fields of each crop by the day they became ready, then by name
  private final int[] turn;
  private final int[] unfinished; // by crop
  private final boolean[] begun; // whether a baler has come to the field
  private final int[] balers; // by crop
  private final int[] working; // by crop, balers with a field to bale

  public Baling(YardPlan yard, Haulage haulage) {
    this.yard = yard;
    this.haulage = haulage;
    int fields = haulage.fields();
    weather = new DryDays[yard.crops()];
    Arrays.setAll(weather, crop -> new DryDays(haulage.firstDay(), yard.days()));
    draws = new BaleDraws[fields];
    meanKg = new double[fields];
    Arrays.setAll(
        meanKg,
        f -> haulage.field(f).field().bale().massKg().meanWithin(0, Double.POSITIVE_INFINITY));
    readyDay = new int[fields];
    day = new int[fields];
    days = new double[fields];
    made = new double[fields];
    cropKg = new double[fields];
    leftKg = new double[fields];
    areaM2PerKg = new double[fields];
    inTurn = new Integer[fields];
    turn = new int[fields];
    unfinished = new int[yard.crops()];
    begun = new boolean[fields];
    balers = new int[yard.crops()];
    working = new int[yard.crops()];
    for (int crop = 0; crop < yard.crops(); crop++) {
      int ofCrop = haulage.endField(crop) - haulage.firstField(crop);
      balers[crop] =
          haulage.delivery(crop).map(Delivery::balers).orElse(OptionalInt.empty()).orElse(ofCrop);
    }
  }

  public void reset(RandomStreams streams, int replication) {
    for (int crop = 0; crop < yard.crops(); crop++) {
      unfinished[crop] = 0;
      if (haulage.firstField(crop) < haulage.endField(crop)) {
        drawWeather(crop, haulage.delivery(crop).orElseThrow(), streams, replication);
        resetCrop(crop, haulage.delivery(crop).orElseThrow(), streams, replication);
      } else if (yard.changesMoisture() && haulage.delivery(crop).isPresent()) {
        drawWeather(crop, haulage.delivery(crop).orElseThrow(), streams, replication);
      }
    }
  }

  private void resetCrop(int crop, Delivery delivery, RandomStreams streams, int replication) {
    double season =
        new Draws(
                delivery.seasonFactor(),
                streams.of(replication, "season_factor." + yard.season(crop)))
            .next();
    for (int field = haulage.firstField(crop); field < haulage.endField(crop); field++) {
      resetField(field, season, streams, replication);
    }
    int from = haulage.firstField(crop);
    int to = haulage.endField(crop);
    for (int field = from; field < to; field++) {
      inTurn[field] = field;
    }
    Arrays.sort(
        inTurn, from, to, (a, b) -> readyDay[a] != readyDay[b] ? readyDay[a] - readyDay[b] : a - b);
    for (int at = from; at < to; at++) {
      turn[at] = inTurn[at];
    }
    working[crop] = 0;
    while (working[crop] < balers[crop] && toNextField(crop, -1) >= 0) {
      working[crop]++;
    }
  }

  private void drawWeather(int crop, Delivery delivery, RandomStreams streams, int replication) {
    // past years are drawn once for all crops, which lie under one sky
    String source =
        delivery.weather() instanceof Delivery.PastYears
            ? "weather"
            : "weather." + yard.season(crop);
    weather[crop].draw(delivery.weather(), streams.of(replication, source));
  }

  /** Which days are wet for each crop; one that nothing brings has dry ones alone. */
  DryDays[] weather() {
    return weather;
  }

  /**
   * A baler that is free from the end of a day on goes to the next field in turn; tells which, −1
   * if none waits for one.
   */
  private int toNextField(int crop, int afterDay) {
    for (int at = haulage.firstField(crop); at < haulage.endField(crop); at++) {
      int field = turn[at];
      if (!begun[field] && !done(field)) {
        begun[field] = true;
        day[field] = Math.max(day[field], afterDay);
        return field;
      }
    }
    return -1;
  }

  private void resetField(int field, double season, RandomStreams streams, int replication) {
    Haulage.CropField cropField = haulage.field(field);
    Delivery.Field facts = cropField.field();
    String source = "field." + yard.crop(cropField.crop()) + "." + facts.name();
    draws[field] =
        new BaleDraws(yard, cropField.crop(), facts.bale(), streams, replication, source);
    double yieldKg =
        new Draws(facts.yieldKgPerM2(), streams.of(replication, source + ".yield")).next()
            * facts.areaM2()
            * season;
    double late = facts.readySdDays() * streams.of(replication, source + ".readiness").nextNormal();
    readyDay[field] = Math.max(0, cropField.readyDay() + wholeDays(late));
    cropKg[field] = yieldKg;
    leftKg[field] = yieldKg;
    boolean byArea = yieldKg > 0 && haulage.terms().isByArea(cropField.crop());
    areaM2PerKg[field] = byArea ? facts.areaM2() / yieldKg : 0;
    made[field] = 0;
    days[field] = 0;
    day[field] = readyDay[field] - 1;
    begun[field] = false;
    if (yieldKg > 0) {
      unfinished[cropField.crop()]++;
    }
  }

  /** Halves go away from zero. */
  private static int wholeDays(double days) {
    return (int) Math.copySign(Math.floor(Math.abs(days) + 0.5), days);
  }

  /**
   * The field that comes in this turn among its crop's, counted like fields from {@link Haulage}.
   */
  int inTurn(int at) {
    return turn[at];
  }

  /** Day of the horizon on which the field is ready. */
  int readyDay(int field) {
    return readyDay[field];
  }

  /** When the field's next bale will be made, +∞ if none will be within the horizon. */
  double nextS(int field) {
    Haulage.CropField cropField = haulage.field(field);
    double perDay = cropField.field().balesPerDay();
    if (done(field) || !begun[field] || !(perDay > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    while (made[field] + 1 > perDay * days[field] + CRUMB) {
      if (!toNextBalingDay(field, cropField.crop())) {
        return Double.POSITIVE_INFINITY;
      }
    }
    Delivery.DayHours hours = haulage.delivery(cropField.crop()).orElseThrow().hours();
    double ofDay = made[field] + 1 - perDay * (days[field] - 1);
    return day[field] * DAY_S + hours.fromS() + ofDay * (hours.toS() - hours.fromS()) / perDay;
  }

  private boolean toNextBalingDay(int field, int crop) {
    for (int next = day[field] + 1; next < yard.days(); next++) {
      if (weather[crop].baling(next) && haulage.balerWorks(crop, next)) {
        day[field] = next;
        days[field]++;
        return true;
      }
    }
    day[field] = yard.days();
    return false;
  }

  /** Makes the field's next bale; the last one is cut to what is left. */
  int make(int field, Bales bales, double nowS) {
    int bale = draws[field].make(bales, nowS);
    made[field]++;
    if (bales.massKg[bale] >= leftKg[field] - CRUMB * cropKg[field]) {
      bales.massKg[bale] = leftKg[field];
      leftKg[field] = 0;
      unfinished[haulage.field(field).crop()]--;
    } else {
      leftKg[field] -= bales.massKg[bale];
    }
    bales.areaM2[bale] = bales.massKg[bale] * areaM2PerKg[field];
    return bale;
  }

  /**
   * Where the field's baler makes its next bale: there, or, with all of it in bales, at the next in
   * turn that waits for one.
   */
  int goesOnTo(int field) {
    if (!done(field)) {
      return field;
    }
    int crop = haulage.field(field).crop();
    int next = toNextField(crop, day[field]);
    working[crop] -= next < 0 ? 1 : 0;
    return next < 0 ? field : next;
  }

  /** What is not yet in bales. */
  public double leftKg(int field) {
    return leftKg[field];
  }

  /**
   * More crop of the field, from another year, is to be baled with it; tells whether a baler comes
   * to it only for that.
   */
  boolean add(int field, double moreKg) {
    int crop = haulage.field(field).crop();
    boolean first = done(field) && moreKg > 0;
    cropKg[field] += moreKg;
    leftKg[field] += moreKg;
    unfinished[crop] += first ? 1 : 0;
    begun[field] |= first && working[crop] < balers[crop];
    working[crop] += first && begun[field] ? 1 : 0;
    return first && begun[field];
  }

  /** Whether all the field's crop is in bales. */
  boolean done(int field) {
    return !(leftKg[field] > 0);
  }

  /** Whether some field of the crop is not yet all in bales. */
  boolean moreToCome(int crop) {
    return unfinished[crop] > 0;
  }

  /**
   * Bales that the unbaled crop would still make: what is left over the mean mass of a bale,
   * rounded up, field by field.
   */
  int unbaled(int crop) {
    int bales = 0;
    for (int field = haulage.firstField(crop); field < haulage.endField(crop); field++) {
      if (!done(field) && meanKg[field] > 0) {
        bales += (int) Math.ceil(leftKg[field] / meanKg[field] - CRUMB);
      }
    }
    return bales;
  }
}
