package hurdline.chart;

import hurdline.answer.SeasonAnswer;
import hurdline.measure.Measure;
import hurdline.words.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The charts of season plans, by the question they answer. */
public final class PlanFigures {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final Once<List<Figure>> building = new Once<>(this::drawBuilding);
  private final Once<List<Figure>> years = new Once<>(this::drawYears);
  private final Once<List<Figure>> crops = new Once<>(this::drawCrops);
  private final Once<List<Figure>> machines = new Once<>(this::drawMachines);
  private final Once<List<Figure>> money = new Once<>(this::drawMoney);
  private final Once<List<Figure>> months = new Once<>(this::drawMonths);

  public PlanFigures(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the building is used for under each plan. */
  public List<Figure> building() {
    return building.get();
  }

  private List<Figure> drawBuilding() {
    return List.of(new BuildingChart(answer, wording).figure());
  }

  /** The year at a glance, plan by plan. */
  public List<Figure> years() {
    return years.get();
  }

  private List<Figure> drawYears() {
    return answer.plans().stream()
        .map(plan -> new YearStrips(answer, plan, wording).figure())
        .toList();
  }

  /** When each crop was finished, the plans side by side. */
  public List<Figure> crops() {
    return crops.get();
  }

  private List<Figure> drawCrops() {
    EndsChart ends = new EndsChart(answer, wording);
    return ends.isEmpty() ? List.of() : List.of(ends.figure());
  }

  /** Each machine's hours by crop, plan by plan. */
  public List<Figure> machines() {
    return machines.get();
  }

  private List<Figure> drawMachines() {
    return answer.plans().stream()
        .map(plan -> new MachineCropChart(answer, plan, wording).figure())
        .toList();
  }

  /** What each plan earns. */
  public List<Figure> money() {
    return money.get();
  }

  private List<Figure> drawMoney() {
    return answer.header().currency().isEmpty()
        ? List.of()
        : List.of(new PlanMarginChart(answer, wording).figure());
  }

  /** Electricity by month, the plans side by side. */
  public List<Figure> months() {
    return months.get();
  }

  private List<Figure> drawMonths() {
    return List.of(
        new PlanMonthChart(answer, "energy", "Electricity by month", Measure.ENERGY_TOTAL, wording)
            .figure(),
        new PlanMonthChart(
                answer, "peak", "Highest quarter-hour of each month", Measure.ENERGY_PEAK, wording)
            .figure());
  }

  /** Every chart, in the order of the report. */
  public List<Figure> all() {
    return Stream.of(building(), years(), crops(), machines(), money(), months())
        .flatMap(List::stream)
        .toList();
  }
}
