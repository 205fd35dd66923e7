package hurdline.study.backtest;

import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.plant.Yard;
import hurdline.records.DayRecord;
import hurdline.records.Records;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What was counted in the yard, and a yard that holds it. */
public final class YardCounts {
  private YardCounts() {}

  /**
   * Bales of a crop in all places, by date. A count that names no crop is of the one that its place
   * alone takes, else of the first one.
   */
  public static TreeMap<LocalDate, Double> of(
      Records records, Plant plant, String crop, LocalDate from, LocalDate to) {
    TreeMap<LocalDate, Double> counts = new TreeMap<>();
    for (DayRecord row : records.yard()) {
      boolean isNamed = plant.crops().stream().anyMatch(of -> names(row, of.name()));
      boolean isIts = isNamed ? names(row, crop) : crop.equals(ofPlace(row, plant));
      if (isIts && !row.date().isBefore(from) && !row.date().isAfter(to)) {
        counts.merge(row.date(), row.value(), Double::sum);
      }
    }
    return counts;
  }

  private static String ofPlace(DayRecord row, Plant plant) {
    List<String> crops = plant.crops().stream().map(Crop::name).toList();
    return plant.yard().places().stream()
        .filter(place -> names(row, place.name()))
        .map(place -> crops.stream().filter(place::takes).toList())
        .filter(taken -> taken.size() == 1)
        .map(taken -> taken.get(0))
        .findFirst()
        .orElse(crops.get(0));
  }

  private static boolean names(DayRecord row, String crop) {
    return (" " + row.what() + " ").contains(" " + crop + " ");
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
