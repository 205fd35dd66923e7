package hurdline.study.rest;

import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SeasonRest.Age;
import hurdline.answer.SeasonRest.Finish;
import hurdline.answer.SeasonRest.Kind;
import hurdline.answer.SeasonRest.Quantity;
import hurdline.measure.Measure;
import hurdline.plant.Crop;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Stop;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.Quantiles;
import hurdline.statistics.SignTest;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What the replications of the rest say, row by row. */
final class RestRows {
  private static final double TONNE_KG = 1000;
  private static final double HOUR_S = 3600;
  private static final double LEVEL = 0.05;

  private final Plant plant;
  private final LocalDate asOf;
  private final RunAnswer answer;
  private final List<Finish> finishes = new ArrayList<>();
  private double[] planned = {};

  RestRows(Plant plant, LocalDate asOf, RunAnswer answer) {
    this.plant = plant;
    this.asOf = asOf;
    this.answer = answer;
  }

  /** What was fed and made until then, and with the rest of the season. */
  List<Quantity> quantities(SeasonSoFar soFar) {
    List<Quantity> rows = new ArrayList<>();
    for (Crop crop : plant.crops()) {
      rows.add(
          row(Kind.FED, crop.name(), unit(crop), soFar.fedBales(crop.name()), fed(crop.name())));
    }
    for (Product product : plant.products()) {
      double soFarT = soFar.madeKg(product.name()) / TONNE_KG;
      double[] rest = series(Measure.PRODUCT_MASS.of(product.name()));
      rows.add(row(Kind.MADE, product.name(), "t", soFarT, rest));
    }
    return rows;
  }

  private static String unit(Crop crop) {
    return crop.modules() ? "modules" : "bales";
  }

  /** Of a crop in several forms what each by itself was fed, as records have it. */
  private double[] fed(String crop) {
    double[] own = series(Measure.INTAKE_FED.of(crop)).clone();
    for (Crop form : plant.otherForms(crop)) {
      double[] others = series(Measure.INTAKE_FED.of(form.name()));
      for (int at = 0; at < own.length; at++) {
        own[at] -= others[at];
      }
    }
    return own;
  }

  private Quantity row(Kind kind, String of, String unit, double soFar, double[] rest) {
    double[] whole = Arrays.stream(rest).map(more -> soFar + more).toArray();
    double[] band = Quantiles.of(whole, 0.05, 0.5, 0.95);
    double mean = Arrays.stream(rest).average().orElse(0);
    return new Quantity(kind, of, unit, soFar, mean, soFar + mean, band[0], band[1], band[2]);
  }

  /** Nothing of a measure that the rest does not have. */
  private double[] series(String measure) {
    Samples samples = answer.samples();
    int column =
        samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> column < 0 ? 0 : of[column]).toArray();
  }

  /** Of the season as planned, by the run's own replications. */
  void addPlanned(ShiftChange change) {
    add(change, this::series);
  }

  void add(ShiftChange change, ReplicationResults figures) {
    add(change, figures::series);
  }

  private void add(ShiftChange change, Function<String, double[]> series) {
    double[] leftOver = series.apply(Measure.SEASON_LEFT_OVER.of(change.line()));
    double[] finished = Arrays.stream(leftOver).map(bales -> bales == 0 ? 1 : 0).toArray();
    double[] ended = series.apply(Measure.SEASON_ENDED.of(change.line()));
    Summary left = Summary.of(leftOver);
    planned = change.shift().isEmpty() ? finished : planned;
    int count = (int) Arrays.stream(finished).filter(share -> share == 1).count();
    Summary done =
        Summary.of(
            IntStream.range(0, ended.length)
                .filter(at -> finished[at] == 1)
                .mapToDouble(at -> ended[at])
                .toArray());
    Interval chance = Intervals.chance95(count, finished.length);
    int onlyPlanned = only(planned, finished);
    int onlyThis = only(finished, planned);
    Crop crop = crop(change.line());
    finishes.add(
        new Finish(
            change.line(),
            crop.name(),
            change.hours(),
            change.shift(),
            by(change.line()),
            finished.length,
            count,
            chance.low(),
            chance.high(),
            done.p50(),
            done.p95(),
            unit(crop),
            left.mean(),
            left.p05(),
            left.p95(),
            onlyPlanned,
            onlyThis,
            SignTest.twoSided(onlyPlanned, onlyThis) < LEVEL));
  }

  private static int only(double[] these, double[] others) {
    return (int)
        IntStream.range(0, these.length).filter(at -> these[at] == 1 && others[at] != 1).count();
  }

  private Crop crop(String line) {
    String name =
        plant.lines().stream()
            .filter(of -> of.name().equals(line))
            .findFirst()
            .orElseThrow()
            .crop();
    return plant.crops().stream().filter(of -> of.name().equals(name)).findFirst().orElseThrow();
  }

  private LocalDate by(String line) {
    return ShiftChange.campaigns(plant, line)
        .map(SeasonEntry.Campaign::to)
        .max(LocalDate::compareTo)
        .orElse(asOf);
  }

  List<Finish> finishes() {
    return finishes;
  }

  /** Every stop; not a number where the records do not have its count. */
  List<Age> ages(Map<String, Double> known) {
    List<Age> rows = new ArrayList<>();
    for (Machine machine : plant.machines()) {
      for (Stop stop : machine.common().stops()) {
        boolean isMass = stop.counted() == Stop.Counted.MASS;
        double age = known.getOrDefault(machine.name() + "." + stop.name(), Double.NaN);
        rows.add(
            new Age(
                machine.name(),
                stop.name(),
                stop.counted().name().toLowerCase(java.util.Locale.ROOT),
                age / (isMass ? TONNE_KG : HOUR_S),
                isMass ? "t" : "h"));
      }
    }
    return rows;
  }
}
