package hurdline.chart.season;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Each machine's hours on duty under one plan: at work by crop, standing, in a stop or a change.
 */
final class MachineCropChart {
  private static final List<State> AT_WORK = List.of(State.SLOWED, State.FULL_RATE);
  private static final List<State> STANDING = List.of(State.STARVED, State.BLOCKED);
  private static final List<State> STOPPED = List.of(State.PLANNED, State.DOWN, State.CHANGING);

  private final SeasonAnswer answer;
  private final SeasonAnswer.Plan plan;
  private final Wording wording;
  private final List<String> machines;
  private final List<String> crops;

  MachineCropChart(SeasonAnswer answer, SeasonAnswer.Plan plan, Wording wording) {
    this.answer = answer;
    this.plan = plan;
    this.wording = wording;
    machines = plan.outline().machines();
    crops = plan.outline().lines().stream().map(Outline.Line::crop).distinct().toList();
  }

  Chart figure() {
    String title = "Each machine's hours by crop, " + wording.titles().plan(plan.name());
    String name = "machines-" + plan.name();
    String svg =
        ChartStyle.svg(name, plot(), true, 110 + 24 * machines.size(), title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private double hours(String machine, String crop, List<State> states) {
    return states.stream()
        .mapToDouble(
            state ->
                answer.mean(
                    plan.name(), Measure.MACHINE_CROP_HOURS.of(machine, crop, state.word())))
        .sum();
  }

  private double ofAll(String machine, List<State> states) {
    return crops.stream().mapToDouble(crop -> hours(machine, crop, states)).sum();
  }

  private CategoryPlot plot() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    List<Paint> paints = new ArrayList<>();
    for (String crop : crops) {
      machines.forEach(
          m ->
              data.addValue(
                  hours(m, crop, AT_WORK),
                  "producing from " + wording.titles().crop(crop),
                  wording.titles().machine(m)));
      paints.add(PlanPaints.of(answer, crop));
    }
    machines.forEach(
        m -> data.addValue(ofAll(m, STANDING), "starved or blocked", wording.titles().machine(m)));
    paints.add(Palette.state(State.STARVED));
    machines.forEach(
        m ->
            data.addValue(
                ofAll(m, STOPPED),
                "in a stop, or in a package or screen change",
                wording.titles().machine(m)));
    paints.add(Palette.state(State.DOWN));
    StackedBarRenderer bars = ChartStyle.flat(new StackedBarRenderer());
    bars.setDrawBarOutline(true);
    bars.setDefaultLegendShape(ChartStyle.swatch());
    for (int series = 0; series < paints.size(); series++) {
      bars.setSeriesPaint(series, paints.get(series));
      bars.setSeriesOutlinePaint(series, java.awt.Color.WHITE);
      bars.setSeriesOutlineStroke(series, new BasicStroke(1));
    }
    return ChartStyle.lying(
        new CategoryPlot(
            data,
            ChartStyle.categoryAxis(),
            ChartStyle.numberAxis("hours on duty", wording),
            bars));
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    for (String machine : machines) {
      List<String> of = new ArrayList<>();
      crops.forEach(
          crop ->
              of.add(
                  wording.fixed(hours(machine, crop, AT_WORK), 0, "h")
                      + " h on "
                      + wording.titles().crop(crop)));
      parts.add(wording.titles().machine(machine) + " " + String.join(" and ", of));
    }
    return "Stacked bars of the producing hours of each machine: " + String.join(", ", parts) + ".";
  }

  private Chart.Grid table() {
    List<State> states =
        List.of(
            State.UNCREWED,
            State.PLANNED,
            State.DOWN,
            State.CHANGING,
            State.STARVED,
            State.BLOCKED,
            State.SLOWED,
            State.FULL_RATE);
    List<String> head = new ArrayList<>(List.of("machine, crop"));
    states.forEach(state -> head.add(state.word().replace('_', ' ') + " h"));
    head.add("taken in " + wording.unit("t"));
    List<List<String>> rows = new ArrayList<>();
    for (String machine : machines) {
      for (String crop : crops) {
        if (states.stream().anyMatch(state -> hours(machine, crop, List.of(state)) > 0)) {
          List<String> cells =
              new ArrayList<>(
                  List.of(wording.titles().machine(machine) + ", " + wording.titles().crop(crop)));
          states.forEach(
              state -> cells.add(wording.fixed(hours(machine, crop, List.of(state)), 0, "h")));
          String mass = Measure.MACHINE_CROP_MASS_IN.of(machine, crop);
          cells.add(wording.fixed(answer.mean(plan.name(), mass), 0, "t"));
          rows.add(cells);
        }
      }
    }
    return new Chart.Grid(head, rows);
  }
}
