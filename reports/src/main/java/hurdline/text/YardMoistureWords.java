package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** What the moisture of bales has become in each place where it changes. */
public final class YardMoistureWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public YardMoistureWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow damp, MeasureName measure) {
    if (measure.measure() != Measure.YARD_PLACE_DAMP || Double.isNaN(damp.mean())) {
      return Optional.empty();
    }
    String place = measure.names().get(0);
    return find(Measure.YARD_PLACE_MOISTURE_MEAN.of(place))
        .map(moisture -> sentence(place, moisture, damp));
  }

  private String sentence(String place, SummaryRow moisture, SummaryRow damp) {
    return "Bales set on the table from "
        + wording.titles().placeInText(place)
        + " had "
        + wording.amount(moisture)
        + " moisture, "
        + (damp.mean() > 0 ? wording.amount(damp) + " of them damp" : "none of them damp");
  }
}
