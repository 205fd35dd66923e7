package hurdline.text;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * At what prices the answer was reached: what products brought over what was sold of them, and what
 * crops cost over what was weighed in; grades, docks and terms included.
 */
public final class PriceWords {
  private final RunAnswer answer;
  private final Wording wording;

  public PriceWords(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** Without its full stop; empty where nothing was sold or bought. */
  public Optional<String> sentence() {
    List<String> sold = new ArrayList<>();
    List<String> bought = new ArrayList<>();
    for (Outline.Line line : answer.outline().lines()) {
      line.products()
          .forEach(
              product ->
                  price(
                      sold,
                      wording.titles().product(product),
                      Measure.PRODUCT_REVENUE.of(product),
                      Measure.PRODUCT_SOLD.of(product)));
      price(
          bought,
          wording.titles().crop(line.crop()),
          Measure.MONEY_LINE_CROP_COST.of(line.name()),
          Measure.MASS_WEIGHED_IN.of(line.crop()));
    }
    List<String> parts = new ArrayList<>();
    if (!sold.isEmpty()) {
      parts.add(
          CapacityWords.and(sold.stream().distinct().toList()) + ", sold at their moisture basis");
    }
    if (!bought.isEmpty()) {
      parts.add(CapacityWords.and(bought) + ", bought as weighed in");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Mean prices behind these sums: "
                + String.join("; ", parts)
                + ". They are the plant file's, with its grades and terms, and stay the same over the"
                + " calendar");
  }

  private void price(List<String> found, String title, String money, String mass) {
    double paid = answer.meanOr0(money);
    double massT = answer.meanOr0(mass);
    if (massT > 0 && paid != 0) {
      String unit = answer.header().currency() + "/t";
      found.add(Titles.inText(title) + " " + wording.rough(paid / massT, unit));
    }
  }
}
