package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** Sentences on rows of a summary: who extends this says which measures it has words for. */
public abstract class RowSentences {
  final Wording wording;
  private final List<SummaryRow> summary;

  /**
   * @param summary of one plant
   */
  RowSentences(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** Without full stops, in the order of the rows. */
  public final List<String> sentences() {
    return summary.stream()
        .flatMap(
            row -> Measure.find(row.measure()).flatMap(measure -> sentence(row, measure)).stream())
        .toList();
  }

  abstract Optional<String> sentence(SummaryRow row, MeasureName measure);

  final Optional<SummaryRow> find(String measure) {
    return summary.stream().filter(row -> row.measure().equals(measure)).findFirst();
  }
}
