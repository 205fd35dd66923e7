package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** How many packages of each product were purge after changeovers, and what that cost. */
public final class PurgeWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public PurgeWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    return measure.measure() == Measure.PRODUCT_PURGE
        ? Optional.of(sentence(row, measure.names().get(0)))
        : Optional.empty();
  }

  private String sentence(SummaryRow purge, String product) {
    String title = Titles.inText(wording.titles().product(product));
    if (!(purge.mean() > 0)) {
      return "No package of " + title + " was purge";
    }
    String cost =
        find(Measure.PRODUCT_PURGE_COST.of(product))
            .map(row -> ", which cost " + wording.amount(row) + " against the price")
            .orElse("");
    return wording.amount(purge) + " of " + title + " were purge after changeovers" + cost;
  }
}
