package hurdline.fit;

import hurdline.answer.FitRow;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Delivery.WetChain;
import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.random.Normal;
import hurdline.records.DayRecord;
import hurdline.records.MadeRecord;
import hurdline.records.RecordKind;
import hurdline.records.Records;
import hurdline.records.TicketRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Figures other than stops: masses of bales and packages, moisture, rain. */
final class OtherFits {
  /**
   * Rain from which on a day counts as wet where the file has chances alone; common practice, no
   * source.
   */
  private static final double WET_MM = 2;

  /** Nearer to the file's a weighed mean is the file's. */
  private static final double SAME = 0.002;

  /** Of a file's rows, if more are set aside its figures are not written. */
  private static final double HALF = 0.5;

  private static final int FEWEST = 5;
  private static final double Z = 1.96;

  private final Plant plant;
  private final Records records;
  private final FittedDraws draws;
  private final List<FitRow> rows = new ArrayList<>();

  OtherFits(Plant plant, Records records, FittedDraws draws) {
    this.draws = draws;
    this.plant = plant;
    this.records = records;
  }

  List<FitRow> rows() {
    plant.crops().forEach(this::bales);
    plant.packages().forEach(this::packages);
    plant.deliveries().forEach(this::rain);
    return rows;
  }

  /**
   * Mean Σ net / Σ bales, its error by loads; sd from how loads differ, which holds where their
   * bales are independent.
   */
  private void bales(Crop crop) {
    List<TicketRecord> loads =
        records.tickets().stream()
            .filter(ticket -> ticket.crop().equals(crop.name()) && ticket.bales() > 0)
            .toList();
    if (loads.size() >= FEWEST) {
      double[][] pairs =
          loads.stream()
              .map(load -> new double[] {load.netKg(), load.bales()})
              .toArray(double[][]::new);
      Ratio mass = Ratio.of(pairs);
      double squares =
          loads.stream()
              .mapToDouble(
                  load -> load.bales() * Math.pow(load.netKg() / load.bales() - mass.value(), 2))
              .sum();
      double sd = Math.sqrt(squares / (loads.size() - 1));
      String key = "crops." + crop.name() + (crop.modules() ? ".module" : ".bale") + ".mass";
      String note =
          "sd from how loads differ: right if bales of a load are independent and the tare is good";
      add(key, ShownUnit.kilograms(), crop.bale().massKg(), mass, sd, loads.size(), note);
    }
    moisture(crop);
  }

  private void moisture(Crop crop) {
    List<TicketRecord> loads =
        records.tickets().stream()
            .filter(ticket -> ticket.crop().equals(crop.name()) && !Double.isNaN(ticket.moisture()))
            .toList();
    if (loads.size() >= FEWEST) {
      Ratio share =
          Ratio.of(
              loads.stream()
                  .map(load -> new double[] {load.netKg() * load.moisture(), load.netKg()})
                  .toArray(double[][]::new));
      String note = "a load's moisture does not tell how its bales differ: the file's sd stays";
      add(
          "crops." + crop.name() + ".moisture",
          ShownUnit.percent(),
          crop.bale().moisture(),
          share,
          Double.NaN,
          loads.size(),
          note);
    }
  }

  private void packages(Packaging packaging) {
    List<String> products =
        plant.products().stream()
            .filter(product -> plant.packagings(product).equals(List.of(packaging)))
            .map(Product::name)
            .toList();
    List<MadeRecord> made =
        records.made().stream()
            .filter(row -> products.contains(row.what()) && row.count() > 0 && row.massKg() > 0)
            .toList();
    if (made.size() >= FEWEST) {
      Ratio mass =
          Ratio.of(
              made.stream()
                  .map(row -> new double[] {row.massKg(), row.count()})
                  .toArray(double[][]::new));
      add(
          "packages." + packaging.name() + ".mass",
          ShownUnit.kilograms(),
          new Constant(packaging.massKg()),
          mass,
          Double.NaN,
          made.size(),
          "");
    }
  }

