package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** How many stacks were covered in each place, and what covers cost in all. */
public final class CoverWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public CoverWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each place with covers, and one for what all cost. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow row) {
    return Measure.find(row.measure())
        .flatMap(
            match ->
                switch (match.measure()) {
                  case YARD_PLACE_COVERED -> Optional.of(place(row, match.names().get(0)));
                  case MONEY_COVERS ->
                      Optional.of(
                          "Covers of stacks cost " + wording.amount(row) + ", hands included");
                  default -> Optional.empty();
                });
  }

  private String place(SummaryRow stacks, String place) {
    return wording.amount(stacks)
        + " stacks were covered in "
        + wording.titles().placeInText(place)
        + summary.stream()
            .filter(row -> row.measure().equals(Measure.YARD_PLACE_COVER_HOURS.of(place)))
            .findFirst()
            .map(hours -> ", by hands for " + wording.amount(hours))
            .orElse("");
  }
}
