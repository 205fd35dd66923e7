package hurdline.chart.season;

import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.Memoized;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Stream;

/** The charts of season plans, by the question they answer. */
public final class PlanCharts {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> building = new Memoized<>(this::drawBuilding);
  private final Memoized<List<Chart>> years = new Memoized<>(this::drawYears);
  private final Memoized<List<Chart>> crops = new Memoized<>(this::drawCrops);
  private final Memoized<List<Chart>> machines = new Memoized<>(this::drawMachines);
  private final Memoized<List<Chart>> money = new Memoized<>(this::drawMoney);
  private final Memoized<List<Chart>> months = new Memoized<>(this::drawMonths);

  public PlanCharts(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the building is used for under each plan. */
  public List<Chart> building() {
    return building.get();
  }

  private List<Chart> drawBuilding() {
    return List.of(new BuildingChart(answer, wording).figure());
  }

  /** The year at a glance, plan by plan. */
  public List<Chart> years() {
    return years.get();
  }

  private List<Chart> drawYears() {
    return answer.plans().stream()
        .map(plan -> new YearStrips(answer, plan, wording).figure())
        .toList();
  }

  /** When each crop was finished, the plans side by side. */
  public List<Chart> crops() {
    return crops.get();
  }

  private List<Chart> drawCrops() {
    EndsChart ends = new EndsChart(answer, wording);
    return ends.isEmpty() ? List.of() : List.of(ends.figure());
  }

  /** Each machine's hours by crop, plan by plan. */
  public List<Chart> machines() {
    return machines.get();
  }

  private List<Chart> drawMachines() {
    return answer.plans().stream()
        .map(plan -> new MachineCropChart(answer, plan, wording).figure())
        .toList();
  }

  /** What each plan earns. */
  public List<Chart> money() {
    return money.get();
  }

  private List<Chart> drawMoney() {
    return answer.header().currency().isEmpty()
        ? List.of()
        : List.of(new PlanMarginChart(answer, wording).figure());
  }

  /** Electricity by month, the plans side by side. */
  public List<Chart> months() {
    return months.get();
  }

  private List<Chart> drawMonths() {
    return List.of(
        new PlanMonthChart(answer, "energy", "Electricity by month", Measure.ENERGY_TOTAL, wording)
            .figure(),
        new PlanMonthChart(
                answer, "peak", "Highest quarter-hour of each month", Measure.ENERGY_PEAK, wording)
            .figure());
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(building(), years(), crops(), machines(), money(), months())
        .flatMap(List::stream)
        .toList();
  }
}
