package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** For how long each line was not run since too few came. */
public final class HandsWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public HandsWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    return measure.measure() == Measure.CREW_SHORT
        ? Optional.of(sentence(row, measure.names().get(0)))
        : Optional.empty();
  }

  private String sentence(SummaryRow missed, String line) {
    String title = Titles.inText(wording.titles().line(line));
    String missing =
        find(Measure.CREW_ABSENT.of(line))
            .map(row -> "; hands missing in its other shifts come to " + wording.amount(row))
            .orElse("");
    String said =
        missed.mean() > 0
            ? "Too few hands came for " + wording.amount(missed) + " of shifts of the " + title
            : "Enough hands came to every shift of the " + title;
    return said + missing;
  }
}
