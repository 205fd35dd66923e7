package hurdline.page;

import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.InputWords;
import hurdline.text.Wording;

/** What a report says of how well inputs are known. */
final class InputPart {
  private final InputWords words;
  private final Wording wording;

  InputPart(InputWords words, Wording wording) {
    this.words = words;
    this.wording = wording;
  }

  void write(Html html) {
    if (!words.isGiven() || words.told().isEmpty()) {
      words.sentences().forEach(html::paragraph);
      return;
    }
    words.plants().forEach(html::paragraph);
    words.next().ifPresent(html::paragraph);
    html.table("chance and inputs", table());
    html.paragraph(words.explanation());
  }

  private Chart.Grid table() {
    return new GridColumns<InputWords.Told>(wording)
        .text("", InputWords.Told::label)
        .text(
            "mean",
            of ->
                wording.number(
                    of.row().mean(), of.row().low95(), of.row().high95(), of.row().unit()))
        .text(
            "95 % interval",
            of ->
                wording.interval(
                    of.row().mean(), of.row().low95(), of.row().high95(), of.row().unit()))
        .text("unit", of -> wording.unit(of.row().unit()))
        .text("give or take by chance", of -> words.half(of.row().chance(), of.row()))
        .text("by the inputs", of -> words.byInputs(of.row()))
        .text("most by", of -> words.largest(of.row()).orElse(""))
        .of(words.told());
  }
}
