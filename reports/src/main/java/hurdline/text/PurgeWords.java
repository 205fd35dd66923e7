package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** How many packages of each product were purge after changeovers, and what that cost. */
public final class PurgeWords {
  private final List<SummaryRow> summary;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public PurgeWords(List<SummaryRow> summary, Wording wording) {
    this.summary = summary;
    this.wording = wording;
  }

  /** One sentence for each product with purge packages. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> sentence(row).stream()).toList();
  }

  private Optional<String> sentence(SummaryRow row) {
    return Measure.find(row.measure())
        .filter(match -> match.measure() == Measure.PRODUCT_PURGE)
        .map(match -> sentence(row, match.names().get(0)));
  }

  private String sentence(SummaryRow purge, String product) {
    String title = Titles.inText(wording.titles().product(product));
    if (!(purge.mean() > 0)) {
      return "No package of " + title + " was purge";
    }
    String cost =
        summary.stream()
            .filter(row -> row.measure().equals(Measure.PRODUCT_PURGE_COST.of(product)))
            .findFirst()
            .map(row -> ", which cost " + wording.amount(row) + " against the price")
            .orElse("");
    return wording.amount(purge) + " of " + title + " were purge after changeovers" + cost;
  }
}
