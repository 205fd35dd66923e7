package hurdline.chart.compare;

import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.text.Wording;
import hurdline.unit.Counted;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.YIntervalSeries;

/** What an option has brought in by each year of its life, discounted, with its band. */
final class CashChart {
  private final String option;
  private final String currency;
  private final List<CashRow> rows;
  private final Wording wording;

  CashChart(CompareAnswer answer, String option, Wording wording) {
    this.option = option;
    this.wording = wording;
    currency = answer.header().currency();
    rows = answer.cash().stream().filter(row -> row.option().equals(option)).toList();
  }

  Chart figure() {
    String title = "Cash over the life of " + wording.titles().option(option) + ", discounted";
    String name = "cash-" + option.replace('+', '-');
    String svg = ChartStyle.svg(name, plot(), true, 300, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries sums = new YIntervalSeries("mean, and 5th to 95th percentile of service lives");
    rows.forEach(row -> sums.add(row.year(), row.mean(), row.p05(), row.p95()));
    NumberAxis years = ChartStyle.numberAxis("years since it was paid", wording);
    years.setRange(0, rows.get(rows.size() - 1).year());
    years.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    XYPlot plot =
        ChartStyle.band(
            sums, years, ChartStyle.numberAxis(currency + ", running sum", wording), false);
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private String alternative() {
    CashRow last = rows.get(rows.size() - 1);
    return "The discounted running sum of "
        + wording.titles().option(option)
        + " begins at "
        + wording.amount(rows.get(0).mean(), currency)
        + " and ends after "
        + Counted.of(last.year(), years(last), "year")
        + " at "
        + wording.amount(last.mean(), currency)
        + ", 5th to 95th percentile "
        + wording.amount(last.p05(), currency)
        + " and "
        + wording.amount(last.p95(), currency)
        + ".";
  }

  private String years(CashRow row) {
    return wording.fixed(row.year(), row.year() == Math.rint(row.year()) ? 0 : 1, "yr");
  }

  private Chart.Grid table() {
    return new GridColumns<CashRow>(wording)
        .text("year", this::years)
        .text("mean " + currency, row -> money(row, row.mean()))
        .text("one life in 20 below", row -> money(row, row.p05()))
        .text("median life", row -> money(row, row.p50()))
        .text("one life in 20 above", row -> money(row, row.p95()))
        .of(rows);
  }

  private String money(CashRow row, double value) {
    return wording.number(value, row.p05(), row.p95(), currency);
  }
}
