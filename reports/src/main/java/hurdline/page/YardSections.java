package hurdline.page;

import hurdline.answer.Header;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.yard.YardCharts;
import hurdline.text.DrawnCropWords;
import hurdline.text.InputWords;
import hurdline.text.Wording;
import hurdline.text.YardHeadline;
import hurdline.text.YardTable;
import hurdline.text.YardWords;
import hurdline.text.notes.Notes;
import java.util.ArrayList;
import java.util.List;

/** The parts of a report on a yard: how large, what each size does, and through the year. */
final class YardSections {
  private final YardAnswer answer;
  private final Wording wording;
  private final YardCharts figures;
  private final YardWords words;

  YardSections(YardAnswer answer, Wording wording, YardCharts figures) {
    this.figures = figures;
    this.answer = answer;
    this.wording = wording;
    this.words = new YardWords(answer, wording);
  }

  List<Section> all() {
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        Section.of("overflow", "How large it must be", figures.overflow()),
        new Section("peaks", "If it had no limit", true, html -> writePeaks(html, figures.peaks())),
        Section.of("effects", "What each size holds back and loses", figures.effects()),
        Section.of("money", "What each size costs", figures.money()),
        Section.of("gain", "What shortens the peak", figures.gains()),
        Section.of("acres", "How much land can be contracted", figures.acres()),
        new Section("ground", "The ground", true, this::writeGround),
        new Section("levels", "Through the year", true, this::writeLevels),
        Assumptions.section(answer.header(), wording, answer.assumptions()),
        Cautions.section(answer, wording, answer.cautions()));
  }

  private void writeAnswer(Html html) {
    html.answer(new YardHeadline(answer, wording).sentences());
    Header header = answer.header();
    if (header.stopped()) {
      html.paragraph(
          "It was stopped early: "
              + header.replications()
              + " of "
              + header.replicationsAsked()
              + " replications and "
              + answer.capacity().size()
              + (answer.capacity().size() == 1 ? " size" : " sizes")
              + " of the yard are in this answer.");
    }
    html.wholeTable("the answer", YardTable.of(answer, wording));
    html.paragraph(words.legend());
    words.sentences().forEach(html::paragraph);
    html.table("sizes", sizes());
    html.paragraph(
        "Without limit the size is what the peak exceeds in few enough seasons. By the full-yard rule"
            + " it is larger by what is promised room while it is still on the road.");
    new DrawnCropPart(DrawnCropWords.of(answer, wording), wording).write(html);
    new InputPart(new InputWords(answer.inputs(), answer.outline(), wording), wording).write(html);
  }

  private Chart.Grid sizes() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("smallest by the full-yard rule", answer.byRule()));
    rows.add(row("smallest for the yard without limit", answer.withoutLimit()));
    return new Chart.Grid(
        List.of(
            "",
            answer.asked().unit(),
            "ground " + wording.unit("m2"),
            "overflowed in % of seasons",
            "95 % interval"),
        rows);
  }

  private List<String> row(String what, YardAnswer.Size size) {
    if (Double.isNaN(size.bales())) {
      return List.of(what, "not found", "", "", "");
    }
    return List.of(
        what,
        words.sized(size),
        Double.isNaN(size.areaM2()) ? "not given" : wording.roughly(size.areaM2(), "m2"),
        wording.fixed(size.chance(), 0, "share"),
        wording.fixed(size.chanceLow95(), 0, "share")
            + " to "
            + wording.fixed(size.chanceHigh95(), 0, "share"));
  }

  private void writePeaks(Html html, List<Chart> peaks) {
    html.paragraph(
        Titles.capital(wording.titles().placeInText(answer.asked().place()))
            + " takes whatever comes, so that nothing ever waits: this is what the seasons would bring in at once.");
    html.figures(peaks);
  }

  private void writeGround(Html html) {
    if (figures.grounds().isEmpty()) {
      html.paragraph(
          "The file does not say how bales are stacked, so no ground can be given; \"stack\" under a place and the"
              + " size of a bale under its crop do.");
    } else {
      html.paragraph(
          "The largest stack and the lanes are what the file says, to be taken from the local fire code and the"
              + " insurer; this report has no figure of its own for them. The ground is for stacks and lanes alone,"
              + " without roads, turning room and distance to buildings and property lines.");
      html.figures(figures.grounds());
    }
    html.element("h3", "Questions for the fire official");
    html.paragraph(
        "Model fire codes let only so much stand in one block. Before anything is built, ask:");
    html.notes(new Notes(answer.header(), wording).of(answer.questions()));
  }

  private void writeLevels(Html html) {
    html.figures(figures.levels());
    Chart.Grid places = new YardPlaces(answer, wording).grid();
    if (!places.rows().isEmpty()) {
      html.table("bales by place, the plant as the file has it", places);
    }
  }
}
