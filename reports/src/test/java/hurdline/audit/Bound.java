package hurdline.audit;

import hurdline.measure.Measure;
import hurdline.measure.Unit;
import java.util.List;
import java.util.Set;

/** Beyond what the mean of a measure cannot lie, so that no limit lies there. */
final class Bound {
  private static final Set<Measure> PAYMENTS =
      Set.of(
          Measure.MONEY_CROP_AREA,
          Measure.MONEY_CROP_FAILED,
          Measure.MONEY_ADVANCE,
          Measure.MONEY_ADVANCE_INTEREST,
          Measure.MONEY_ADVANCE_OPEN,
          Measure.MONEY_ADVANCE_SHORT,
          Measure.MONEY_COVERS,
          Measure.MONEY_COVER_HANDS,
          Measure.MONEY_LINE_COVERS,
          Measure.YARD_PLACE_VALUE_PEAK,
          Measure.MONEY_WAGES,
          Measure.MONEY_ELECTRICITY,
          Measure.MONEY_DEMAND,
          Measure.MONEY_RATCHET,
          Measure.MONEY_PERIOD_ENERGY,
          Measure.MONEY_PERIOD_DEMAND,
          Measure.MONEY_PACKAGES,
          Measure.MONEY_STOPS,
          Measure.MONEY_LATE_PENALTIES,
          Measure.MONEY_DRIER_FUEL,
          Measure.MONEY_LINE_DRIER_FUEL,
          Measure.MONEY_FREIGHT,
          Measure.MONEY_LINE_FREIGHT,
          Measure.PRODUCT_FREIGHT,
          Measure.MONEY_OVERHEAD,
          Measure.MONEY_RENT,
          Measure.MONEY_LINE_WAGES,
          Measure.MONEY_LINE_PACKAGES,
          Measure.MONEY_LINE_STOPS,
          Measure.MONEY_LINE_LATE_PENALTIES);

  /** Hours of hands may be more than those of the calendar, and a crop more than its mean. */
  private static final Set<Measure> WITHOUT_MOST =
      Set.of(
          Measure.MASS_DRAWN_OVER_MEAN,
          Measure.MASS_PRICE_FACTOR,
          Measure.PRODUCT_PRICE_FACTOR,
          Measure.CREW_LABOR_HOURS,
          Measure.CREW_OVERTIME,
          Measure.CREW_SENT_HOME,
          Measure.CREW_ABSENT,
          Measure.CREW_SHORT,
          Measure.CREW_CHANGEOVER,
          Measure.CREW_RECEIVING);

  private Bound() {}

  /**
   * 0 of what there is only more or less of, unless a replication has less; money may be lost, but
   * not paid backwards.
   */
  static double least(Table.Row row, Statistic values) {
    Measure measure = measure(row);
    boolean money = measure.unit() == Unit.MONEY || measure.unit() == Unit.MONEY_PER_TONNE;
    boolean forgone = measure == Measure.SEASON_MARGIN_FORGONE && row.is(Columns.LOW_95, "0");
    boolean bounded = !money || PAYMENTS.contains(measure) || forgone;
    return bounded && values.count() > 0 && values.min() >= 0 ? 0 : Double.NEGATIVE_INFINITY;
  }

  /**
   * All of one, the hours of the calendar, or what places and bins hold, unless a replication has
   * more.
   */
  static double most(WrittenAnswer answer, Table.Row row, Statistic values) {
    double most = most(answer, row);
    return values.count() > 0 && values.max() <= most ? most : Double.POSITIVE_INFINITY;
  }

  private static double most(WrittenAnswer answer, Table.Row row) {
    String option = row.text(Columns.OPTION);
    PlantFacts plant = answer.plant(option);
    Measure measure = measure(row);
    String name =
        Measure.find(row.text(Columns.MEASURE)).orElseThrow().names().stream()
            .findFirst()
            .orElse("");
    if (WITHOUT_MOST.contains(measure)) {
      return Double.POSITIVE_INFINITY;
    }
    return switch (measure) {
      case YARD_PEAK, YARD_MEAN ->
          option.equals(YardSizeCheck.NO_LIMIT) ? Double.POSITIVE_INFINITY : holds(plant, name);
      case YARD_PLACE_PEAK ->
          option.equals(YardSizeCheck.NO_LIMIT)
              ? Double.POSITIVE_INFINITY
              : plant.amount("yard.places." + name + ".holds");
      case STORE_LEVEL_MEAN, STORE_LEVEL_PEAK, STORE_LEVEL_END ->
          plant.amount("stores." + name + ".holds");
      case BIN_LEVEL_MEAN, BIN_LEVEL_PEAK, BIN_LEVEL_START, BIN_LEVEL_END ->
          plant.amount("machines." + name + ".holds");
      default ->
          measure.unit() == Unit.SHARE
              ? 1
              : measure.unit() == Unit.HOUR ? plant.horizonH() : Double.POSITIVE_INFINITY;
    };
  }

  private static Measure measure(Table.Row row) {
    return Measure.find(row.text(Columns.MEASURE)).orElseThrow().measure();
  }

  private static double holds(PlantFacts plant, String crop) {
    double sum = 0;
    for (String place : plant.names("yard.places")) {
      List<String> crops = plant.texts("yard.places." + place + ".crops");
      sum +=
          crops.isEmpty() || crops.contains(crop)
              ? plant.amount("yard.places." + place + ".holds")
              : 0;
    }
    return sum;
  }
}
