package hurdline.chart.compare;

import hurdline.answer.GainRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GainBars;
import hurdline.text.GainWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/** What a tenth more of each thing brings in one measure, the greatest gain first. */
final class GainChart {
  private final String measure;
  private final List<GainRow> rows;
  private final GainBars bars;
  private final GainWords words;
  private final Wording wording;

  GainChart(GainWords words, String measure, Wording wording) {
    this.words = words;
    this.measure = measure;
    this.wording = wording;
    rows = words.ranked(measure);
    bars = new GainBars(rows, wording);
  }

  Chart figure() {
    String title = "Effect of 10 % more of each thing: " + words.label(measure);
    String name = "gain-" + measure;
    return new Chart(
        name, title, alternative(), bars.svg(name, unit(), 70, title, alternative()), table());
  }

  private String unit() {
    return wording.unit(rows.get(0).unit());
  }

  private String alternative() {
    return "Bars of the effect on "
        + words.label(measure)
        + ", "
        + unit()
        + ", of 10 % more of each: "
        + bars.said(bars::what)
        + (bars.leavesOut() ? "; the others bring none" : "")
        + ".";
  }

  private Chart.Grid table() {
    List<List<String>> cells = new ArrayList<>();
    for (GainRow row : rows) {
      List<String> line = new ArrayList<>(bars.cells(row));
      line.add(
          words
              .held(row.what(), measure)
              .map(held -> wording.titles().line(held.line()) + " " + wording.share(held))
              .orElse(""));
      cells.add(line);
    }
    return new Chart.Grid(
        List.of(
            "",
            "more",
            "effect " + unit(),
            "joint 95 % interval",
            "significant",
            "limits of hours, one at a time"),
        cells);
  }
}
