package hurdline.text;

import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import java.util.ArrayList;
import java.util.List;

/** In how many service lives a figure is missing, or is not the only one. */
public final class GapWords {
  private GapWords() {}

  /** {@code never in 3 of 40 service lives}, or empty. */
  public static String of(PaybackRow row, Wording wording) {
    PaybackRow.Gaps gaps = row.gaps();
    if (gaps.lives() == 0) {
      return "nothing to pay back";
    }
    List<String> said = new ArrayList<>();
    if (gaps.without() > 0) {
      String none =
          row.quantity() == Quantity.INTERNAL_RATE_OF_RETURN ? "none above -50 % in " : "never in ";
      said.add(none + ofLives(gaps.without(), gaps, wording));
    }
    if (gaps.withOther() > 0) {
      String low = RateWords.percent(gaps.otherLow(), wording);
      String high = RateWords.percent(gaps.otherHigh(), wording);
      String rates = low.equals(high) ? "of " + low : "from " + low + " to " + high;
      said.add("another " + rates + " % in " + ofLives(gaps.withOther(), gaps, wording));
    }
    return String.join(", ", said);
  }

  private static String ofLives(int count, PaybackRow.Gaps gaps, Wording wording) {
    return wording.count(count) + " of " + wording.count(gaps.lives()) + " service lives";
  }
}
