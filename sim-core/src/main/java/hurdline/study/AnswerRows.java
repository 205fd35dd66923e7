package hurdline.study;

import hurdline.answer.BottleneckRow;
import hurdline.answer.MachineTime;
import hurdline.answer.MonthRow;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Cause;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Line;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.MeanInterval;
import hurdline.statistics.Summary;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.QuantileStore;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The rows of an answer's tables that rest on the figures of one plant. */
public final class AnswerRows {
  private final String option;
  private final CompiledPlant stage;
  private final ReplicationResults figures;
  private final PlantOutline outlines;
  private final MeasureBounds bounds;

  public AnswerRows(
      String option, CompiledPlant stage, ReplicationResults figures, PlantOutline outlines) {
    this.option = option;
    this.stage = stage;
    this.figures = figures;
    this.outlines = outlines;
    bounds = new MeasureBounds(stage.plant(), figures);
  }

  public String unit(Outcome.Column column) {
    String cropUnit =
        stage.plant().crops().stream()
            .filter(crop -> crop.name().equals(column.crop()))
            .findFirst()
            .map(PlantOutline::unit)
            .orElse("bales");
    return column.measure().unit().word(cropUnit, outlines.currency());
  }

  /** The file's currency code, empty without money. */
  String currency() {
    return outlines.currency();
  }

  /** The unit of a measure of this plant. */
  public String unit(String measure) {
    return figures.columns().stream()
        .filter(column -> column.name().equals(measure))
        .findFirst()
        .map(this::unit)
        .orElseThrow();
  }

  public List<SummaryRow> summary() {
    return IntStream.range(0, figures.columns().size()).mapToObj(this::summary).toList();
  }

  private SummaryRow summary(int at) {
    Outcome.Column column = figures.columns().get(at);
    Summary s = Summary.of(figures.series(at));
    Interval known = bounds.cut(column, s);
    return new SummaryRow(
        option,
        column.name(),
        unit(column),
        s.mean(),
        known.low(),
        known.high(),
        s.sd(),
        s.p05(),
        s.p50(),
        s.p95(),
        s.least(),
        s.most(),
        s.count(),
        word(s.interval(), s.mean95(), known));
  }

  private static String word(MeanInterval interval, Interval whole, Interval known) {
    return interval.word() + (known.equals(whole) ? "" : " cut");
  }

  public Samples samples() {
    return new Samples(
        figures.columns().stream().map(c -> new Samples.Measured(c.name(), unit(c))).toList(),
        figures.values());
  }

  /** Causes with some hours, the longest first. */
  public List<BottleneckRow> holders() {
    return holders((line, machine) -> List.of(machine));
  }

  /**
   * The same, machines that are alike and in parallel as one.
   *
   * @param twins of a machine in a line, itself among them
   */
  public List<BottleneckRow> holders(BiFunction<String, String, List<String>> twins) {
    List<BottleneckRow> rows = new ArrayList<>();
    for (Line line : outlines.lines()) {
      double[] scheduled = figures.series(Measure.LINE_HOURS_SCHEDULED.of(line.name()));
      Map<String, List<String>> together = new LinkedHashMap<>();
      causes().stream()
          .filter(c -> figures.has(Measure.LINE_HOURS_LIMITED_BY.of(line.name(), c)))
          .forEach(
              c ->
                  together
                      .computeIfAbsent(joined(line, c, twins), word -> new ArrayList<>())
                      .add(c));
      together.entrySet().stream()
          .map(one -> holder(line.name(), one.getKey(), one.getValue(), scheduled))
          .filter(row -> row.hours() > 0)
          .sorted(Comparator.comparingDouble(BottleneckRow::hours).reversed())
          .forEach(rows::add);
    }
    return rows;
  }

  private static String joined(
      Line line, String cause, BiFunction<String, String, List<String>> twins) {
    String machine = Cause.machineOf(cause);
    return machine.isEmpty()
        ? cause
        : Cause.ofTwins(twins.apply(line.name(), machine)) + cause.substring(machine.length());
  }

  private List<String> causes() {
    CompiledLines layout = stage.layout();
    return IntStream.range(0, layout.causes.count()).mapToObj(layout.causes::name).toList();
  }

  private BottleneckRow holder(
      String line, String cause, List<String> together, double[] scheduled) {
    double[] hours = new double[scheduled.length];
    for (String one : together) {
      double[] its = figures.series(Measure.LINE_HOURS_LIMITED_BY.of(line, one));
      Arrays.setAll(hours, at -> hours[at] + its[at]);
    }
    double[] shares =
        IntStream.range(0, hours.length)
            .filter(at -> scheduled[at] > 0)
            .mapToDouble(at -> hours[at] / scheduled[at])
            .toArray();
    Interval whole = Intervals.mean95(shares);
    Interval known = whole.within(0, 1);
    return new BottleneckRow(
        option,
        line,
        cause,
        Summary.of(hours).mean(),
        Summary.of(shares).mean(),
        known.low(),
        known.high(),
        word(MeanInterval.of(shares), whole, known));
  }

  public List<MonthRow> months(PeriodResults months) {
    List<MonthRow> all = new ArrayList<>();
    for (int month = 0; month < months.count(); month++) {
      String name =
          stage.roster().months().firstDate(month).toString().substring(0, "2027-01".length());
      for (int c = 0; c < months.columns().size(); c++) {
        Outcome.Column column = months.columns().get(c);
        QuantileStore.Spread f = months.of(month, c);
        all.add(
            new MonthRow(
                option, name, column.name(), unit(column), f.mean(), f.p05(), f.p50(), f.p95()));
      }
    }
    return all;
  }

  public List<MachineTime> machines() {
    return outlines.allMachines().stream().map(this::machine).toList();
  }

  private MachineTime machine(String name) {
    return new MachineTime(
        name,
        outlines.kind(name),
        Arrays.stream(State.values())
            .map(state -> figures.mean(Measure.MACHINE_HOURS.of(name, state.word())))
            .toList());
  }
}
