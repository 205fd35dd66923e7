package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import java.util.Optional;

/** What a purchase is worth to its owner after loan and tax, as one says it. */
final class AfterTaxSentences {
  private final CompareAnswer answer;
  private final Spoken spoken;

  AfterTaxSentences(CompareAnswer answer, Spoken spoken) {
    this.answer = answer;
    this.spoken = spoken;
  }

  /**
   * {@code After loan and tax, before your accountant, its net present value is 31,000 USD, give or
   * take 900, and the owner's own money is back after about 2.1 years}.
   */
  Optional<String> of(Option option) {
    boolean plural = CompareHeadline.isPlural(option.name());
    return answer
        .worth(option.name(), Quantity.NET_PRESENT_VALUE_AFTER_TAX)
        .map(
            row ->
                "After loan and tax, before your accountant, "
                    + (plural ? "their" : "its")
                    + " net present value is "
                    + spoken.estimate(row.mean(), row.low95(), row.high95(), row.unit())
                    + answer
                        .worth(option.name(), Quantity.PAYBACK_AFTER_TAX)
                        .map(this::ownMoneyBack)
                        .orElse(""));
  }

  private String ownMoneyBack(PaybackRow years) {
    if (Double.isNaN(years.mean())) {
      return ", and in "
          + years.gaps().without()
          + " of "
          + years.gaps().lives()
          + " service lives the owner's own money does not come back";
    }
    return years.mean() == 0
        ? ", and none of its price is the owner's own money"
        : ", and the owner's own money is back after "
            + spoken.aboutYears(years.mean(), years.low95(), years.high95());
  }
}
