package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.Optional;

/** What is left in the packages of products that are paid by it, and what that costs. */
public final class CleanlinessWords extends RowSentences {
  private final Titles titles;

  /**
   * @param summary of one plant
   */
  public CleanlinessWords(List<SummaryRow> summary, Titles titles, Wording wording) {
    super(summary, wording);
    this.titles = titles;
  }

  /** None where nothing was packed. */
  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    return measure.measure() == Measure.PRODUCT_SHARE_MEAN && row.mean() >= 0
        ? Optional.of(told(row, measure.names().get(0), measure.names().get(1)))
        : Optional.empty();
  }

  private String told(SummaryRow share, String product, String component) {
    String spread =
        known(Measure.PRODUCT_SHARE_SD.of(product, component))
            .map(row -> ", from package to package give or take " + percent(row.mean()))
            .orElse("");
    String paid =
        known(Measure.PRODUCT_PRICE_FACTOR.of(product))
            .map(row -> "; it is paid at " + percent(row.mean()) + " of its price")
            .orElse("");
    String point =
        known(Measure.PRODUCT_POINT_COST.of(product))
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

  private Optional<SummaryRow> known(String measure) {
    return find(measure).filter(row -> !Double.isNaN(row.mean()));
  }

  private String percent(double share) {
    return wording.fixed(share, 1, "share") + " %";
  }
}
