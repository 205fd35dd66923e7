package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** What of each product lay beyond what its market takes at the price, and what that cost. */
public final class MarketWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public MarketWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    return measure.measure() == Measure.PRODUCT_BEYOND_MARKET
        ? Optional.of(sentence(row, measure.names().get(0)))
        : Optional.empty();
  }

  private String sentence(SummaryRow beyond, String product) {
    String title = Titles.inText(wording.titles().product(product));
    if (!(beyond.mean() > 0)) {
      return "The market took all " + title + " at the price";
    }
    String cost =
        find(Measure.PRODUCT_MARKET_COST.of(product))
            .map(row -> ", which cost " + wording.amount(row) + " against one price for all")
            .orElse("");
    return wording.amount(beyond)
        + " of "
        + title
        + " lay beyond what its market takes at the price"
        + cost;
  }
}
