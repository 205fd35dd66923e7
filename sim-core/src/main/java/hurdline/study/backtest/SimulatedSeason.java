package hurdline.study.backtest;

import hurdline.account.Trace;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import hurdline.measure.EventKind;
import hurdline.measure.Measure;
import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.records.Records;
import hurdline.records.Spans;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.study.backtest.SeasonSeries.Kind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What one replication gives of the same series as the records have: stops are measured by the same
 * rule, in hours that the machine was crewed.
 */
final class SimulatedSeason implements Trace {
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;

  private final List<SeasonSeries> series;
  private final Records records;
  private final PastSeason season;
  private final Plant plant;
  private final Periods weeks;
  private final double[][] values;
  private final Map<String, String> stopByWord = new HashMap<>();
  private final Map<String, Double> beganS = new HashMap<>();
  private final int[] cropOf; // of a yard's series
  private final int[] next; // of a yard's series, the count that comes
  private final double[] level;

  SimulatedSeason(
      List<SeasonSeries> series, Records records, PastSeason season, CompiledPlant stage) {
    this.series = series;
    this.records = records;
    this.season = season;
    plant = stage.plant();
    weeks = stage.roster().weeks();
    CompiledLines layout = stage.layout();
    for (int k = 0; k < layout.stops.count(); k++) {
      String word = layout.causes.name(layout.causes.stop[k]);
      stopByWord.put(word, word);
    }
    values = new double[series.size()][];
    cropOf = new int[series.size()];
    next = new int[series.size()];
    level = new double[series.size()];
    for (int at = 0; at < values.length; at++) {
      SeasonSeries of = series.get(at);
      values[at] = new double[of.seen().length];
      cropOf[at] = of.kind() == Kind.YARD ? cropIndex(stage, of.of()) : -1;
      level[at] =
          of.kind() == Kind.YARD ? stage.plant().yard().onHand().getOrDefault(of.of(), 0) : 0;
    }
  }

  private static int cropIndex(CompiledPlant stage, String crop) {
    return IntStream.range(0, stage.yard().crops())
        .filter(c -> stage.yard().crop(c).equals(crop))
        .findFirst()
        .orElseThrow();
  }

  /** [series][period]; told of the whole replication. */
  double[][] values(Outcome outcome) {
    for (int at = 0; at < values.length; at++) {
      SeasonSeries of = series.get(at);
      switch (of.kind()) {
        case FED -> {
          take(at, Measure.MASS_FED.of(of.of()), outcome.weekColumns(), outcome.weeks());
          double bales = outcome.value(Measure.INTAKE_FED.of(of.of()));
          for (Crop form : plant.otherForms(of.of())) { // records count each form by itself
            less(at, Measure.MASS_FED.of(form.name()), outcome.weekColumns(), outcome.weeks());
            bales -= outcome.value(Measure.INTAKE_FED.of(form.name()));
          }
          if (!of.unit().equals("t")) {
            inBales(at, bales);
          }
        }
        case MADE ->
            take(at, Measure.PRODUCT_MASS.of(of.of()), outcome.weekColumns(), outcome.weeks());
        case ENERGY ->
            take(at, Measure.ENERGY_TOTAL.of(), outcome.monthColumns(), outcome.months());
        case YARD -> counted(at, Double.POSITIVE_INFINITY);
        case STOPS, STOP_HOURS -> {} // were counted as they came
      }
    }
    return values;
  }

  private void less(int at, String measure, List<Outcome.Column> columns, double[][] periods) {
    double[] all = values[at].clone();
    take(at, measure, columns, periods);
    for (int period = 0; period < all.length; period++) {
      values[at][period] = Math.max(0, all[period] - values[at][period]);
    }
  }

  /** The season's bales, over the weeks as their mass is. */
  private void inBales(int at, double bales) {
    double all = Arrays.stream(values[at]).sum();
    for (int week = 0; week < values[at].length && all > 0; week++) {
      values[at][week] *= bales / all;
    }
  }

  private void take(int at, String measure, List<Outcome.Column> columns, double[][] periods) {
    int column = columns.stream().map(Outcome.Column::name).toList().indexOf(measure);
    for (int period = 0; period < periods.length; period++) {
      values[at][period] = periods[period][column];
    }
  }

  @Override
  public void note(double clockS, String where, EventKind what, double amount) {
    if (what == EventKind.STOPS && stopByWord.containsKey(where)) {
      beganS.put(where, clockS);
    } else if (what == EventKind.IS_UP_AGAIN && beganS.containsKey(where)) {
      ended(where, beganS.remove(where), clockS);
    }
  }

  private void ended(String stop, double fromS, double toS) {
    Spans crewed = records.crewed().get(stop.substring(0, stop.indexOf('.')));
    double lengthS = crewed == null ? 0 : crewed.betweenS(season.epochS(fromS), season.epochS(toS));
    if (lengthS < SeenSeason.leastS(records, stop)) {
      return;
    }
    for (int at = 0; at < values.length; at++) {
      SeasonSeries of = series.get(at);
      if (of.of().equals(stop) && of.kind() == Kind.STOPS) {
        values[at][weeks.at(fromS)]++;
      } else if (of.of().equals(stop) && of.kind() == Kind.STOP_HOURS) {
        values[at][weeks.at(fromS)] += lengthS / HOUR_S;
      }
    }
  }

  @Override
  public void standing(double clockS, int[] state, int[] inYard) {
    for (int at = 0; at < values.length; at++) {
      if (cropOf[at] >= 0) {
        counted(at, clockS);
        level[at] = inYard[cropOf[at]];
      }
    }
  }

  /** Counts that fell before an instant found what lay there until then. */
  private void counted(int at, double untilS) {
    List<LocalDate> dates = series.get(at).firsts();
    while (next[at] < dates.size()
        && DAY_S * ChronoUnit.DAYS.between(season.from(), dates.get(next[at])) < untilS) {
      values[at][next[at]++] = level[at];
    }
  }
}
