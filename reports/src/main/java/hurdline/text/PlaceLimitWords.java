package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** How far and how long places were above the mass and the value that the file allows. */
public final class PlaceLimitWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public PlaceLimitWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each limit of a place. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow row) {
    return Measure.find(row.measure())
        .flatMap(
            match -> {
              String place = match.names().isEmpty() ? "" : match.names().get(0);
              return switch (match.measure()) {
                case YARD_PLACE_MASS_PEAK ->
                    Optional.of(
                        sentence(
                            row,
                            place,
                            Measure.YARD_PLACE_OVER_MASS,
                            Measure.YARD_PLACE_TIMES_OVER_MASS));
                case YARD_PLACE_VALUE_PEAK ->
                    Optional.of(
                        sentence(
                            row,
                            place,
                            Measure.YARD_PLACE_OVER_VALUE,
                            Measure.YARD_PLACE_TIMES_OVER_VALUE));
                default -> Optional.empty();
              };
            });
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
        + find(times).map(row -> ", " + wording.amount(row) + " times").orElse("")
        + "; the local fire code and the insurer decide";
  }

  private Optional<SummaryRow> find(String measure) {
    return summary.stream().filter(row -> row.measure().equals(measure)).findFirst();
  }
}
