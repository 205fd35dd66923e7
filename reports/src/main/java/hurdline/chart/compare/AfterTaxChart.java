package hurdline.chart.compare;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.CompareAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Collectors;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** What each year of an option brings, and what of it is the owner's after loan and tax. */
final class AfterTaxChart {
  private final String option;
  private final String currency;
  private final List<AfterTaxRow> rows;
  private final Wording wording;

  AfterTaxChart(CompareAnswer answer, String option, Wording wording) {
    this.option = option;
    this.wording = wording;
    currency = answer.header().currency();
    rows = answer.afterTax().stream().filter(row -> row.option().equals(option)).toList();
  }

  boolean isWanted() {
    return !rows.isEmpty();
  }

  Chart figure() {
    String title =
        "Cash by year of " + wording.titles().option(option) + ", before your accountant";
    String name = "after-tax-" + option.replace('+', '-');
    String svg = ChartStyle.svg(name, plot(), true, 280, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private CategoryPlot plot() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (AfterTaxRow row : rows) {
      data.addValue(brought(row), "added and salvage", year(row));
      data.addValue(row.left(), "left after loan and tax", year(row));
    }
    BarRenderer bars = ChartStyle.sideBySide(new BarRenderer(), 2);
    CategoryPlot plot = ChartStyle.months(data, bars, ChartStyle.numberAxis(currency, wording));
    plot.getDomainAxis().setLabel("end of year");
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static double brought(AfterTaxRow row) {
    return row.added() + row.salvage();
  }

  private String year(AfterTaxRow row) {
    return wording.plain(row.year());
  }

  private String alternative() {
    return "Bars of what each year of "
        + wording.titles().option(option)
        + " brings and what is left of it after loan and tax: "
        + rows.stream()
            .map(row -> "year " + year(row) + " " + wording.amount(row.left(), currency) + " left")
            .collect(Collectors.joining(", "))
        + ".";
  }

  private Chart.Grid table() {
    return new GridColumns<AfterTaxRow>(wording)
        .text("end of year", this::year)
        .number("added and salvage", 0, currency, AfterTaxChart::brought)
        .number("left after loan and tax", 0, currency, AfterTaxRow::left)
        .of(rows);
  }
}
