package hurdline.text;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What loads of each crop were paid over its price, which were rejected, and what terms cost. */
public final class PurchaseWords extends RowSentences {
  /**
   * @param summary of one plant
   */
  public PurchaseWords(List<SummaryRow> summary, Wording wording) {
    super(summary, wording);
  }

  @Override
  Optional<String> sentence(SummaryRow row, MeasureName measure) {
    String crop = measure.names().isEmpty() ? "" : measure.names().get(0);
    return switch (measure.measure()) {
      case MASS_PRICE_FACTOR -> factor(row, title(crop));
      case INTAKE_REJECTED -> Optional.of(rejected(row, crop));
      case YARD_KEPT_APART -> Optional.of(kept(row, title(crop)));
      case INTAKE_FAILED -> Optional.of(failed(row, crop));
      case MONEY_CROP_AREA -> Optional.of(area(row, title(crop)));
      case MONEY_ADVANCE -> Optional.of(advance(row, crop));
      case MONEY_ADVANCE_INTEREST ->
          Optional.of(
              "Until they were earned, advances on "
                  + title(crop)
                  + " cost "
                  + wording.amount(row)
                  + " interest, which is not in the margin");
      default -> Optional.empty();
    };
  }

  private String title(String crop) {
    return Titles.inText(wording.titles().crop(crop));
  }

  private Optional<String> factor(SummaryRow row, String crop) {
    return Double.isNaN(row.mean())
        ? Optional.empty()
        : Optional.of(
            "By its grades "
                + crop
                + " was paid "
                + wording.amount(row)
                + " of what its price alone would come to");
  }

  private String kept(SummaryRow row, String crop) {
    return "Up to " + wording.amount(row) + " of " + crop + " were kept apart until their release";
  }

  private String failed(SummaryRow row, String crop) {
    if (!(row.mean() > 0)) {
      return "No load of " + title(crop) + " failed its test";
    }
    return wording.amount(row)
        + " of "
        + title(crop)
        + find(Measure.MASS_FAILED.of(crop))
            .map(mass -> ", " + wording.amount(mass) + ",")
            .orElse("")
        + " failed their test and were not paid for"
        + find(Measure.MONEY_CROP_FAILED.of(crop))
            .filter(cost -> cost.mean() > 0)
            .map(cost -> "; to be rid of them cost " + wording.amount(cost))
            .orElse("");
  }

  private String rejected(SummaryRow row, String crop) {
    if (!(row.mean() > 0)) {
      return "No load of " + title(crop) + " was rejected at weigh-in";
    }
    return wording.amount(row)
        + " of "
        + title(crop)
        + find(Measure.MASS_REJECTED.of(crop))
            .map(mass -> ", " + wording.amount(mass) + ",")
            .orElse("")
        + " were rejected at weigh-in";
  }

  private String area(SummaryRow row, String crop) {
    return wording.amount(row) + " of what " + crop + " cost was paid for the area of its fields";
  }

  private String advance(SummaryRow row, String crop) {
    List<String> rest = new ArrayList<>();
    find(Measure.MONEY_ADVANCE_SHORT.of(crop))
        .filter(left -> left.mean() > 0)
        .ifPresent(
            left -> rest.add(wording.amount(left) + " more than all bales of a field came to"));
    find(Measure.MONEY_ADVANCE_OPEN.of(crop))
        .filter(left -> left.mean() > 0)
        .ifPresent(
            left -> rest.add(wording.amount(left) + " for bales that had not come by the end"));
    return wording.amount(row)
        + " was paid for fields of "
        + title(crop)
        + " on contract"
        + (rest.isEmpty()
            ? ", and their bales came to as much"
            : ", " + String.join(" and ", rest));
  }
}
