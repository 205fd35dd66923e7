package hurdline.study.backtest;

import hurdline.compiled.Periods;
import hurdline.plant.Crop;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Stop;
import hurdline.records.MadeRecord;
import hurdline.records.PowerRecord;
import hurdline.records.Records;
import hurdline.records.Spans;
import hurdline.records.StopRecord;
import hurdline.study.backtest.SeasonSeries.Kind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What the records say of a season: fed and made by week, stops and their hours by week, the yard
 * on the days of a count, energy by month.
 */
final class SeenSeason {
  private static final String TONNE = "t";
  private static final double TONNE_KG = 1000;
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;

  /** A month of which less is metered is left out. */
  private static final double METERED = 0.99;

  /** If more lengths are not known, hours of a stop are not compared. */
  private static final double UNKNOWN = 0.2;

  private final Plant plant;
  private final RecordedMasses masses;
  private final Records records;
  private final PastSeason season;
  private final Periods weeks;
  private final Periods months;
  private final List<SeasonSeries> all = new ArrayList<>();

  SeenSeason(Plant plant, Records records, PastSeason season, Periods weeks, Periods months) {
    this.plant = plant;
    masses = new RecordedMasses(plant);
    this.records = records;
    this.season = season;
    this.weeks = weeks;
    this.months = months;
    plant.crops().forEach(this::fed);
    plant.products().forEach(this::made);
    plant.crops().forEach(this::yard);
    for (Machine machine : plant.machines()) {
      for (Stop stop : machine.common().stops()) {
        stops(machine.name(), stop.name());
      }
    }
    energy();
  }

  List<SeasonSeries> all() {
    return all;
  }

  /** Shorter stops than these are neither in the log nor counted in the simulation. */
  static double leastS(Records records, String stop) {
    return records.map().loggedFromS().getOrDefault(stop, 0.0);
  }

  /** In bales where bales were counted, since they waste away in the yard and still are bales. */
  private void fed(Crop crop) {
    List<MadeRecord> rows =
        records.made().stream()
            .filter(row -> row.isFed() && row.what().equals(crop.name()))
            .toList();
    boolean isCounted = rows.stream().noneMatch(row -> Double.isNaN(row.count()));
    weekly(
        Kind.FED,
        crop.name(),
        isCounted ? (crop.modules() ? "modules" : "bales") : TONNE,
        rows,
        row -> isCounted ? row.count() : masses.kg(row) / TONNE_KG);
  }

  private void made(Product product) {
    weekly(
        Kind.MADE,
        product.name(),
        TONNE,
        records.made().stream()
            .filter(row -> !row.isFed() && row.what().equals(product.name()))
            .toList(),
        row -> masses.kg(row) / TONNE_KG);
  }

  private void weekly(
      Kind kind, String of, String unit, List<MadeRecord> rows, ToDoubleFunction<MadeRecord> told) {
    double[] seen = new double[weeks.count()];
    boolean any = false;
    for (MadeRecord row : rows) {
      double amount = told.applyAsDouble(row);
      if (!Double.isNaN(amount) && isWithin(row.date())) {
        seen[weeks.at(dayS(row.date()))] += amount;
        any = true;
      }
    }
    if (any) {
      all.add(new SeasonSeries(kind, of, unit, firsts(weeks), seen));
    }
  }

  private boolean isWithin(LocalDate date) {
    return !date.isBefore(season.from()) && !date.isAfter(season.to());
  }

  private double dayS(LocalDate date) {
    return DAY_S * ChronoUnit.DAYS.between(season.from(), date);
  }

  private static List<LocalDate> firsts(Periods of) {
    return IntStream.range(0, of.count()).mapToObj(of::firstDate).toList();
  }

  /** The first count is where the simulation begins and no test of it. */
  private void yard(Crop crop) {
    TreeMap<LocalDate, Double> counts = season.counts(plant, crop.name());
    if (counts.size() > 1) {
      List<LocalDate> dates = List.copyOf(counts.keySet()).subList(1, counts.size());
      all.add(
          new SeasonSeries(
              Kind.YARD,
              crop.name(),
              crop.modules() ? "modules" : "bales",
              dates,
              dates.stream().mapToDouble(counts::get).toArray()));
    }
  }

  private void stops(String machine, String stop) {
    String key = machine + "." + stop;
    Spans crewed = records.crewed().get(machine);
    double[] counts = new double[weeks.count()];
    double[] hours = new double[weeks.count()];
    double known = 0;
    double lengthH = 0;
    int[] without = new int[weeks.count()];
    for (StopRecord row : records.stops()) {
      double atS = season.seasonS(row.beganS());
      if (!row.key().equals(key) || atS < 0 || atS >= weeks.toS(weeks.count() - 1)) {
        continue;
      }
      double lengthS = lengthS(row, crewed);
      if (lengthS < leastS(records, key)) {
        continue;
      }
      int week = weeks.at(atS);
      counts[week]++;
      if (Double.isNaN(lengthS)) {
        without[week]++;
      } else {
        hours[week] += lengthS / HOUR_S;
        lengthH += lengthS / HOUR_S;
        known++;
      }
    }
    double count = Arrays.stream(counts).sum();
    if (count > 0) {
      all.add(new SeasonSeries(Kind.STOPS, key, "count", firsts(weeks), counts));
    }
    if (known > 0 && count - known <= UNKNOWN * count) {
      for (int week = 0; week < hours.length; week++) {
        hours[week] += without[week] * lengthH / known; // as long as the others on average
      }
      all.add(new SeasonSeries(Kind.STOP_HOURS, key, "h", firsts(weeks), hours));
    }
  }

  /** Of a repair seen whole; NaN where it is not known. */
  private static double lengthS(StopRecord row, Spans crewed) {
    return switch (row.repair()) {
      case WHOLE -> crewed == null ? Double.NaN : crewed.betweenS(row.repairFromS(), row.endedS());
      case BELOW_A_STEP -> 0;
      case NO_END, NOT_KNOWN -> Double.NaN;
    };
  }

  private void energy() {
    double[] seen = new double[months.count()];
    double[] metered = new double[months.count()];
    for (PowerRecord row : records.power()) {
      double atS = season.seasonS(row.fromS());
      if (atS >= 0 && atS < months.toS(months.count() - 1)) {
        seen[months.at(atS)] += row.kWh();
        metered[months.at(atS)] += row.lengthS();
      }
    }
    boolean any = false;
    for (int month = 0; month < seen.length; month++) {
      boolean isWhole = metered[month] >= METERED * (months.toS(month) - months.fromS(month));
      seen[month] = isWhole ? seen[month] : Double.NaN;
      any |= isWhole;
    }
    if (any) {
      all.add(new SeasonSeries(Kind.ENERGY, "", "kWh", firsts(months), seen));
    }
  }
}
