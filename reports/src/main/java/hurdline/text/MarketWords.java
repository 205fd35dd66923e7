package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** What of each product lay beyond what its market takes at the price, and what that cost. */
public final class MarketWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public MarketWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each product with such a market. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow row) {
    return Measure.find(row.measure())
        .filter(match -> match.measure() == Measure.PRODUCT_BEYOND_MARKET)
        .map(match -> sentence(row, match.names().get(0)));
  }

  private String sentence(SummaryRow beyond, String product) {
    String title = Titles.inText(wording.titles().product(product));
    if (!(beyond.mean() > 0)) {
      return "The market took all " + title + " at the price";
    }
    String cost =
        summary.stream()
            .filter(row -> row.measure().equals(Measure.PRODUCT_MARKET_COST.of(product)))
            .findFirst()
            .map(row -> ", which cost " + wording.amount(row) + " against one price for all")
            .orElse("");
    return wording.amount(beyond)
        + " of "
        + title
        + " lay beyond what its market takes at the price"
        + cost;
  }
}
