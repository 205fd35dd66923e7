package hurdline.page;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow;
import hurdline.answer.TornadoRow;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.text.CompareWords;
import hurdline.text.GapWords;
import hurdline.text.RateWords;
import hurdline.text.Wording;
import hurdline.text.WorthWords;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of a comparison's report about money: what an option is worth, and on what that hangs.
 */
final class WorthSections {
  private final CompareAnswer answer;
  private final Wording wording;
  private final CompareCharts figures;
  private final CompareWords words;

  WorthSections(CompareAnswer answer, Wording wording, CompareCharts figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
    words = new CompareWords(answer, wording);
  }

  List<Section> all() {
    List<Chart> cash = figures.cash();
    List<Chart> tornado = figures.tornado();
    return List.of(
        new Section(
            "pays",
            "Does it pay",
            answer.payback().stream().anyMatch(this::isOfPurchase),
            this::writePayback),
        new Section(
            "after_tax",
            "After loan and tax, before your accountant",
            !answer.afterTax().isEmpty(),
            this::writeAfterTax),
        new Section("cash", "Cash over the years", !cash.isEmpty(), html -> writeCash(html, cash)),
        new Section(
            "sensitivity",
            "Sensitivity of the net present value",
            !tornado.isEmpty(),
            html -> writeTornado(html, tornado)),
        new Section(
            "even", "Break-even", !answer.further().breakEven().isEmpty(), this::writeBreakEven));
  }

  private boolean isOfPurchase(PaybackRow row) {
    return answer.options().stream()
        .anyMatch(option -> option.isPurchase() && option.name().equals(row.option()));
  }

  private void writePayback(Html html) {
    List<List<String>> rows = new ArrayList<>();
    for (PaybackRow row : answer.payback().stream().filter(this::isOfPurchase).toList()) {
      rows.add(
          List.of(
              wording.titles().option(row.option()) + ": " + quantity(row),
              words.amount(row),
              RateWords.percentile(row, row.p05(), wording),
              RateWords.percentile(row, row.p50(), wording),
              RateWords.percentile(row, row.p95(), wording),
              GapWords.of(row, wording)));
    }
    html.table(
        "what each option is worth",
        new Chart.Grid(
            List.of("", "mean", "5th percentile", "median", "95th percentile", "remarks"), rows));
    html.paragraph(
        "A mean is given where every service life has the figure. The internal rate is the discount rate at which"
            + " a service life has no net present value, on the side of the given rate where the sign of the net present value says it"
            + " must be; rates at or below -50 % a year are left out, and with a loss throughout there is none. What is"
            + " added to the margin is at the file's prices and not discounted. The margin is before interest and tax.");
    html.figures(figures.payback());
  }

  private void writeAfterTax(Html html) {
    html.paragraph(
        "For planning, before your accountant: each year of a purchase on average over its service lives, not discounted."
            + " What is left is the owner's, after what the lender and the tax office get; a tax below zero"
            + " lowers the tax on other income. How loan and tax are taken stands under the assumptions.");
    String currency = answer.header().currency();
    List<List<String>> rows = new ArrayList<>();
    for (AfterTaxRow row : answer.afterTax()) {
      List<String> cells = new ArrayList<>();
      cells.add(wording.titles().option(row.option()));
      cells.add(wording.plain(row.year()));
      for (double amount :
          new double[] {
            row.added(),
            row.salvage(),
            row.interest(),
            row.repayment(),
            row.depreciation(),
            row.tax(),
            row.left()
          }) {
        cells.add(wording.fixed(amount, 0, currency));
      }
      rows.add(cells);
    }
    html.table(
        "after loan and tax",
        new Chart.Grid(
            List.of(
                "",
                "end of year",
                "added " + currency,
                "salvage " + currency,
                "interest " + currency,
                "repayment " + currency,
                "depreciation " + currency,
                "tax " + currency,
                "left " + currency),
            rows));
    writeSwingAfterTax(html);
    writeEvenAfterTax(html);
  }

  private void writeSwingAfterTax(Html html) {
    List<List<String>> rows = new ArrayList<>();
    for (TornadoRow row : answer.further().tornado()) {
      if (!Double.isNaN(row.afterTax())) {
        WorthWords worth = new WorthWords(answer, wording);
        rows.add(
            List.of(
                wording.titles().option(row.option()) + ": " + worth.input(row.input()),
                worth.ends(row),
                worth.money(row.afterTaxAtLow()),
                worth.money(row.afterTaxAtHigh()),
                worth.money(row.swingAfterTax())));
      }
    }
    if (!rows.isEmpty()) {
      html.table(
          "sensitivity after loan and tax",
          new Chart.Grid(
              List.of("net present value after loan and tax", "ends", "at low", "at high", "swing"),
              rows));
    }
  }

  private void writeEvenAfterTax(Html html) {
    List<List<String>> rows = new ArrayList<>();
    for (BreakEvenRow row : answer.further().breakEven()) {
      if (!Double.isNaN(row.netPresentValueAfterTax())) {
        WorthWords worth = new WorthWords(answer, wording);
        rows.add(
            List.of(
                wording.titles().option(row.option()) + ": " + worth.input(row.input()),
                row.unit().equals("x") ? "times what the file says" : row.unit(),
                Double.isNaN(row.valueAfterTax())
                    ? "none that was found"
                    : worth.four(row.valueAfterTax())));
      }
    }
    if (!rows.isEmpty()) {
      html.table(
          "break-even after loan and tax",
          new Chart.Grid(List.of("after loan and tax", "unit", "break-even at"), rows));
    }
  }

  private String quantity(PaybackRow row) {
    String word = row.quantity().word().replace('_', ' ');
    double within = answer.further().withinYr();
    return row.quantity() != PaybackRow.Quantity.CHANCE_OF_PAYBACK || Double.isNaN(within)
        ? word
        : word + " within " + wording.plain(within) + " yr";
  }

  private void writeCash(Html html, List<Chart> cash) {
    html.paragraph(
        "Each line begins with what the option costs; where it crosses zero, the option has paid"
            + " back with interest.");
    html.figures(cash);
  }

  private void writeTornado(Html html, List<Chart> tornado) {
    html.paragraph(
        "One input at a time is put to either end, with and without the option alike, on the same random draws. Long"
            + " bars are figures worth knowing better before money is spent. In brackets, and at the end"
            + " of each bar, the 95 % interval of how far that end moves the worth, life by life.");
    html.figures(tornado);
  }

  private void writeBreakEven(Html html) {
    WorthWords worth = new WorthWords(answer, wording);
    List<List<String>> rows = new ArrayList<>();
    for (BreakEvenRow row : answer.further().breakEven()) {
      String unit = row.unit().equals("x") ? "times what the file says" : row.unit();
      rows.add(
          List.of(
              wording.titles().option(row.option()) + ": " + worth.input(row.input()),
              "`" + row.input() + "`",
              unit,
              wording.plain(row.inFile()),
              row.found() ? worth.atZero(row) : "",
              worth.four(row.from()) + " to " + worth.four(row.to()),
              row.found()
                  ? ""
                  : row.netPresentValue() > 0 ? "worth its price throughout" : "loses throughout"));
    }
    html.table(
        "break-even of each option",
        new Chart.Grid(
            List.of(
                "",
                "key",
                "unit",
                "in the file",
                "break-even at",
                "looked at",
                "where there is none"),
            rows));
    html.paragraph(
        "There the mean net present value is zero and it makes no difference, on average, whether the"
            + " option is bought; single lives still win or lose. In brackets its 95 % interval: that of"
            + " the worth there, over how steeply the worth goes with the key.");
  }
}
