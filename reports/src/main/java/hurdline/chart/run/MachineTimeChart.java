package hurdline.chart.run;

import hurdline.answer.MachineTime;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.measure.State;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Where each machine's crewed time goes: stacked bars; hours off duty are in the table only, they
 * would dwarf the rest.
 */
final class MachineTimeChart {
  private static final List<State> STACKED =
      List.of(
          State.FULL_RATE,
          State.SLOWED,
          State.BLOCKED,
          State.STARVED,
          State.CHANGING,
          State.DOWN,
          State.PLANNED);

  private final RunAnswer answer;
  private final Wording wording;

  MachineTimeChart(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart figure() {
    String title = "Where each machine's time goes";
    String svg =
        ChartStyle.svg(
            "time", plot(), true, 90 + 26 * answer.machines().size(), title, alternative());
    return new Chart("time", title, alternative(), svg, table());
  }

  private CategoryPlot plot() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (State state : STACKED) {
      for (MachineTime machine : answer.machines()) {
        data.addValue(
            machine.hours(state), word(state), wording.titles().machine(machine.machine()));
      }
    }
    StackedBarRenderer bars = ChartStyle.flat(new StackedBarRenderer());
    bars.setDrawBarOutline(true);
    bars.setDefaultLegendShape(ChartStyle.swatch());
    for (int series = 0; series < STACKED.size(); series++) {
      bars.setSeriesPaint(series, Palette.state(STACKED.get(series)));
      bars.setSeriesOutlinePaint(series, Color.WHITE);
      bars.setSeriesOutlineStroke(series, new BasicStroke(1));
    }
    NumberAxis axis = ChartStyle.numberAxis("hours on duty", wording);
    return ChartStyle.lying(new CategoryPlot(data, ChartStyle.categoryAxis(), axis, bars));
  }

  private static String word(State state) {
    return state.word().replace('_', ' ');
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    for (MachineTime machine : answer.machines()) {
      double onDuty = STACKED.stream().mapToDouble(machine::hours).sum();
      if (onDuty > 0) {
        parts.add(
            wording.titles().machine(machine.machine())
                + " runs at full rate for "
                + wording.fixed(machine.hours(State.FULL_RATE) / onDuty, 0, "share")
                + " % of its hours on duty");
      }
    }
    return "Stacked bars of the hours of each machine by state: " + String.join(", ", parts) + ".";
  }

  private Chart.Grid table() {
    GridColumns<MachineTime> columns =
        new GridColumns<MachineTime>(wording)
            .text("machine", machine -> wording.titles().machine(machine.machine()));
    for (State state : State.values()) { // a column of noughts takes the room of a word on paper
      if (answer.machines().stream().noneMatch(machine -> machine.hours(state) > 0)) {
        continue;
      }
      columns.number(word(state), 0, "h", machine -> machine.hours(state));
    }
    return columns.of(answer.machines());
  }
}