  /**
   * Long-run share of wet days and the chance of a wet one after a wet one, by pairs of days that
   * follow each other.
   */
  private void rain(Delivery delivery) {
    if (!(delivery.weather() instanceof WetChain chain)
        || !(chain.usual().wetDay() > 0)
        || !chain.byMonth().isEmpty()
        || records.rain().size() < 60) {
      return;
    }
    int wet = 0;
    int wetPairs = 0;
    int afterWet = 0;
    LocalDate before = null;
    boolean beforeWet = false;
    for (DayRecord day : records.rain()) {
      boolean isWet = day.value() >= WET_MM;
      wet += isWet ? 1 : 0;
      if (day.date().minusDays(1).equals(before) && beforeWet) {
        afterWet++;
        wetPairs += isWet ? 1 : 0;
      }
      before = day.date();
      beforeWet = isWet;
    }
    String path = "deliveries." + delivery.crop() + ".weather.";
    int days = records.rain().size();
    String note = "a day is wet from 2 mm of rain on";
    add(
        path + "wet_day",
        ShownUnit.percent(),
        new Constant(chain.usual().wetDay()),
        Ratio.ofCounts(wet, days),
        Double.NaN,
        days,
        note);
    if (afterWet >= FEWEST) {
      add(
          path + "wet_after_wet",
          ShownUnit.percent(),
          new Constant(chain.usual().wetAfterWet()),
          Ratio.ofCounts(wetPairs, afterWet),
          Double.NaN,
          afterWet,
          note);
    }
  }

  /**
   * @param sd NaN where the file's stays
   */
  private void add(
      String key,
      ShownUnit unit,
      Distribution said,
      Ratio found,
      double sd,
      int used,
      String note) {
    List<String> notes = new ArrayList<>(note.isEmpty() ? List.of() : List.of(note));
    LawText before = LawText.of(said, unit);
    Distribution taken = null;
    boolean isDoubtful = records.account().setAside(file(key)) > HALF;
    boolean isSame =
        said instanceof Constant && Math.abs(found.value() - said.mean()) <= SAME * said.mean();
    if (isDoubtful) {
      notes.add("more than half of the rows are set aside: not written");
    } else if (isSame) {
      notes.add("the same to a fifth of a percent: the file's stays");
    } else if (said instanceof Constant) {
      taken = new Constant(found.value());
    } else if (said instanceof Normal law) {
      taken =
          new Normal(found.value(), Double.isNaN(sd) ? law.uncutSd() : sd, law.low(), law.high());
    } else {
      notes.add("the file's distribution is not normal: its mean is for you to move");
    }
    LawText after = taken == null ? null : LawText.of(taken, unit);
    rows.add(
        new FitRow(
            key,
            unit.word(),
            before.text(),
            unit.of(said.mean()),
            after == null ? "" : after.text(),
            after == null ? "" : after.patchOn(before),
            unit.of(found.value()),
            found.error() / found.value(),
            unit.of(found.value() - Z * found.error()),
            unit.of(found.value() + Z * found.error()),
            used,
            used,
            Double.NaN,
            isSame ? "agrees" : after == null ? "the file's stays" : "a mean",
            notes,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            taken == null ? List.of() : draws.of(drawnAs(key), taken, found.error(), unit)));
  }

  /** The days of all forms of a crop are the same, so their draws are too. */
  private String drawnAs(String key) {
    String[] steps = key.split("\\.", 3);
    return steps[0].equals("deliveries")
        ? steps[0] + "." + plant.baseOf(steps[1]) + "." + steps[2]
        : key;
  }

  /** The file on which a figure rests. */
  private String file(String key) {
    RecordKind kind =
        key.startsWith("crops.")
            ? RecordKind.TICKETS
            : key.startsWith("packages.") ? RecordKind.MADE : RecordKind.RAIN;
    return records.map().files().containsKey(kind)
        ? records.map().files().get(kind).file()
        : kind.file();
  }
}
