package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** How many stacks were covered in each place, and what covers cost in all. */
public final class CoverWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public CoverWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    return switch (measure.measure()) {
      case YARD_PLACE_COVERED -> Optional.of(place(row, measure.names().get(0)));
      case MONEY_COVERS ->
          Optional.of("Covers of stacks cost " + wording.amount(row) + ", hands included");
      default -> Optional.empty();
    };
  }

  private String place(SummaryRow stacks, String place) {
    return wording.amount(stacks)
        + " stacks were covered in "
        + wording.titles().placeInText(place)
        + find(Measure.YARD_PLACE_COVER_HOURS.of(place))
            .map(hours -> ", by hands for " + wording.amount(hours))
            .orElse("");
  }
}
