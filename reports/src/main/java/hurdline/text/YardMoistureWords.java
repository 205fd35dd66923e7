package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** What the moisture of bales has become in each place where it changes. */
public final class YardMoistureWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public YardMoistureWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each place from which bales were set on the table. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow damp) {
    return Measure.find(damp.measure())
        .filter(match -> match.measure() == Measure.YARD_PLACE_DAMP)
        .filter(match -> !Double.isNaN(damp.mean()))
        .flatMap(match -> moisture(match.names().get(0)).map(row -> sentence(row, damp)));
  }

  private Optional<SummaryRow> moisture(String place) {
    return summary.stream()
        .filter(row -> row.measure().equals(Measure.YARD_PLACE_MOISTURE_MEAN.of(place)))
        .findFirst();
  }

  private String sentence(SummaryRow moisture, SummaryRow damp) {
    String place =
        Measure.find(moisture.measure()).map(match -> match.names().get(0)).orElseThrow();
    return "Bales set on the table from "
        + wording.titles().placeInText(place)
        + " had "
        + wording.amount(moisture)
        + " moisture, "
        + (damp.mean() > 0 ? wording.amount(damp) + " of them damp" : "none of them damp");
  }
}
