package hurdline.audit;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * peaks.csv, yard_sizes.csv, cheapest.csv and loads.csv of a yard that is sized, and the size that
 * will do.
 */
final class YardSizeCheck implements Check {
  static final String PEAKS = "quantiles of the peak";
  static final String NEEDED = "size that will do";
  static final String OVERFLOW = "chance of overflow";
  static final String AREA = "ground of stacks and lanes";
  static final String FIGURES = "figures of a size simulated";
  static final String MONEY = "money of a size";
  static final String CHEAPEST = "money above the cheapest";
  static final String LOADS = "loads weighed in";

  /** What the tables call the plant with a yard without limit. */
  static final String NO_LIMIT = "no limit";

  private final Map<Integer, WrittenAnswer> ownRuns;

  /**
   * @param ownRuns of the plant with a yard of some of the sizes, by bales
   */
  YardSizeCheck(Map<Integer, WrittenAnswer> ownRuns) {
    this.ownRuns = ownRuns;
  }

  /** A run of the plant with the size that is said to be the cheapest. */
  static Map<Integer, WrittenAnswer> runOfCheapest(
      WrittenAnswer answer, Path plant, Path dir, String replications) throws IOException {
    Table.Row cheapest = answer.table(Tables.CHEAPEST).row(row -> row.number(Columns.ABOVE) == 0);
    JsonObject asked = answer.record().getAsJsonObject("asked");
    String place = asked.get("place").getAsString();
    double own = answer.plant("base").amount("yard.places." + place + ".holds");
    long holds =
        Math.round(own + cheapest.number(Columns.BALES) - asked.get("holds").getAsDouble());
    String change = "yard.places." + place + ".holds=\"" + holds + " bales\"";
    WrittenAnswer run =
        WrittenAnswer.of(
            "run", plant, dir.resolve("cheapest"), "--replications", replications, "--set", change);
    return Map.of((int) cheapest.number(Columns.BALES), run);
  }

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    new Yard(answer, ledger).compare();
  }

  /** The yard that was asked for. */
  private final class Yard {
    private final WrittenAnswer answer;
    private final Ledger ledger;
    private final String file; // the plant as it stands, as the tables call it
    private final PlantFacts plant;
    private final String crop;
    private final String grown;
    private final double holds;
    private final double overflow;
    private final Samples free;
    private final Table sizes;
    private final Table.Row cheapest;

    Yard(WrittenAnswer answer, Ledger ledger) {
      this.answer = answer;
      this.ledger = ledger;
      JsonObject asked = answer.record().getAsJsonObject("asked");
      file = answer.options().get(0);
      plant = answer.plant(file);
      crop = asked.get("crop").getAsString();
      grown = asked.get("place").getAsString();
      holds = asked.get("holds").getAsDouble();
      overflow = asked.get("overflow").getAsDouble();
      free = answer.samples(NO_LIMIT);
      sizes = answer.table(Tables.YARD_SIZES);
      cheapest =
          sizes
              .rows()
              .min((a, b) -> Double.compare(a.number(Columns.MONEY), b.number(Columns.MONEY)))
              .orElseThrow();
    }

    void compare() {
      peaks();
      needed("without_limit", Measure.YARD_PEAK);
      needed("by_rule", Measure.YARD_ROOM_NEEDED);
      sizes.rows().forEach(this::size);
      simulated(sizes.row(row -> row.number(Columns.BALES) == holds), answer.samples(file));
      ownRuns.forEach(
          (bales, run) ->
              simulated(
                  sizes.row(row -> row.number(Columns.BALES) == bales),
                  run.samples(run.options().get(0))));
      loads();
    }

    private void peaks() {
      Statistic peaks = free.statistic(Measure.YARD_PEAK.of(crop));
      for (Table.Row row : answer.table(Tables.PEAKS).rows().toList()) {
        double share = Integer.parseInt(row.text(Columns.QUANTILE).substring(1)) / 100.0;
        ledger.near(PEAKS, row, peaks.quantile(share), row.number(Columns.VALUE));
        ledger.near(PEAKS, row, peaks.quantileLow(share), row.number(Columns.LOW_95));
        ledger.near(PEAKS, row, peaks.quantileHigh(share), row.number(Columns.HIGH_95));
      }
    }

    /** The least value that no more than the allowed share of seasons exceeds. */
    private void needed(String size, Measure measure) {
      JsonObject found = answer.record().getAsJsonObject(size);
      Statistic needs = free.statistic(measure.of(crop));
      int allowed = (int) Math.floor(overflow * needs.count() + 1e-9);
      double bales = number(found.get("bales"));
      ledger.near(NEEDED, size, needs.ranked(needs.count() - allowed), bales);
      ledger.near(
          NEEDED, size + " low", needs.quantileLow(1 - overflow), number(found.get("low_95")));
      ledger.near(
          NEEDED, size + " high", needs.quantileHigh(1 - overflow), number(found.get("high_95")));
      ledger.near(
          NEEDED,
          size + " chance",
          needs.above(bales) / (double) needs.count(),
          number(found.get("chance")));
      ledger.near(AREA, size, area(bales), number(found.get("area_m2")));
    }

    private double number(JsonElement element) {
      return element.isJsonNull() ? Double.NaN : element.getAsDouble();
    }

    private void size(Table.Row row) {
      double bales = row.number(Columns.BALES);
      Statistic wanted = free.statistic(Measure.YARD_ROOM_NEEDED.of(crop));
      int seasons = wanted.above(bales);
      ledger.near(OVERFLOW, row, seasons / (double) wanted.count(), row.number(Columns.CHANCE));
      ledger.near(
          OVERFLOW, row, Statistic.chanceLow(seasons, wanted.count()), row.number(Columns.LOW_95));
      ledger.near(
          OVERFLOW,
          row,
          Statistic.chanceHigh(seasons, wanted.count()),
          row.number(Columns.HIGH_95));
      ledger.near(AREA, row, area(bales), row.number(Columns.AREA_M2));
      double money = row.number(Columns.MONEY);
      double waiting = row.number(Columns.WAITING_D) * perWaitingD();
      ledger.near(MONEY, row, ground(bales), row.number(Columns.GROUND));
      ledger.near(MONEY, row, waiting, row.number(Columns.WAITING));
      double below = row.number(Columns.MARGIN_BELOW);
      ledger.near(
          MONEY, row, ground(bales) + waiting + below, money, 1e-9 * (money + Math.abs(below)));
      Table.Row above = above(bales);
      ledger.near(
          CHEAPEST,
          above,
          money - cheapest.number(Columns.MONEY),
          above.number(Columns.ABOVE),
          1e-9 * Math.abs(money) + rounding());
      boolean significant =
          above.number(Columns.LOW_JOINT) > 0 || above.number(Columns.HIGH_JOINT) < 0;
      ledger.same(CHEAPEST, above, significant ? "yes" : "no", above.text(Columns.SIGNIFICANT));
    }

    private Table.Row above(double bales) {
      return answer.table(Tables.CHEAPEST).row(row -> row.number(Columns.BALES) == bales);
    }

    /**
     * Every stack with half a lane on every side; nothing where a place of the crop does not say
     * how it is stacked.
     */
    private double area(double bales) {
      double area = Double.NaN;
      for (String place : places()) {
        if (plant.has("yard.places." + place + ".stack")) {
          area = (Double.isNaN(area) ? 0 : area) + area(place, bales);
        }
      }
      return area;
    }

    private double area(String place, double bales) {
      String stack = "yard.places." + place + ".stack";
      if (!plant.has(stack)) {
        return 0;
      }
      double inStack =
          plant.amount(stack + ".long")
              * plant.amount(stack + ".wide")
              * plant.amount(stack + ".high");
      double length = plant.amount(stack + ".long") * baleM("long") + plant.amount(stack + ".lane");
      double width = plant.amount(stack + ".wide") * baleM("wide") + plant.amount(stack + ".lane");
      return Math.ceil(in(place, bales) / inStack - 1e-9) * length * width;
    }

    private double baleM(String side) {
      return plant.amount("crops." + crop + ".bale." + side);
    }

    private List<String> places() {
      return plant.names("yard.places").stream()
          .filter(place -> takesCrop("yard.places." + place + ".crops"))
          .toList();
    }

    private boolean takesCrop(String path) {
      return !plant.has(path) || plant.texts(path).contains(crop);
    }

    /**
     * What a place holds in a yard of so many bales: the one that grows takes what the others do
     * not.
     */
    private double in(String place, double bales) {
      double own = plant.amount("yard.places." + place + ".holds");
      return place.equals(grown) ? own + bales - holds : own;
    }

    private double perWaitingD() {
      return 24 * plant.amount("deliveries." + crop + ".waiting_cost");
    }

    private double ground(double bales) {
      double ground = 0;
      for (String place : places()) {
        String path = "yard.places." + place;
        double years =
            plant.has(path + ".life") ? plant.amount(path + ".life") / Amount.of("1 yr") : 10;
        ground += plant.amount(path + ".cost") * area(place, bales) / annuity(years);
      }
      return ground;
    }

    /** What a margin may be off by. */
    private double rounding() {
      return 1e-9 * free.statistic(Measure.MONEY_REVENUE.of()).mean();
    }

    /**
     * What 1 at the end of each year is worth today: (1 − (1 + i)^−n) / i, n where there is no
     * interest.
     */
    private double annuity(double years) {
      double rate = plant.amount("money.discount_rate") * Amount.of("1 yr");
      return rate == 0 ? years : (1 - Math.pow(1 + rate, -years)) / rate;
    }

    /** A size of which there are replications: the plant's own, or one of a run with that size. */
    private void simulated(Table.Row row, Samples samples) {
      double bales = row.number(Columns.BALES);
      double[] lost = lost(samples);
      double[] waiting = samples.all(Measure.TRUCKS_WAITED_FOR_ROOM, crop);
      double[] held = samples.all(Measure.INTAKE_HELD_AT_FIELD_PEAK, crop);
      double[] refused = samples.all(Measure.YARD_WITHOUT_ROOM, crop);
      ledger.near(FIGURES, row, Statistic.of(held).mean(), row.number(Columns.HELD_AT_FIELD));
      ledger.near(FIGURES, row, Statistic.of(lost).mean(), row.number(Columns.LOST_T));
      ledger.near(FIGURES, row, Statistic.of(waiting).mean(), row.number(Columns.WAITING_D));
      double share = Statistic.of(refused).above(0) / (double) refused.length;
      ledger.near(FIGURES, row, share, row.number(Columns.CHANCE));
      double receiving =
          samples.statistic(Measure.CREW_RECEIVING.of(crop)).mean() * plant.amount("money.wage");
      ledger.near(FIGURES, row, receiving, row.number(Columns.RECEIVING));
      Statistic money = Statistic.of(moneys(bales, samples));
      ledger.near(MONEY, row, money.mean(), row.number(Columns.MONEY), rounding());
      ledger.near(MONEY, row, money.limits().low(), row.number(Columns.MONEY_LOW), rounding());
      ledger.near(MONEY, row, money.limits().high(), row.number(Columns.MONEY_HIGH), rounding());
      WrittenAnswer best = ownRuns.get((int) cheapest.number(Columns.BALES));
      if (best != null) {
        above(
            row,
            moneys(bales, samples),
            moneys(cheapest.number(Columns.BALES), best.samples(best.options().get(0))));
      }
    }

    private void above(Table.Row row, double[] money, double[] cheapest) {
      double[] above = new double[money.length];
      for (int at = 0; at < above.length; at++) {
        double apart = money[at] - cheapest[at];
        above[at] =
            Math.abs(apart) <= 1e-9 * Math.max(Math.abs(money[at]), Math.abs(cheapest[at]))
                ? 0
                : apart;
      }
      Statistic paired = Statistic.of(above);
      Statistic.Limits limits = paired.limits((int) sizes.rows().count() - 1);
      Table.Row written = above(row.number(Columns.BALES));
      ledger.near(CHEAPEST, written, paired.mean(), written.number(Columns.ABOVE), rounding());
      ledger.near(CHEAPEST, written, limits.low(), written.number(Columns.LOW_JOINT), rounding());
      ledger.near(CHEAPEST, written, limits.high(), written.number(Columns.HIGH_JOINT), rounding());
    }

    private double[] lost(Samples samples) {
      double[] field = samples.all(Measure.MASS_LOST_AT_FIELD.dryOf(crop));
      double[] yard = samples.all(Measure.MASS_LOST_IN_YARD.dryOf(crop));
      return samples.each().mapToDouble(at -> field[at] + yard[at]).toArray();
    }

    /** Ground, waiting, and the margin below that of the same season with a yard without limit. */
    private double[] moneys(double bales, Samples samples) {
      double[] waiting = samples.all(Measure.TRUCKS_WAITED_FOR_ROOM, crop);
      double[] margin = samples.all(Measure.MONEY_MARGIN);
      double[] most = free.all(Measure.MONEY_MARGIN);
      return samples
          .each()
          .mapToDouble(at -> ground(bales) + perWaitingD() * waiting[at] + most[at] - margin[at])
          .toArray();
    }

    /** Loads of the first season: each is paid for as the books of the first replication say. */
    private void loads() {
      double paidT = 0;
      double bales = 0;
      for (Table.Row row : answer.table(Tables.LOADS).rows().toList()) {
        double dry = row.number(Columns.WEIGHT_T) * (1 - row.number(Columns.MOISTURE));
        ledger.near(LOADS, row, dry, row.number(Columns.DRY_T));
        paidT += Basis.of(Basis.ofCrop(plant, crop), row.number(Columns.WEIGHT_T), dry);
        bales += row.number(Columns.BALES);
      }
      Samples samples = answer.samples(file);
      double failed = samples.at(0, Measure.INTAKE_FAILED, crop);
      double bought = samples.at(0, Measure.INTAKE_WEIGHED_IN, crop);
      ledger.near(LOADS, "bales", bought + failed, bales);
      double failedT = samples.at(0, Measure.MASS_FAILED, crop);
      double failedDryT = samples.at(0, Measure.MASS_FAILED.dryOf(crop));
      paidT -= Basis.of(Basis.ofCrop(plant, crop), failedT, failedDryT);
      String line =
          plant.names("lines").stream()
              .filter(name -> MassCheck.crop(plant, name).equals(crop))
              .findFirst()
              .orElseThrow();
      double price = plant.amount("money.crop_prices." + crop);
      if (samples.names(Measure.MASS_PRICE_FACTOR).contains(crop)) {
        price *= samples.at(0, Measure.MASS_PRICE_FACTOR, crop);
      }
      double paid = samples.at(0, Measure.MONEY_LINE_CROP_COST, line);
      if (samples.names(Measure.MONEY_CROP_AREA).contains(crop)) {
        paid -= samples.at(0, Measure.MONEY_CROP_AREA, crop);
      }
      paid -= samples.at(0, Measure.MONEY_CROP_FAILED, crop);
      ledger.near(LOADS, "money", paid, paidT * price);
    }
  }
}
