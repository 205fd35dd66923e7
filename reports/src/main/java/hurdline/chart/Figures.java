package hurdline.chart;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Trace;
import hurdline.measure.Measure;
import hurdline.words.Wording;
import java.util.List;
import java.util.stream.Stream;

/**
 * The charts of a run, by the question they answer. Where the plant lacks what a chart shows, there
 * is none.
 */
public final class Figures {
  private final RunAnswer answer;
  private final Wording wording;
  private final Once<List<Figure>> holders = new Once<>(this::drawHolders);
  private final Once<List<Figure>> flows = new Once<>(this::drawFlows);
  private final Once<List<Figure>> machineTime = new Once<>(this::drawMachineTime);
  private final Once<List<Figure>> weeks = new Once<>(this::drawWeeks);
  private final Once<List<Figure>> day = new Once<>(this::drawDay);
  private final Once<List<Figure>> yard = new Once<>(this::drawYard);
  private final Once<List<Figure>> money = new Once<>(this::drawMoney);
  private final Once<List<Figure>> energy = new Once<>(this::drawEnergy);

  public Figures(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * Unpacks the font and loads what draws, which takes longer than all charts together; worth doing
   * while something else is at work.
   */
  public static void getReady() {
    Look.getReady();
  }

  /** What holds each line. */
  public List<Figure> holders() {
    return holders.get();
  }

  private List<Figure> drawHolders() {
    return answer.outline().lines().stream()
        .map(Outline.Line::name)
        .filter(this::isHeld)
        .map(line -> new HolderChart(answer, line, wording).figure())
        .toList();
  }

  private boolean isHeld(String line) {
    return answer.holders().stream().anyMatch(row -> row.line().equals(line) && row.hours() > 0);
  }

  /** Each line with its mean flows. */
  public List<Figure> flows() {
    return flows.get();
  }

  private List<Figure> drawFlows() {
    return answer.flows().stream()
        .filter(flow -> !flow.nodes().isEmpty())
        .flatMap(flow -> FlowDiagram.of(flow, answer::find, wording).stream())
        .map(FlowDiagram::figure)
        .toList();
  }

  /** Where each machine's time goes. */
  public List<Figure> machineTime() {
    return machineTime.get();
  }

  private List<Figure> drawMachineTime() {
    return answer.machines().isEmpty()
        ? List.of()
        : List.of(new MachineTimeChart(answer, wording).figure());
  }

  /** What is fed and made week by week. */
  public List<Figure> weeks() {
    return weeks.get();
  }

  private List<Figure> drawWeeks() {
    WeekCharts charts = new WeekCharts(answer, wording);
    Stream<Figure> fed =
        answer.outline().crops().stream()
            .filter(crop -> hasWeeks(Measure.MASS_FED.of(crop.name())))
            .map(charts::fed);
    Stream<Figure> made =
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
  public List<Figure> day() {
    return day.get();
  }

  private List<Figure> drawDay() {
    Trace trace = answer.trace();
    return DayChart.isReadable(trace.day())
        ? List.of(new DayChart(trace.day(), trace.replication(), wording).figure())
        : List.of();
  }

  /** The yard through the calendar. */
  public List<Figure> yard() {
    return yard.get();
  }

  private List<Figure> drawYard() {
    return answer.outline().crops().stream()
        .filter(this::hasLevels)
        .map(crop -> YardChart.of(answer, crop, wording).figure())
        .toList();
  }

  private boolean hasLevels(Outline.Crop crop) {
    return answer.levels().stream()
        .anyMatch(row -> row.crop().equals(crop.name()) && row.isWholeYard());
  }

  /** Money over the calendar. */
  public List<Figure> money() {
    return money.get();
  }

  private List<Figure> drawMoney() {
    return answer.find(Measure.MONEY_MARGIN.of()).isEmpty()
        ? List.of()
        : List.of(new MoneyChart(answer, wording).figure());
  }

  /** Energy and peak demand by month. */
  public List<Figure> energy() {
    return energy.get();
  }

  private List<Figure> drawEnergy() {
    EnergyCharts charts = new EnergyCharts(answer, wording);
    return answer.months().isEmpty() ? List.of() : List.of(charts.energy(), charts.peak());
  }

  /** Every chart, in the order of the report. */
  public List<Figure> all() {
    return Stream.of(holders(), flows(), machineTime(), weeks(), day(), yard(), money(), energy())
        .flatMap(List::stream)
        .toList();
  }
}
