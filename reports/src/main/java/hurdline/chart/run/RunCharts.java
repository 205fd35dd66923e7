package hurdline.chart.run;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Trace;
import hurdline.chart.flow.FlowDiagram;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Memoized;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Stream;

/**
 * The charts of a run, by the question they answer. Where the plant lacks what a chart shows, there
 * is none.
 */
public final class RunCharts {
  private final RunAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> holders = new Memoized<>(this::drawHolders);
  private final Memoized<List<Chart>> flows = new Memoized<>(this::drawFlows);
  private final Memoized<List<Chart>> machineTime = new Memoized<>(this::drawMachineTime);
  private final Memoized<List<Chart>> weeks = new Memoized<>(this::drawWeeks);
  private final Memoized<List<Chart>> day = new Memoized<>(this::drawDay);
  private final Memoized<List<Chart>> yard = new Memoized<>(this::drawYard);
  private final Memoized<List<Chart>> stores = new Memoized<>(this::drawStores);
  private final Memoized<List<Chart>> money = new Memoized<>(this::drawMoney);
  private final Memoized<List<Chart>> energy = new Memoized<>(this::drawEnergy);

  public RunCharts(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * Unpacks the font and loads what draws, which takes longer than all charts together; worth doing
   * while something else is at work.
   */
  public static void getReady() {
    ChartStyle.getReady();
  }

  /** What holds each line. */
  public List<Chart> holders() {
    return holders.get();
  }

  private List<Chart> drawHolders() {
    return answer.outline().lines().stream()
        .map(Outline.Line::name)
        .filter(this::isHeld)
        .map(line -> new BottleneckChart(answer, line, wording).figure())
        .toList();
  }

  private boolean isHeld(String line) {
    return answer.holders().stream().anyMatch(row -> row.line().equals(line) && row.hours() > 0);
  }

  /** Each line with its mean flows. */
  public List<Chart> flows() {
    return flows.get();
  }

  private List<Chart> drawFlows() {
    return answer.flows().stream()
        .filter(flow -> !flow.nodes().isEmpty())
        .flatMap(flow -> FlowDiagram.of(flow, answer::find, wording).stream())
        .map(FlowDiagram::figure)
        .toList();
  }

  /** Where each machine's time goes. */
  public List<Chart> machineTime() {
    return machineTime.get();
  }

  private List<Chart> drawMachineTime() {
    return answer.machines().isEmpty()
        ? List.of()
        : List.of(new MachineTimeChart(answer, wording).figure());
  }

  /** What is fed and made week by week. */
  public List<Chart> weeks() {
    return weeks.get();
  }

  private List<Chart> drawWeeks() {
    WeekCharts charts = new WeekCharts(answer, wording);
    Stream<Chart> fed =
        answer.outline().crops().stream()
            .filter(crop -> hasWeeks(Measure.MASS_FED.of(crop.name())))
            .map(charts::fed);
    Stream<Chart> made =
        answer.outline().lines().stream()
            .filter(
                line ->
                    line.products().stream()
                        .anyMatch(product -> hasWeeks(Measure.PRODUCT_MASS.of(product))))
            .map(charts::products);
    return Stream.concat(fed, made).toList();
  }

  private boolean hasWeeks(String measure) {
    return answer.weeks().stream().anyMatch(row -> row.measure().equals(measure));
  }

  /** The span of {@code --trace} on one time axis, if it is short enough to be read. */
  public List<Chart> day() {
    return day.get();
  }

  private List<Chart> drawDay() {
    Trace trace = answer.trace();
    return DayChart.isReadable(trace.day())
        ? List.of(new DayChart(trace.day(), trace.replication(), wording).figure())
        : List.of();
  }

  /** The yard through the calendar. */
  public List<Chart> yard() {
    return yard.get();
  }

  private List<Chart> drawYard() {
    return answer.outline().crops().stream()
        .filter(this::hasLevels)
        .map(crop -> LevelChart.yard(answer, crop, wording).figure())
        .toList();
  }

  private boolean hasLevels(Outline.Crop crop) {
    return answer.levels().stream()
        .anyMatch(row -> row.crop().equals(crop.name()) && row.isWholeYard());
  }

  /** Stores of products through the calendar. */
  public List<Chart> stores() {
    return stores.get();
  }

  private List<Chart> drawStores() {
    return answer.outline().stores().stream()
        .map(store -> LevelChart.store(answer, store, wording).figure())
        .toList();
  }

  /** Money over the calendar. */
  public List<Chart> money() {
    return money.get();
  }

  private List<Chart> drawMoney() {
    return answer.find(Measure.MONEY_MARGIN.of()).isEmpty()
        ? List.of()
        : List.of(new MoneyChart(answer, wording).figure());
  }

  /** Energy and peak demand by month. */
  public List<Chart> energy() {
    return energy.get();
  }

  private List<Chart> drawEnergy() {
    EnergyCharts charts = new EnergyCharts(answer, wording);
    List<Chart> months =
        answer.months().isEmpty() ? List.of() : List.of(charts.energy(), charts.peak());
    return Stream.concat(months.stream(), new TariffChart(answer, wording).chart().stream())
        .toList();
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(
            holders(), flows(), machineTime(), weeks(), day(), yard(), stores(), money(), energy())
        .flatMap(List::stream)
        .toList();
  }
}
