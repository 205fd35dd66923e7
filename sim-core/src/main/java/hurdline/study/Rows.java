package hurdline.study;

import hurdline.answer.HolderRow;
import hurdline.answer.LevelRow;
import hurdline.answer.MachineTime;
import hurdline.answer.MonthRow;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.WeekRow;
import hurdline.estimate.Intervals;
import hurdline.estimate.Interval;
import hurdline.estimate.Summary;
import hurdline.line.Layout;
import hurdline.line.Periods;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.Yard;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The rows of a run's tables from what the replications came to. */
final class Rows {
  private final String option;
  private final Stage stage;
  private final Gathered gathered;
  private final Outlines outlines;

  Rows(String option, Stage stage, Gathered gathered, Outlines outlines) {
    this.option = option;
    this.stage = stage;
    this.gathered = gathered;
    this.outlines = outlines;
  }

  private String unit(Outcome.Column column) {
    String cropUnit =
        stage.plant().crops().stream()
            .filter(crop -> crop.name().equals(column.crop()))
            .findFirst()
            .map(Outlines::unit)
            .orElse("bales");
    return column.measure().unit().word(cropUnit, outlines.currency());
  }

  List<SummaryRow> summary() {
    return IntStream.range(0, gathered.columns().size()).mapToObj(this::summary).toList();
  }

  private SummaryRow summary(int at) {
    Outcome.Column column = gathered.columns().get(at);
    Summary s = Summary.of(gathered.series(at));
    return new SummaryRow(
        option,
        column.name(),
        unit(column),
        s.mean(),
        s.low95(),
        s.high95(),
        s.sd(),
        s.p05(),
        s.p50(),
        s.p95(),
        s.least(),
        s.most(),
        s.count());
  }

  Samples samples() {
    return new Samples(
        gathered.columns().stream().map(c -> new Samples.Measured(c.name(), unit(c))).toList(),
        gathered.values());
  }

  /** Causes with some hours, the longest first. */
  List<HolderRow> holders() {
    List<HolderRow> rows = new ArrayList<>();
    for (Line line : outlines.lines()) {
      double[] scheduled = gathered.series(Measure.LINE_HOURS_SCHEDULED.of(line.name()));
      causes().stream()
          .filter(c -> gathered.has(Measure.LINE_HOURS_HELD_BY.of(line.name(), c)))
          .map(c -> holder(line.name(), c, scheduled))
          .filter(row -> row.hours() > 0)
          .sorted(Comparator.comparingDouble(HolderRow::hours).reversed())
          .forEach(rows::add);
    }
    return rows;
  }

  private List<String> causes() {
    Layout layout = stage.layout();
    return IntStream.range(0, layout.causes.count()).mapToObj(layout.causes::name).toList();
  }

  private HolderRow holder(String line, String cause, double[] scheduled) {
    double[] hours = gathered.series(Measure.LINE_HOURS_HELD_BY.of(line, cause));
    double[] shares =
        IntStream.range(0, hours.length)
            .filter(at -> scheduled[at] > 0)
            .mapToDouble(at -> hours[at] / scheduled[at])
            .toArray();
    Interval known = Intervals.mean95(shares);
    return new HolderRow(
        option,
        line,
        cause,
        Summary.of(hours).mean(),
        Summary.of(shares).mean(),
        known.low(),
        known.high());
  }

  List<MachineTime> machines() {
    return outlines.allMachines().stream().map(this::machine).toList();
  }

  private MachineTime machine(String name) {
    return new MachineTime(
        name,
        outlines.kind(name),
        Arrays.stream(State.values())
            .map(state -> gathered.mean(Measure.MACHINE_HOURS.of(name, state.word())))
            .toList());
  }

  /** Every week; a cause that never held a line has no rows. */
  List<WeekRow> weeks() {
    Periods weeks = stage.roster().weeks();
    List<Outcome.Column> columns = gathered.weekColumns();
    boolean[] left = new boolean[columns.size()];
    for (int c = 0; c < left.length; c++) {
      left[c] =
          columns.get(c).measure() == Measure.LINE_HOURS_HELD_BY && gathered.isNeverInAWeek(c);
    }
    List<WeekRow> rows = new ArrayList<>();
    for (int week = 0; week < gathered.weeks(); week++) {
      for (int c = 0; c < left.length; c++) {
        if (!left[c]) {
          Outcome.Column column = columns.get(c);
          Cells.Figures f = gathered.week(week, c);
          rows.add(
              new WeekRow(
                  option,
                  week + 1,
                  weeks.firstDate(week),
                  column.name(),
                  unit(column),
                  f.mean(),
                  f.p05(),
                  f.p50(),
                  f.p95()));
        }
      }
    }
    return rows;
  }

  List<MonthRow> months() {
    Periods months = stage.roster().months();
    List<MonthRow> rows = new ArrayList<>();
    for (int month = 0; month < gathered.months(); month++) {
      String name = months.firstDate(month).toString().substring(0, "2027-01".length());
      for (int c = 0; c < gathered.monthColumns().size(); c++) {
        Outcome.Column column = gathered.monthColumns().get(c);
        Cells.Figures f = gathered.month(month, c);
        rows.add(
            new MonthRow(
                option, name, column.name(), unit(column), f.mean(), f.p05(), f.p50(), f.p95()));
      }
    }
    return rows;
  }

  /** By crop and place, all places together last. */
  List<LevelRow> levels() {
    List<LevelRow> rows = new ArrayList<>();
    List<Yard.Place> places = stage.plant().yard().places();
    for (Crop crop : stage.plant().crops()) {
      for (int p = 0; p < places.size(); p++) {
        List<String> only = places.get(p).crops();
        if (only.isEmpty() || only.contains(crop.name())) {
          levels(crop, p, places.get(p).name(), rows);
        }
      }
      levels(crop, places.size(), "*", rows);
    }
    return rows;
  }

  private void levels(Crop crop, int place, String name, List<LevelRow> rows) {
    int c = stage.layout().naming.crops.index(crop.name());
    int days = stage.roster().days();
    for (int day = 0; day < days; day++) {
      Cells.Figures f = gathered.level(c, place, day, days);
      rows.add(
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
