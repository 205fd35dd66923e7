package hurdline.page;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Header;
import hurdline.answer.PaybackRow;
import hurdline.chart.CompareFigures;
import hurdline.chart.Figure;
import hurdline.words.CompareWords;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** The parts of a comparison's report: what differs, who holds the line, and whether it pays. */
final class CompareSections {
  private final CompareAnswer answer;
  private final Wording wording;
  private final CompareFigures figures;
  private final CompareWords words;

  CompareSections(CompareAnswer answer, Wording wording, CompareFigures figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
    this.words = new CompareWords(answer, wording);
  }

  List<Section> all() {
    List<Figure> holders = figures.holders();
    List<Figure> cash = figures.cash();
    List<Figure> gains = figures.gains();
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        new Section(
            "differences", "What differs", true, html -> figures.differences().forEach(html::figure)),
        new Section(
            "holds",
            "Where the holder moves",
            !holders.isEmpty(),
            html -> holders.forEach(html::figure)),
        new Section(
            "gain", "What more of each thing brings", !gains.isEmpty(), html -> writeGains(html, gains)),
        new Section("pays", "Does it pay", !answer.payback().isEmpty(), this::writePayback),
        new Section("cash", "Cash over the years", !cash.isEmpty(), html -> writeCash(html, cash)),
        new Section("assumes", "What these figures assume", true, this::writeAssumptions),
        new Section("cautions", "Cautions", true, this::writeCautions));
  }

  private void writeAnswer(Html html) {
    html.raw("<div class=\"answer\">\n");
    words.sentences().forEach(html::paragraph);
    html.raw("</div>\n");
    Header header = answer.header();
    if (header.stopped()) {
      html.paragraph(
          "The comparison was stopped: "
              + header.replications()
              + " of "
              + header.replicationsAsked()
              + " replications are in this answer, and of what was asked besides only what was whole.");
    }
    html.table("what is compared", options());
    html.paragraph(
        "In brackets stand 95 % intervals; those of differences hold for all options together."
            + " Where such an interval covers zero, an option and the plant as it stands are not"
            + " told apart.");
  }

  private Figure.Grid options() {
    String currency = answer.header().currency();
    List<List<String>> rows = new ArrayList<>();
    for (CompareAnswer.Option option : answer.options()) {
      rows.add(
          List.of(
              option.name(),
              option.says(),
              wording.fixed(option.cost(), 0, currency),
              words.years(option),
              wording.fixed(option.salvage(), 0, currency)));
    }
    String of = currency.isEmpty() ? "" : " " + currency;
    return new Figure.Grid(
        List.of("option", "", "cost" + of, "life", "worth at its end" + of), rows);
  }

  private void writeGains(Html html, List<Figure> gains) {
    words.gains().forEach(sentence -> html.paragraph(sentence + "."));
    html.paragraph(
        "Each thing has a tenth more alone, so gains do not add up: once one holder is relieved, the"
            + " next holds. What the holders of the line suggest stands beside it in the last column;"
            + " stops, changes and want of bales hold too and are not in it.");
    gains.forEach(html::figure);
  }

  private void writePayback(Html html) {
    List<List<String>> rows = new ArrayList<>();
    for (PaybackRow row : answer.payback()) {
      rows.add(
          List.of(
              row.option() + ": " + quantity(row),
              words.amount(row),
              orNone(row.p05(), row.unit()),
              orNone(row.p50(), row.unit()),
              orNone(row.p95(), row.unit()),
              row.says()));
    }
    html.table(
        "what each option is worth",
        new Figure.Grid(
            List.of(
                "",
                "mean",
                "one life in 20 below",
                "half of the lives below",
                "one life in 20 above",
                "where there is none"),
            rows));
    html.paragraph(
        "A mean is given where every life has the figure. An internal rate is the one rate at which"
            + " a life is worth nothing; with payments that change their sign often there can be"
            + " several, and with a loss throughout there is none. The margin is before interest and"
            + " tax.");
  }

  private String quantity(PaybackRow row) {
    String word = row.quantity().word().replace('_', ' ');
    double within = answer.further().withinYr();
    return row.quantity() != PaybackRow.Quantity.CHANCE_OF_PAYBACK || Double.isNaN(within)
        ? word
        : word + " within " + wording.amount(within, "yr");
  }

  private String orNone(double value, String unit) {
    return Double.isNaN(value) ? "" : wording.amount(value, unit);
  }

  private void writeCash(Html html, List<Figure> cash) {
    html.paragraph(
        "Each line begins with what the option costs; where it crosses zero, the option has paid"
            + " back with interest.");
    cash.forEach(html::figure);
  }

  private void writeAssumptions(Html html) {
    html.table("settings", Settings.grid(answer.header(), wording));
    RunSections.writeNotes(html, answer.assumptions());
    html.paragraph(
        "Tables beside this page are in metric units, a t being 1000 kg, with all digits.");
  }

  private void writeCautions(Html html) {
    RunSections.writeNotes(html, answer.cautions());
    if (!answer.warnings().isEmpty()) {
      html.paragraph("The plant file gives warnings:").list(answer.warnings());
    }
    RunSections.writeNotes(html, Cautions.standing());
  }
}
