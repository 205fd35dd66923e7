package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** For how long each line was not run since too few came. */
public final class HandsWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public HandsWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each line. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow row) {
    return Measure.find(row.measure())
        .filter(match -> match.measure() == Measure.CREW_SHORT)
        .map(match -> sentence(row, match.names().get(0)));
  }

  private String sentence(SummaryRow missed, String line) {
    String title = Titles.inText(wording.titles().line(line));
    String missing =
        summary.stream()
            .filter(row -> row.measure().equals(Measure.CREW_ABSENT.of(line)))
            .findFirst()
            .map(row -> "; hands missing in its other shifts come to " + wording.amount(row))
            .orElse("");
    String said =
        missed.mean() > 0
            ? "Too few hands came for " + wording.amount(missed) + " of shifts of the " + title
            : "Enough hands came to every shift of the " + title;
    return said + missing;
  }
}
