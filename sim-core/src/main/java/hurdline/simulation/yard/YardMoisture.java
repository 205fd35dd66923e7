package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.compiled.YardPlan;
import hurdline.plant.Yard;
import java.util.Arrays;

/**
 * What the moisture of bales becomes in places where it changes.
 *
 * <p>X = Xe + (X₀ − Xe)·e^(−t/τ), X water over dry mass, Xe and τ those of the day, dry or wet, in
 * which t runs: Newton's law of drying (Lewis 1921, from memory; that of ASABE S448 for thin
 * layers), carried over to whole bales. Days before the horizon count as dry.
 *
 * <p>Time spent does not grow with a bale's age: with s(d) = ∫dt/τ up to day d and b(d) the
 * moisture at d of what had none at time zero, X(e) = b(e) + (X(d) − b(d))·e^(s(d) − s(e)).
 */
final class YardMoisture {
  private static final double DAY_S = 86_400;

  private final YardPlan plan;
  private final Bales bales;
  private final IntakeBooks books;
  private final Yard.Climate[] climate; // by place; null where nothing changes
  private final DryDays[] sky; // by crop; null where it never rains
  private final double[][] passed; // [place * crops + crop][day], s and b above
  private final double[][] fromNothing;
  private final boolean[] isKnown;

  YardMoisture(YardPlan plan, Bales bales, IntakeBooks books) {
    this.plan = plan;
    this.bales = bales;
    this.books = books;
    climate = new Yard.Climate[plan.places()];
    Arrays.setAll(climate, place -> plan.climate(place).orElse(null));
    sky = new DryDays[plan.crops()];
    passed = new double[plan.places() * plan.crops()][];
    fromNothing = new double[passed.length][];
    isKnown = new boolean[passed.length];
  }

  /** The weather of a replication; what went before is forgotten. */
  void reset(DryDays[] weather) {
    System.arraycopy(weather, 0, sky, 0, sky.length);
    Arrays.fill(isKnown, false);
  }

  boolean changesIn(int place) {
    return climate[place] != null;
  }

  /**
   * A bale has lain in a place and is worth what was paid for it, also where its water was paid
   * for.
   */
  void change(int bale, int place, double fromS, double nowS) {
    int crop = bales.crop[bale];
    double beforeKg = bales.massKg[bale];
    double dryKg = beforeKg * (1 - bales.moisture[bale]);
    bales.moisture[bale] = after(place, crop, bales.moisture[bale], fromS, nowS);
    bales.massKg[bale] = dryKg / (1 - bales.moisture[bale]);
    books.driedInYard(crop, beforeKg - bales.massKg[bale]);
    if (plan.isPaidAsWeighed(crop)) {
      bales.unpaid[bale] = 1 - (1 - bales.unpaid[bale]) * beforeKg / bales.massKg[bale];
    }
  }

  /** Moisture after lying in a place, water over mass. */
  private double after(int place, int crop, double moisture, double fromS, double toS) {
    int at = place * plan.crops() + crop;
    learn(at, place, crop);
    double x = toDryBasis(moisture);
    if (fromS < 0) {
      double untilS = Math.min(0, toS);
      x = relax(x, climate[place].dry(), climate[place].drySlowS(), untilS - fromS);
    }
    double beginS = Math.max(0, fromS);
    if (toS > beginS) {
      x = across(at, place, crop, x, beginS, toS);
    }
    return x / (1 + x);
  }

  private double across(int at, int place, int crop, double x, double fromS, double toS) {
    int first = day(fromS);
    int last = day(toS);
    if (first == last) {
      return within(place, crop, first, x, toS - fromS);
    }
    double next = within(place, crop, first, x, (first + 1) * DAY_S - fromS);
    double left = StrictMath.exp(passed[at][first + 1] - passed[at][last]);
    double atLast = fromNothing[at][last] + (next - fromNothing[at][first + 1]) * left;
    return within(place, crop, last, atLast, toS - last * DAY_S);
  }

  private int day(double atS) {
    return Math.min(plan.days() - 1, (int) Math.floor(atS / DAY_S));
  }

  private void learn(int at, int place, int crop) {
    if (isKnown[at]) {
      return;
    }
    if (passed[at] == null) {
      passed[at] = new double[plan.days()];
      fromNothing[at] = new double[plan.days()];
    }
    for (int day = 1; day < plan.days(); day++) {
      double slowS =
          rains(place, crop, day - 1) ? climate[place].wetSlowS() : climate[place].drySlowS();
      passed[at][day] = passed[at][day - 1] + DAY_S / slowS;
      fromNothing[at][day] = within(place, crop, day - 1, fromNothing[at][day - 1], DAY_S);
    }
    isKnown[at] = true;
  }

  private boolean rains(int place, int crop, int day) {
    return climate[place].wet().isPresent() && sky[crop] != null && sky[crop].wet(day);
  }

  private double within(int place, int crop, int day, double x, double lastsS) {
    Yard.Climate here = climate[place];
    return rains(place, crop, day)
        ? relax(x, here.wet().getAsDouble(), here.wetSlowS(), lastsS)
        : relax(x, here.dry(), here.drySlowS(), lastsS);
  }

  private static double relax(double x, double toMoisture, double slowS, double lastsS) {
    double end = toDryBasis(toMoisture);
    return end + (x - end) * StrictMath.exp(-lastsS / slowS);
  }

  private static double toDryBasis(double moisture) {
    return moisture / (1 - moisture);
  }
}
