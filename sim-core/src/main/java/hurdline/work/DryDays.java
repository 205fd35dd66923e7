package hurdline.work;

import hurdline.chance.Stream;
import hurdline.plant.Delivery;

/**
 * On which days of the horizon a crop may be baled: dry days that follow enough dry ones.
 *
 * <p>A two-state chain by day. With the long-run share w of wet days and the chance q of a wet day after a wet one, a day
 * after a dry one is wet with chance w(1 − q)/(1 − w); so the share of wet days stays w if it is w on the first day. Days
 * before the horizon count as dry.
 */
final class DryDays {
  private final boolean[] baling;

  DryDays(int days) {
    baling = new boolean[days];
  }

  /** Draws the weather of one replication, one number a day. */
  void draw(Delivery.Weather chances, Stream stream) {
    double wet = chances.wetDay();
    double wetAfterDry = wet < 1 ? wet * (1 - chances.wetAfterWet()) / (1 - wet) : 1;
    double wetAfterWet = wet < 1 ? chances.wetAfterWet() : 1;
    double chance = wet;
    int dryBefore = chances.dryDays();
    for (int day = 0; day < baling.length; day++) {
      boolean isWet = stream.next() < chance;
      baling[day] = !isWet && dryBefore >= chances.dryDays();
      dryBefore = isWet ? 0 : dryBefore + 1;
      chance = isWet ? wetAfterWet : wetAfterDry;
    }
  }

  boolean baling(int day) {
    return baling[day];
  }
}
