package hurdline.chart.run;

import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** Electricity by the hours that its tariff prices; none where the tariff has no periods. */
final class TariffChart {
  private static final String TITLE = "Electricity by tariff period";
  private static final String KWH = "kWh";
  private static final String KW = "kW";

  private final RunAnswer answer;
  private final Wording wording;

  TariffChart(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Optional<Chart> chart() {
    List<Row> rows = rows();
    if (rows.size() == 1) {
      return Optional.empty();
    }
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    rows.forEach(row -> row.kwh().ifPresent(kwh -> data.addValue(kwh, "mean", row.name())));
    BarRenderer bars = ChartStyle.flat(new BarRenderer());
    bars.setSeriesPaint(0, Palette.BLUE);
    bars.setMaximumBarWidth(0.1);
    CategoryPlot plot = ChartStyle.months(data, bars, ChartStyle.numberAxis(KWH, wording));
    String alternative = alternative(rows);
    return Optional.of(
        new Chart(
            "tariff",
            TITLE,
            alternative,
            ChartStyle.svg("tariff", plot, false, 230, TITLE, alternative),
            table(rows)));
  }

  /**
   * Hours of the tariff, means over the replications.
   *
   * @param kwh absent where the period has no price of energy
   * @param kw absent where it has no demand charge
   */
  private record Row(
      String name,
      OptionalDouble kwh,
      OptionalDouble kw,
      OptionalDouble energyCost,
      OptionalDouble demandCost) {}

  /** The periods, and behind them what is outside their hours. */
  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (String period : periods()) {
      rows.add(
          new Row(
              Titles.ofName(period),
              mean(Measure.ENERGY_PERIOD.of(period)),
              mean(Measure.ENERGY_PERIOD_PEAK.of(period)),
              mean(Measure.MONEY_PERIOD_ENERGY.of(period)),
              mean(Measure.MONEY_PERIOD_DEMAND.of(period))));
    }
    double kwh = mean(Measure.ENERGY_TOTAL.of()).orElse(0);
    double demand = mean(Measure.MONEY_DEMAND.of()).orElse(0);
    double energy = mean(Measure.MONEY_ELECTRICITY.of()).orElse(0) - demand;
    for (Row row : rows) {
      kwh -= row.kwh().orElse(0);
      energy -= row.energyCost().orElse(0);
      demand -= row.demandCost().orElse(0);
    }
    rows.add(
        new Row(
            "other hours; demand at any hour",
            OptionalDouble.of(Math.max(0, kwh)),
            mean(Measure.ENERGY_PEAK.of()),
            OptionalDouble.of(Math.max(0, energy)),
            OptionalDouble.of(Math.max(0, demand))));
    return rows;
  }

  private Set<String> periods() {
    Set<String> periods = new LinkedHashSet<>();
    for (SummaryRow row : answer.summary()) {
      Measure.find(row.measure())
          .filter(
              match ->
                  match.measure() == Measure.ENERGY_PERIOD
                      || match.measure() == Measure.ENERGY_PERIOD_PEAK)
          .ifPresent(match -> periods.add(match.names().get(0)));
    }
    return periods;
  }

  private OptionalDouble mean(String measure) {
    return answer.summary().stream()
        .filter(row -> row.measure().equals(measure))
        .mapToDouble(SummaryRow::mean)
        .findFirst();
  }

  private String alternative(List<Row> rows) {
    List<String> parts = new ArrayList<>();
    for (Row row : rows) {
      row.kwh().ifPresent(kwh -> parts.add(row.name() + " " + wording.fixed(kwh, 0, KWH)));
    }
    return TITLE + ", bars of kWh: " + String.join(", ", parts) + ".";
  }

  private Chart.Grid table(List<Row> rows) {
    String currency = answer.header().currency();
    return new GridColumns<Row>(wording)
        .text("hours", Row::name)
        .text("kWh", row -> cell(row.kwh(), KWH))
        .text("highest kW", row -> cell(row.kw(), KW))
        .text("energy " + currency, row -> cell(row.energyCost(), currency))
        .text("demand " + currency, row -> cell(row.demandCost(), currency))
        .of(rows);
  }

  private String cell(OptionalDouble value, String unit) {
    return value.isPresent() ? wording.fixed(value.getAsDouble(), 0, unit) : "–";
  }
}
