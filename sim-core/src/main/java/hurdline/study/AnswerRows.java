package hurdline.study;

import hurdline.answer.BottleneckRow;
import hurdline.answer.InputUncertainty;
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
import hurdline.statistics.MeanOverInputs;
import hurdline.statistics.Summary;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.QuantileStore;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The rows of an answer's tables that rest on the figures of one plant. */
public final class AnswerRows {
  /** What a crop has of all its forms together: bales and modules are pieces there. */
  private static final Set<Measure> OF_ALL_FORMS =
      EnumSet.of(
          Measure.INTAKE_ON_HAND_AT_START,
          Measure.INTAKE_WEIGHED_IN,
          Measure.INTAKE_FED,
          Measure.INTAKE_ON_HAND_AT_END,
          Measure.INTAKE_TURNED_AWAY,
          Measure.INTAKE_REJECTED,
          Measure.SEASON_LEFT_OVER,
          Measure.SEASON_NTH_LEFT_OVER);

  private final String option;
  private final CompiledPlant stage;
  private final ReplicationResults figures;
  private final PlantOutline outlines;
  private final MeasureBounds bounds;
  private final Optional<DrawnResults> drawn;

  public AnswerRows(
      String option, CompiledPlant stage, ReplicationResults figures, PlantOutline outlines) {
    this(option, stage, figures, outlines, Optional.empty());
  }

  /**
   * @param drawn the same with drawn inputs, which then count in all intervals
   */
  public AnswerRows(
      String option,
      CompiledPlant stage,
      ReplicationResults figures,
      PlantOutline outlines,
      Optional<DrawnResults> drawn) {
    this.drawn = drawn.filter(of -> of.figures().count() > 1);
    this.option = option;
    this.stage = stage;
    this.figures = figures;
    this.outlines = outlines;
    bounds = new MeasureBounds(stage.plant(), figures);
  }

  public String unit(Outcome.Column column) {
    String cropUnit =
        OF_ALL_FORMS.contains(column.measure()) && stage.plant().forms(column.crop()).size() > 1
            ? "pieces"
            : stage.plant().crops().stream()
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
    Optional<MeanOverInputs> over = overInputs(column.name(), s);
    Interval whole = over.map(MeanOverInputs::interval).orElse(s.mean95());
    Interval known = bounds.cut(column, s, whole);
    return new SummaryRow(
        option,
        column.name(),
        unit(column),
        s.mean(),
        known.low(),
        known.high(),
        s.sd(),
        over.map(MeanOverInputs::p05).orElse(s.p05()),
        over.map(MeanOverInputs::p50).orElse(s.p50()),
        over.map(MeanOverInputs::p95).orElse(s.p95()),
        s.least(),
        s.most(),
        s.count(),
        word(s.interval(), whole, known) + (over.isPresent() ? " inputs" : ""));
  }

  private Optional<MeanOverInputs> overInputs(String measure, Summary of) {
    return drawn
        .filter(inputs -> of.count() > 1 && inputs.figures().has(measure))
        .map(inputs -> overInputs(figures.series(measure), inputs.figures().series(measure)))
        .filter(inputs -> inputs.interval().isKnown());
  }

  private MeanOverInputs overInputs(double[] given, double[] withDrawn) {
    return MeanOverInputs.of(given, withDrawn, drawn.orElseThrow().draws().rows().size(), 0.95);
  }

  /** What drawn inputs make of each measure; none where none are drawn. */
  List<InputUncertainty.Row> inputRows() {
    return figures.columns().stream()
        .flatMap(
            column ->
                overInputs(column.name(), Summary.of(figures.series(column.name())))
                    .map(over -> InputRows.row(option, "", column.name(), unit(column), over))
                    .stream())
        .toList();
  }

  String option() {
    return option;
  }

  double[] given(String measure) {
    return figures.series(measure);
  }

  Optional<DrawnResults> drawn() {
    return drawn;
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
      Map<String, List<String>> together = new LinkedHashMap<>();
      causes().stream()
          .filter(c -> figures.has(Measure.LINE_HOURS_LIMITED_BY.of(line.name(), c)))
          .forEach(
              c ->
                  together
                      .computeIfAbsent(joined(line, c, twins), word -> new ArrayList<>())
                      .add(c));
      together.entrySet().stream()
          .map(one -> holder(line.name(), one.getKey(), one.getValue()))
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

  private BottleneckRow holder(String line, String cause, List<String> together) {
    double[] hours = hours(figures, line, together);
    double[] ofScheduled = ofScheduled(figures, line, hours);
    double[] shares = Arrays.stream(ofScheduled).filter(share -> !Double.isNaN(share)).toArray();
    Interval whole =
        drawn
            .map(of -> ofScheduled(of.figures(), line, hours(of.figures(), line, together)))
            .map(of -> overInputs(ofScheduled, of).interval())
            .filter(Interval::isKnown)
            .orElseGet(() -> Intervals.mean95(shares));
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

  private static double[] hours(ReplicationResults of, String line, List<String> together) {
    double[] hours = new double[of.count()];
    for (String one : together) {
      double[] its = of.series(Measure.LINE_HOURS_LIMITED_BY.of(line, one));
      Arrays.setAll(hours, at -> hours[at] + its[at]);
    }
    return hours;
  }

  /** NaN where nothing was scheduled. */
  private static double[] ofScheduled(ReplicationResults of, String line, double[] hours) {
    double[] scheduled = of.series(Measure.LINE_HOURS_SCHEDULED.of(line));
    return IntStream.range(0, hours.length)
        .mapToDouble(at -> scheduled[at] > 0 ? hours[at] / scheduled[at] : Double.NaN)
        .toArray();
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
