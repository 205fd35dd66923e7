package hurdline.study.run;

import hurdline.answer.MonthRow;
import hurdline.answer.StoreLevelRow;
import hurdline.answer.WeekRow;
import hurdline.answer.YardLevelRow;
import hurdline.compiled.Periods;
import hurdline.measure.Measure;
import hurdline.plant.Crop;
import hurdline.plant.Store;
import hurdline.plant.Yard;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.study.AnswerRows;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.QuantileStore;
import java.util.ArrayList;
import java.util.List;

/** The rows of a run's tables that go through the year. */
public final class YearRows {
  private static final double TONNE_KG = 1000;

  private final String option;
  private final CompiledPlant stage;
  private final RunAccumulator gathered;
  private final AnswerRows rows;

  public YearRows(String option, CompiledPlant stage, RunAccumulator gathered, AnswerRows rows) {
    this.option = option;
    this.stage = stage;
    this.gathered = gathered;
    this.rows = rows;
  }

  /** Every week; a cause that never held a line has no rows. */
  List<WeekRow> weeks() {
    Periods weeks = stage.roster().weeks();
    PeriodResults byWeek = gathered.byWeek();
    List<Outcome.Column> columns = byWeek.columns();
    boolean[] left = new boolean[columns.size()];
    for (int c = 0; c < left.length; c++) {
      left[c] = columns.get(c).measure() == Measure.LINE_HOURS_LIMITED_BY && byWeek.isNever(c);
    }
    List<WeekRow> all = new ArrayList<>();
    for (int week = 0; week < byWeek.count(); week++) {
      for (int c = 0; c < left.length; c++) {
        if (!left[c]) {
          Outcome.Column column = columns.get(c);
          QuantileStore.Spread f = byWeek.of(week, c);
          all.add(
              new WeekRow(
                  option,
                  week + 1,
                  weeks.firstDate(week),
                  column.name(),
                  rows.unit(column),
                  f.mean(),
                  f.p05(),
                  f.p50(),
                  f.p95()));
        }
      }
    }
    return all;
  }

  List<MonthRow> months() {
    return rows.months(gathered.byMonth());
  }

  /** By crop and place, all places together last. */
  public List<YardLevelRow> levels() {
    List<YardLevelRow> all = new ArrayList<>();
    List<Yard.Place> places = stage.plant().yard().places();
    for (Crop crop : stage.plant().crops()) {
      for (int p = 0; p < places.size(); p++) {
        List<String> only = places.get(p).crops();
        if (only.isEmpty() || only.contains(crop.name())) {
          levels(crop, p, places.get(p).name(), all);
        }
      }
      levels(crop, places.size(), "*", all);
    }
    return all;
  }

  /** By store. */
  List<StoreLevelRow> stores() {
    List<StoreLevelRow> all = new ArrayList<>();
    int days = stage.roster().days();
    for (Store store : stage.plant().stores()) {
      int s = stage.layout().naming.stores.index(store.name());
      for (int day = 0; day < days; day++) {
        QuantileStore.Spread f = gathered.storeKg(s, day, days);
        all.add(
            new StoreLevelRow(
                option,
                stage.roster().date(day),
                store.name(),
                f.mean() / TONNE_KG,
                f.p05() / TONNE_KG,
                f.p50() / TONNE_KG,
                f.p95() / TONNE_KG));
      }
    }
    return all;
  }

  private void levels(Crop crop, int place, String name, List<YardLevelRow> all) {
    int c = stage.layout().naming.crops.index(crop.name());
    int days = stage.roster().days();
    for (int day = 0; day < days; day++) {
      QuantileStore.Spread f = gathered.level(c, place, day, days);
      all.add(
          new YardLevelRow(
              option,
              stage.roster().date(day),
              crop.name(),
              name,
              PlantOutline.unit(crop),
              f.mean(),
              f.p05(),
              f.p50(),
              f.p95()));
    }
  }
}
