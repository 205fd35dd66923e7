package hurdline.simulation.yard;

import hurdline.plant.Delivery;
import hurdline.random.RandomStream;
import java.time.LocalDate;
import java.time.MonthDay;

/**
 * On which days of the horizon a crop may be baled: dry days that follow enough dry ones. Days
 * before the horizon count as dry.
 *
 * <p>A two-state chain by day. With the long-run share w of wet days and the chance q of a wet day
 * after a wet one, a day after a dry one is wet with chance w(1 − q)/(1 − w); so the share of wet
 * days stays w if it is w on the first day. Where months have chances of their own, those of the
 * month of the day that is drawn hold.
 *
 * <p>Or past years, each as likely as the others: one number draws one for each calendar year of
 * the horizon, and its days lie on the dates of the same month and day.
 */
final class DryDays {
  private final MonthDay[] dates;
  private final boolean[] newYear;
  private final boolean[] baling;
  private final boolean[] wet;

  DryDays(LocalDate first, int days) {
    dates = new MonthDay[days];
    newYear = new boolean[days];
    baling = new boolean[days];
    wet = new boolean[days];
    for (int day = 0; day < days; day++) {
      dates[day] = MonthDay.from(first.plusDays(day));
      newYear[day] = day == 0 || first.plusDays(day).getDayOfYear() == 1;
    }
  }

  /** Draws the weather of one replication. */
  void draw(Delivery.Weather weather, RandomStream stream) {
    if (weather instanceof Delivery.WetChain chain) {
      drawChain(chain, stream);
    } else {
      drawYears((Delivery.PastYears) weather, stream);
    }
  }

  private void drawChain(Delivery.WetChain chances, RandomStream stream) {
    double chance = chances.in(dates[0].getMonth()).wetDay();
    int dryBefore = chances.dryDays();
    for (int day = 0; day < baling.length; day++) {
      boolean isWet = stream.next() < chance;
      dryBefore = lay(day, isWet, dryBefore, chances.dryDays());
      chance = day + 1 < dates.length ? chances.in(dates[day + 1].getMonth()).after(isWet) : 0;
    }
  }

  private void drawYears(Delivery.PastYears past, RandomStream stream) {
    Delivery.PastYear year = past.years().get(0);
    int dryBefore = past.dryDays();
    for (int day = 0; day < baling.length; day++) {
      if (newYear[day]) {
        int count = past.years().size();
        year = past.years().get(Math.min(count - 1, (int) (count * stream.next())));
      }
      dryBefore = lay(day, year.isWet(dates[day]), dryBefore, past.dryDays());
    }
  }

  /** The dry days up to and with this one. */
  private int lay(int day, boolean isWet, int dryBefore, int dryDays) {
    wet[day] = isWet;
    baling[day] = !isWet && dryBefore >= dryDays;
    return isWet ? 0 : dryBefore + 1;
  }

  boolean wet(int day) {
    return wet[day];
  }

  boolean baling(int day) {
    return baling[day];
  }
}
