package hurdline.page;

import hurdline.answer.CompareAnswer;
import hurdline.answer.MillRow;
import hurdline.answer.Titles;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.measure.Measure;
import hurdline.text.MillWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/** The part of a comparison's report about mills: grades, energy, swaps and what peaks cost. */
final class MillSection {
  private final CompareCharts figures;
  private final MillWords words;
  private final Wording wording;
  private final String currency;

  MillSection(CompareAnswer answer, Wording wording, CompareCharts figures) {
    this.figures = figures;
    this.wording = wording;
    words = new MillWords(answer, wording);
    currency = answer.header().currency();
  }

  Section section() {
    return new Section("mill", "The mill", !words.mills().isEmpty(), this::write);
  }

  private void write(Html html) {
    words.sentences().forEach(sentence -> html.paragraph(sentence + "."));
    for (String mill : words.mills()) {
      html.table("grades of " + wording.titles().machineInText(mill), grades(mill));
    }
    html.paragraph(
        "What was milled stands beside the share that the mix asks for and what has been ordered: a"
            + " grade far above its orders is milled for the yard, one below them is late. Energy is"
            + " what the motor drew with that screen in, idle and starting included, over what it took"
            + " in.");
    html.figures(figures.mills());
    if (!currency.isEmpty()) {
      html.table("what peak demand costs by month", demand());
    }
  }

  private Chart.Grid grades(String mill) {
    List<List<String>> rows = new ArrayList<>();
    for (String plant : words.plants()) {
      for (MillRow row : words.rows(mill, plant)) {
        rows.add(grade(plant, row));
      }
    }
    return new Chart.Grid(
        List.of(
            "",
            "hours",
            "milled " + wording.unit("t"),
            "share %",
            "of the mix %",
            wording.unit("kWh/t"),
            "made " + wording.unit("t"),
            "ordered " + wording.unit("t"),
            "late days"),
        rows);
  }

  private List<String> grade(String plant, MillRow row) {
    String mill = row.mill();
    boolean ordered = row.orderedT() > 0;
    return List.of(
        wording.titles().option(plant)
            + ": "
            + Titles.inText(wording.titles().screen(row.mill(), row.screen()))
            + (row.product().isEmpty() ? "" : ", " + wording.titles().product(row.product())),
        words.told(plant, Measure.MACHINE_SCREEN_HOURS.of(mill, row.screen())),
        words.told(plant, Measure.MACHINE_SCREEN_MASS_IN.of(mill, row.screen())),
        share(words.milled(plant, row)),
        Double.isNaN(row.share()) ? "by orders" : share(row.share()),
        words.shown(words.perTonne(plant, row)),
        row.product().isEmpty() ? "" : words.told(plant, Measure.PRODUCT_MASS.of(row.product())),
        ordered ? wording.roughly(row.orderedT(), "t") : "",
        ordered ? words.told(plant, Measure.PRODUCT_LATE_DAYS.of(row.product())) : "");
  }

  private String share(double share) {
    return Double.isNaN(share) ? "" : wording.fixed(share, 0, "share");
  }

  private Chart.Grid demand() {
    List<String> head = new ArrayList<>(List.of("month"));
    words.plants().forEach(plant -> head.add(wording.titles().option(plant) + " " + currency));
    List<List<String>> rows = new ArrayList<>();
    for (String month : words.months()) {
      List<String> row = new ArrayList<>(List.of(month));
      for (String plant : words.plants()) {
        row.add(wording.roughly(words.inMonth(plant, month, Measure.MONEY_DEMAND.of()), currency));
      }
      rows.add(row);
    }
    return new Chart.Grid(head, rows);
  }
}
