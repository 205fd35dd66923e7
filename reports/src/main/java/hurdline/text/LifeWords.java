package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import java.util.ArrayList;
import java.util.List;

/** What the service lives of options rest on, and how often something happens in them. */
final class LifeWords {
  /** In fewer, a chance that is never seen may still be one in eight. */
  private static final int ENOUGH = 30;

  private final CompareAnswer answer;
  private final Wording wording;

  LifeWords(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What a reader must know before any worth is read, whole sentences. */
  List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    LifeTerms terms = answer.terms();
    if (!terms.unrepeated().isEmpty()) {
      warnings.add(
          "No net present value: the calendar of "
              + terms.calendarDays()
              + (terms.calendarDays() == 1 ? " day" : " days")
              + " is shorter than a year, and the file does not say how it repeats over the life of an option. Write \"repeats:"
              + " yearly\" (every year at the same season) or \"repeats: end-to-end\" under calendar.");
    }
    if (!answer.payback().isEmpty() && Double.isNaN(terms.discount()) && isLongerThanAYear()) {
      warnings.add(
          "Warning: the file gives no discount rate, so money of later years counts in full and net present values are too high."
              + " Write the rate at which you borrow or could invest under money, such as \"discount_rate: 9 %/yr\".");
    }
    return warnings;
  }

  /** Why an option of a plant with money has no worth; empty where {@link #warnings} say so. */
  String missing(CompareAnswer.Option option) {
    return answer.header().currency().isEmpty()
            || answer.terms().unrepeated().contains(option.name())
        ? ""
        : "not available: stopped before its service lives were whole";
  }

  private boolean isLongerThanAYear() {
    return answer.options().stream().anyMatch(option -> option.lifeYr() > 1);
  }

  /**
   * {@code 7 % of 30 service lives (1 to 22 %)}; of few lives the count, and what so few can say.
   */
  String chance(PaybackRow row) {
    long lives = answer.lives().stream().filter(life -> life.option().equals(row.option())).count();
    long happened = Math.round(row.mean() * lives);
    String range = percent(row.low95()) + " to " + percent(row.high95()) + " %";
    return lives < ENOUGH
        ? happened + " of " + lives + " service lives (so few say no more than " + range + ")"
        : percent(row.mean()) + " % of " + lives + " service lives (" + range + ")";
  }

  /** Chances have wide intervals that end at 0 or 100 %; whole percents lose nothing. */
  private String percent(double share) {
    return wording.fixed(share, 0, "share");
  }
}
