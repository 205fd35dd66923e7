package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Optional;

/** What is left in the packages of products that are paid by it, and what that costs. */
public final class CleanlinessWords {
  private final List<SummaryRow> summary;
  private final Titles titles;
  private final Wording wording;

  /**
   * @param summary of one plant
   */
  public CleanlinessWords(List<SummaryRow> summary, Titles titles, Wording wording) {
    this.summary = summary;
    this.titles = titles;
    this.wording = wording;
  }

  /** One sentence or two for each such product; none where nothing was packed. */
  public List<String> sentences() {
    return summary.stream().flatMap(row -> told(row).stream()).toList();
  }

  private Optional<String> told(SummaryRow row) {
    return Measure.find(row.measure())
        .filter(match -> match.measure() == Measure.PRODUCT_SHARE_MEAN && row.mean() >= 0)
        .map(match -> told(row, match.names().get(0), match.names().get(1)));
  }

  private String told(SummaryRow share, String product, String component) {
    String spread =
        find(Measure.PRODUCT_SHARE_SD.of(product, component))
            .map(row -> ", from package to package give or take " + percent(row.mean()))
            .orElse("");
    String paid =
        find(Measure.PRODUCT_PRICE_FACTOR.of(product))
            .map(row -> "; it is paid at " + percent(row.mean()) + " of its price")
            .orElse("");
    String point =
        find(Measure.PRODUCT_POINT_COST.of(product))
            .map(row -> ". " + ofPoint(row, titles.component(component)))
            .orElse("");
    return Titles.capital(titles.product(product))
        + " holds "
        + percent(share.mean())
        + " "
        + Titles.inText(titles.component(component))
        + " on average"
        + spread
        + paid
        + point;
  }

  private String ofPoint(SummaryRow cost, String component) {
    return "One percentage point more "
        + Titles.inText(component)
        + " in each package would cost "
        + wording.amount(cost);
  }

  private Optional<SummaryRow> find(String measure) {
    return summary.stream()
        .filter(row -> row.measure().equals(measure) && !Double.isNaN(row.mean()))
        .findFirst();
  }

  private String percent(double share) {
    return wording.fixed(share, 1, "share") + " %";
  }
}
