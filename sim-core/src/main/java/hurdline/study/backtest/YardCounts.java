package hurdline.study.backtest;

import hurdline.plant.Plant;
import hurdline.plant.Yard;
import hurdline.records.Records;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What was counted in the yard, and a yard that holds it. */
public final class YardCounts {
  private YardCounts() {}

  /** Bales of a crop in all places, by date. */
  public static TreeMap<LocalDate, Double> of(
      Records records, Plant plant, String crop, LocalDate from, LocalDate to) {
    TreeMap<LocalDate, Double> counts = new TreeMap<>();
    records
        .counted(plant, crop)
        .filter(row -> !row.date().isBefore(from) && !row.date().isAfter(to))
        .forEach(row -> counts.merge(row.date(), row.value(), Double::sum));
    return counts;
  }

  /**
   * A yard with this stock on its first day; the first place that takes a crop is enlarged where
   * there is no room.
   */
  public static Yard holding(Map<String, Integer> onHand, Yard yard) {
    Yard counted =
        new Yard(
            onHand,
            yard.places(),
            yard.pick(),
            yard.turnAway(),
            yard.fieldLossPerS(),
            yard.lifts());
    for (Map.Entry<String, Integer> without : counted.withoutRoom().entrySet()) {
      Optional<Yard.Place> place =
          counted.places().stream().filter(of -> of.takes(without.getKey())).findFirst();
      if (without.getValue() > 0 && place.isPresent()) {
        counted = counted.with(place.get(), place.get().holds() + without.getValue());
      }
    }
    return counted;
  }
}
