package hurdline.page;

import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest;
import hurdline.answer.SeasonRest.Age;
import hurdline.answer.SeasonRest.Finish;
import hurdline.answer.SeasonRest.OpenOrder;
import hurdline.answer.SeasonRest.Quantity;
import hurdline.answer.SeasonRest.Stock;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.SeasonRestWords;
import hurdline.text.Wording;

/** What has been of a season, and when it will be done. */
final class RestSection {
  private final SeasonRest rest;
  private final SeasonRestWords words;
  private final Wording wording;

  RestSection(RunAnswer answer, Wording wording) {
    rest = answer.rest();
    words = new SeasonRestWords(answer, wording);
    this.wording = wording;
  }

  Section section() {
    return new Section("rest", "The rest of the season", rest.isGiven(), this::write);
  }

  private void write(Html html) {
    html.paragraph(
        "What was before "
            + wording.date(rest.asOf())
            + " is taken from the records in "
            + rest.records()
            + " as it was. From then on the season is simulated, from the stock, the ages of stops"
            + " and the open orders of that day.");
    words.headline().forEach(html::paragraph);
    words.notes().forEach(html::paragraph);
    html.table("when each line is done", finishes());
    html.paragraph(
        "Done is a replication in which nothing of the crop is left when the line's last campaign"
            + " ends; the date is that of its last worked shift. The chance has its exact interval"
            + " (Clopper and Pearson). A shift is needed or helps where chances differ by the exact"
            + " sign test at 5 %, on the same random numbers.");
    html.table("fed and made over the whole season", quantities());
    html.table("stock on that morning", stock());
    if (!rest.orders().isEmpty()) {
      html.table("orders on that morning", orders());
    }
    if (!rest.ages().isEmpty()) {
      html.table("since the last stop of each kind", ages());
    }
  }

  private Chart.Grid finishes() {
    return new GridColumns<Finish>(wording)
        .text("line", of -> wording.titles().line(of.line()))
        .text("hours", words::hours)
        .text("by", of -> wording.date(of.by()))
        .text("done in % of replications", this::chance)
        .text("done on, median", of -> words.done(of.doneP50()))
        .text("95th percentile", of -> words.done(of.doneP95()))
        .text("left, mean", of -> wording.rough(of.leftMean(), of.unit()))
        .text("left, 95th percentile", of -> wording.rough(of.leftP95(), of.unit()))
        .of(rest.finishes());
  }

  private String chance(Finish of) {
    return wording.cell((double) of.finished() / of.years(), of.low95(), of.high95(), "share");
  }

  private Chart.Grid quantities() {
    return new GridColumns<Quantity>(wording)
        .text("", words::label)
        .text("unit", of -> wording.unit(of.unit()))
        .text("until then", of -> amount(of, of.soFar()))
        .text("the rest, mean", of -> amount(of, of.rest()))
        .text("whole season, mean", of -> amount(of, of.whole()))
        .text("5th percentile", of -> amount(of, of.p05()))
        .text("95th percentile", of -> amount(of, of.p95()))
        .of(rest.quantities());
  }

  private String amount(Quantity of, double value) {
    return wording.fixed(value, of.unit().equals("t") ? 1 : 0, of.unit());
  }

  private Chart.Grid stock() {
    return new GridColumns<Stock>(wording)
        .text("crop", of -> wording.titles().crop(of.crop()))
        .text("counted on", of -> wording.date(of.counted()))
        .text("count", of -> wording.count(of.count()))
        .text("came since", of -> wording.count(of.came()))
        .text("fed since", of -> wording.count(of.fed()))
        .text("on hand", of -> wording.count(of.onHand()) + " " + of.unit())
        .of(rest.stock());
  }

  private Chart.Grid orders() {
    return new GridColumns<OpenOrder>(wording)
        .text("order", of -> wording.titles().product(of.product()))
        .text("due", of -> wording.date(of.due()))
        .number("ordered", 1, "t", OpenOrder::massT)
        .number("filled until then", 1, "t", OpenOrder::madeT)
        .number("open", 1, "t", OpenOrder::openT)
        .of(rest.orders());
  }

  private Chart.Grid ages() {
    return new GridColumns<Age>(wording)
        .text("stop", words::stop)
        .text("counted", Age::counted)
        .text("since the last one", words::age)
        .of(rest.ages());
  }
}
