package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** How far and how long places were above the mass and the value that the file allows. */
public final class PlaceLimitWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public PlaceLimitWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    String place = measure.names().isEmpty() ? "" : measure.names().get(0);
    return switch (measure.measure()) {
      case YARD_PLACE_MASS_PEAK ->
          Optional.of(
              sentence(
                  row, place, Measure.YARD_PLACE_OVER_MASS, Measure.YARD_PLACE_TIMES_OVER_MASS));
      case YARD_PLACE_VALUE_PEAK ->
          Optional.of(
              sentence(
                  row, place, Measure.YARD_PLACE_OVER_VALUE, Measure.YARD_PLACE_TIMES_OVER_VALUE));
      default -> Optional.empty();
    };
  }

  private String sentence(SummaryRow peak, String place, Measure hours, Measure times) {
    return "Up to "
        + wording.amount(peak)
        + " lay in "
        + wording.titles().placeInText(place)
        + ", "
        + find(hours.of(place))
            .filter(row -> row.mean() > 0)
            .map(row -> above(row, times.of(place)))
            .orElse("never above the limit that the file gives");
  }

  private String above(SummaryRow hours, String times) {
    return "above the limit that the file gives in "
        + wording.amount(hours)
        + find(times)
            .map(row -> ", " + wording.fixed(row.mean(), 1, row.unit()) + " times")
            .orElse("")
        + "; the local fire code and the insurer decide";
  }
}
