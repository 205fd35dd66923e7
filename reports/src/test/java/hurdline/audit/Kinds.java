package hurdline.audit;

import java.util.HashMap;
import java.util.Map;

/**
 * The least counts of comparisons of the small plant, of one plant of an answer unless said
 * otherwise.
 */
final class Kinds {
  private Kinds() {}

  /** What is compared in each replication of each plant. */
  static Map<String, Integer> ofReplications(int all) {
    Map<String, Integer> each =
        and(
            Map.of(
                HoursCheck.STATES, 11,
                HoursCheck.CAUSES, 2,
                HoursCheck.STOPS, 11,
                HoursCheck.SCREENS, 1,
                HoursCheck.CALENDAR, 6,
                EnergyCheck.CONSTANT, 10,
                EnergyCheck.MILLS, 4,
                EnergyCheck.SUM, 1),
            Map.of(
                MassCheck.BALANCE, 2,
                MassCheck.YARD, 4,
                MassCheck.DRAWN, 2,
                MassCheck.BALES, 2,
                MassCheck.LOSSES, 2,
                MassCheck.SCREENS, 2,
                MassCheck.RATIOS, 8,
                MassCheck.RESIDUAL, 1),
            Map.of(
                MoneyCheck.REVENUE, 14,
                MoneyCheck.PACKAGES, 7,
                MoneyCheck.STOPS, 1,
                MoneyCheck.WAGES, 3,
                MoneyCheck.POWER, 2,
                MoneyCheck.STOCK, 6,
                MoneyCheck.MARGIN, 5,
                MoneyCheck.LINES, 8,
                MoneyCheck.RENT, 3));
    each.replaceAll((what, count) -> count * all);
    return each;
  }

  @SafeVarargs
  static Map<String, Integer> and(Map<String, Integer>... parts) {
    Map<String, Integer> all = new HashMap<>();
    for (Map<String, Integer> part : parts) {
      all.putAll(part);
    }
    return all;
  }
}
