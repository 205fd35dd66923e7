package hurdline.page;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow;
import hurdline.answer.TornadoRow;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.CompareWords;
import hurdline.text.GapWords;
import hurdline.text.RateWords;
import hurdline.text.Wording;
import hurdline.text.WorthWords;
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
    html.table(
        "what each option is worth",
        new GridColumns<PaybackRow>(wording)
            .text("", row -> wording.titles().option(row.option()) + ": " + quantity(row))
            .text("mean", words::amount)
            .text("5th percentile", row -> RateWords.percentile(row, row.p05(), wording))
            .text("median", row -> RateWords.percentile(row, row.p50(), wording))
            .text("95th percentile", row -> RateWords.percentile(row, row.p95(), wording))
            .text("remarks", row -> GapWords.of(row, wording))
            .of(answer.payback().stream().filter(this::isOfPurchase).toList()));
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
    html.table(
        "after loan and tax",
        new GridColumns<AfterTaxRow>(wording)
            .text("", row -> wording.titles().option(row.option()))
            .text("end of year", row -> wording.plain(row.year()))
            .number("added", 0, currency, AfterTaxRow::added)
            .number("salvage", 0, currency, AfterTaxRow::salvage)
            .number("interest", 0, currency, AfterTaxRow::interest)
            .number("repayment", 0, currency, AfterTaxRow::repayment)
            .number("depreciation", 0, currency, AfterTaxRow::depreciation)
            .number("tax", 0, currency, AfterTaxRow::tax)
            .number("left", 0, currency, AfterTaxRow::left)
            .of(answer.afterTax()));
    html.figures(figures.afterTax());
    writeSwingAfterTax(html);
    writeEvenAfterTax(html);
  }

  private void writeSwingAfterTax(Html html) {
    WorthWords worth = new WorthWords(answer, wording);
    List<TornadoRow> rows =
        answer.further().tornado().stream().filter(row -> !Double.isNaN(row.afterTax())).toList();
    if (!rows.isEmpty()) {
      html.table(
          "sensitivity after loan and tax",
          new GridColumns<TornadoRow>(wording)
              .text(
                  "net present value after loan and tax",
                  row -> wording.titles().option(row.option()) + ": " + worth.input(row.input()))
              .text("ends", worth::ends)
              .text("at low", row -> worth.money(row.afterTaxAtLow()))
              .text("at high", row -> worth.money(row.afterTaxAtHigh()))
              .text("swing", row -> worth.money(row.swingAfterTax()))
              .of(rows));
    }
  }

  private void writeEvenAfterTax(Html html) {
    WorthWords worth = new WorthWords(answer, wording);
    List<BreakEvenRow> rows =
        answer.further().breakEven().stream()
            .filter(row -> !Double.isNaN(row.netPresentValueAfterTax()))
            .toList();
    if (!rows.isEmpty()) {
      html.table(
          "break-even after loan and tax",
          new GridColumns<BreakEvenRow>(wording)
              .text(
                  "after loan and tax",
                  row -> wording.titles().option(row.option()) + ": " + worth.input(row.input()))
              .text("unit", WorthSections::unit)
              .text(
                  "break-even at",
                  row ->
                      Double.isNaN(row.valueAfterTax())
                          ? "none that was found"
                          : worth.four(row.valueAfterTax()))
              .of(rows));
    }
  }

  private static String unit(BreakEvenRow row) {
    return row.unit().equals("x") ? "times what the file says" : row.unit();
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
    html.table(
        "break-even of each option",
        new GridColumns<BreakEvenRow>(wording)
            .text(
                "", row -> wording.titles().option(row.option()) + ": " + worth.input(row.input()))
            .text("key", row -> "`" + row.input() + "`")
            .text("unit", WorthSections::unit)
            .text("in the file", row -> wording.plain(row.inFile()))
            .text("break-even at", row -> row.found() ? worth.atZero(row) : "")
            .text("looked at", row -> worth.four(row.from()) + " to " + worth.four(row.to()))
            .text("where there is none", WorthSections::withoutBreakEven)
            .of(answer.further().breakEven()));
    html.paragraph(
        "There the mean net present value is zero and it makes no difference, on average, whether the"
            + " option is bought; single lives still win or lose. In brackets its 95 % interval: that of"
            + " the worth there, over how steeply the worth goes with the key.");
  }

  private static String withoutBreakEven(BreakEvenRow row) {
    return row.found()
        ? ""
        : row.netPresentValue() > 0 ? "worth its price throughout" : "loses throughout";
  }
}
