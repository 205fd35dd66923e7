package hurdline.study;

import hurdline.answer.LevelRow;
import hurdline.answer.MonthRow;
import hurdline.answer.WeekRow;
import hurdline.line.Periods;
import hurdline.measure.Measure;
import hurdline.plant.Crop;
import hurdline.plant.Yard;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.List;

/** The rows of a run's tables that go through the year. */
final class YearRows {
  private final String option;
  private final Stage stage;
  private final Gathered gathered;
  private final Rows rows;

  YearRows(String option, Stage stage, Gathered gathered, Rows rows) {
    this.option = option;
    this.stage = stage;
    this.gathered = gathered;
    this.rows = rows;
  }

  /** Every week; a cause that never held a line has no rows. */
  List<WeekRow> weeks() {
    Periods weeks = stage.roster().weeks();
    PeriodFigures byWeek = gathered.byWeek();
    List<Outcome.Column> columns = byWeek.columns();
    boolean[] left = new boolean[columns.size()];
    for (int c = 0; c < left.length; c++) {
      left[c] =
          columns.get(c).measure() == Measure.LINE_HOURS_LIMITED_BY && byWeek.isNever(c);
    }
    List<WeekRow> all = new ArrayList<>();
    for (int week = 0; week < byWeek.count(); week++) {
      for (int c = 0; c < left.length; c++) {
        if (!left[c]) {
          Outcome.Column column = columns.get(c);
          Cells.Spread f = byWeek.of(week, c);
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
  List<LevelRow> levels() {
    List<LevelRow> all = new ArrayList<>();
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

  private void levels(Crop crop, int place, String name, List<LevelRow> all) {
    int c = stage.layout().naming.crops.index(crop.name());
    int days = stage.roster().days();
    for (int day = 0; day < days; day++) {
      Cells.Spread f = gathered.level(c, place, day, days);
      all.add(
          new LevelRow(
              option,
              stage.roster().date(day),
              crop.name(),
              name,
              Outlines.unit(crop),
              f.mean(),
              f.p05(),
              f.p50(),
              f.p95()));
    }
  }
}
