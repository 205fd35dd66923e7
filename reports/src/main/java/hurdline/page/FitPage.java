package hurdline.page;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.problem.LocatedProblem;
import hurdline.text.FitLawWords;
import hurdline.text.FitWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * The page of a fit: what was found, figures before and after, each law beside its records, and
 * what became of the rows.
 */
public final class FitPage {
  /** Charts that a printed report has; two fill a sheet. */
  private static final int SHOWN = 4;

  private final FitAnswer answer;
  private final FitWords words;
  private final List<Chart> charts;
  private final Wording wording;

  private FitPage(FitAnswer answer, Wording wording, List<Chart> charts) {
    this.answer = answer;
    this.wording = wording;
    this.charts = charts;
    words = new FitWords(answer, wording);
  }

  public static String html(FitAnswer answer, Wording wording, List<Chart> charts) {
    FitPage page = new FitPage(answer, wording, charts);
    String subtitle =
        "Figures from the records in "
            + answer.records()
            + ", beside those of "
            + answer.header().file()
            + ".";
    return ReportPage.html(
        answer.header().plant(), "figures from records", subtitle, page.sections());
  }

  private List<Section> sections() {
    return List.of(
        new Section("answer", "What the records say", true, this::writeAnswer),
        new Section("figures", "Before and after", true, this::writeFigures),
        new Section("laws", "Records beside the law", !charts.isEmpty(), this::writeLaws),
        new Section(
            "checks",
            "What no single key holds",
            !answer.checks().isEmpty(),
            html -> html.table("What no single key holds", grid(words.checks()))),
        new Section(
            "notes",
            "What is to be known of single figures",
            !words.notes().isEmpty(),
            html -> html.list(words.notes())),
        new Section("rows", "What became of the rows", true, this::writeRows),
        new Section("cautions", "Cautions", true, html -> html.notes(Cautions.standing())),
        ProofSection.section(wording));
  }

  private void writeAnswer(Html html) {
    html.answer(words.headline());
    if (!answer.warnings().isEmpty()) {
      html.paragraph("Look at these first:")
          .list(answer.warnings().stream().map(LocatedProblem::text).toList());
    }
    FitWords.notInRecords().forEach(html::paragraph);
  }

  private void writeFigures(Html html) {
    html.paragraph(
        "Each figure as the file has it and as the records have it: means of what is drawn, with the 95 % interval of the mean.");
    html.table("Before and after", grid(words.figures()));
    List<List<String>> written = new ArrayList<>();
    for (FitRow row : answer.figures()) {
      if (row.isFitted()) {
        written.add(
            List.of(
                Titles.capital(words.label(row.key())),
                shortened(row.said()),
                shortened(row.fitted())));
      }
    }
    html.paragraph("As the plant file has them, and as fitted.yaml has them:");
    html.table("Values", new Chart.Grid(List.of("figure", "file", "fitted"), written));
  }

  /** All as a table, the worst as charts; the others fold up on a screen and stay off paper. */
  private void writeLaws(Html html) {
    html.paragraph(
        "Each law beside the amounts that it was fitted to, the worst fit first. The p-value is the share of samples drawn from"
            + " the law that lie as far from it as the records do; the widest gap is between the share of amounts recorded and that by the law."
            + " points.csv has every amount.");
    html.table("Laws", grid(new FitLawWords(answer, wording).laws()));
    html.figures(charts.subList(0, Math.min(SHOWN, charts.size())));
    if (charts.size() > SHOWN) {
      html.raw("<details>\n").element("summary", "The other " + (charts.size() - SHOWN));
      html.figures(charts.subList(SHOWN, charts.size())).raw("</details>\n");
    }
  }

  /** Recorded amounts one by one stand in fitted.yaml. */
  private static String shortened(String value) {
    int amounts = value.split(",").length;
    return value.startsWith("{observed") && amounts > 3
        ? "observed, " + amounts + " amounts"
        : value;
  }

  private void writeRows(Html html) {
    html.paragraph(
        "Every row is used, joined to another or set aside; account.csv has a line for each.");
    html.table("Rows", grid(words.files()));
    if (!answer.reasons().isEmpty()) {
      html.table("Reasons", grid(words.reasons()));
    }
  }

  private static Chart.Grid grid(List<List<String>> rows) {
    return new Chart.Grid(rows.get(0), rows.subList(1, rows.size()));
  }
}
