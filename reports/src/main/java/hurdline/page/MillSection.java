package hurdline.page;

import hurdline.answer.CompareAnswer;
import hurdline.answer.MillRow;
import hurdline.answer.Titles;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.Measure;
import hurdline.text.MillWords;
import hurdline.text.Wording;

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

  /** A row of a mill under an option. */
  private record Grade(String plant, MillRow row) {
    boolean isOrdered() {
      return row.orderedT() > 0;
    }
  }

  private Chart.Grid grades(String mill) {
    return new GridColumns<Grade>(wording)
        .text("", this::title)
        .text("hours", of -> told(of, Measure.MACHINE_SCREEN_HOURS))
        .text("milled " + wording.unit("t"), of -> told(of, Measure.MACHINE_SCREEN_MASS_IN))
        .number("share", 0, "share", of -> words.milled(of.plant, of.row), "")
        .number("of the mix", 0, "share", of -> of.row.share(), "by orders")
        .text(wording.unit("kWh/t"), of -> words.shown(words.perTonne(of.plant, of.row)))
        .text(
            "made " + wording.unit("t"),
            of -> of.row.product().isEmpty() ? "" : ofProduct(of, Measure.PRODUCT_MASS))
        .text(
            "ordered " + wording.unit("t"),
            of -> of.isOrdered() ? wording.roughly(of.row.orderedT(), "t") : "")
        .text("late days", of -> of.isOrdered() ? ofProduct(of, Measure.PRODUCT_LATE_DAYS) : "")
        .of(
            words.plants().stream()
                .flatMap(
                    plant -> words.rows(mill, plant).stream().map(row -> new Grade(plant, row)))
                .toList());
  }

  private String title(Grade of) {
    MillRow row = of.row;
    return wording.titles().option(of.plant)
        + ": "
        + Titles.inText(wording.titles().screen(row.mill(), row.screen()))
        + (row.product().isEmpty() ? "" : ", " + wording.titles().product(row.product()));
  }

  private String told(Grade of, Measure measure) {
    return words.told(of.plant, measure.of(of.row.mill(), of.row.screen()));
  }

  private String ofProduct(Grade of, Measure measure) {
    return words.told(of.plant, measure.of(of.row.product()));
  }

  private Chart.Grid demand() {
    GridColumns<String> columns = new GridColumns<String>(wording).text("month", month -> month);
    for (String plant : words.plants()) {
      columns.text(
          wording.titles().option(plant) + " " + currency,
          month ->
              wording.roughly(words.inMonth(plant, month, Measure.MONEY_DEMAND.of()), currency));
    }
    return columns.of(words.months());
  }
}
