package hurdline.text;

import hurdline.answer.SummaryRow;

/** What a stretch of time earns or loses, as one says it. */
final class EarningWords {
  private final Spoken spoken;

  EarningWords(Spoken spoken) {
    this.spoken = spoken;
  }

  /**
   * {@code The year earns 521,000 USD before interest and tax, give or take 6,000}; where the
   * interval holds zero, that it is not decided and how many replications would.
   *
   * @param row the margin
   */
  String earns(String period, SummaryRow row, int replications) {
    double mean = row.mean();
    if (row.low95() < 0 && row.high95() > 0) {
      double half = Math.max(row.high95() - mean, mean - row.low95());
      return "Whether "
          + period
          + " earns or loses money is not decided: the margin is "
          + spoken.estimate(mean, row.low95(), row.high95(), row.unit())
          + "; "
          + spoken.wouldDecide(
              Spoken.needed(replications, mean, half), replications, "replications", "which");
    }
    boolean loses = mean < 0;
    double low = loses ? -row.high95() : row.low95();
    double high = loses ? -row.low95() : row.high95();
    return SpokenNames.upper(period)
        + (loses ? " loses " : " earns ")
        + spoken.amount(Math.abs(mean), low, high, row.unit())
        + " before interest and tax"
        + spoken.giveOrTake(Math.abs(mean), low, high, row.unit());
  }

  /**
   * {@code the year leaves 40,000 USD, give or take 6,000}, or takes them; where the interval holds
   * zero, that it is not decided.
   */
  String leaves(String period, SummaryRow row) {
    if (row.low95() < 0 && row.high95() > 0) {
      return "it is not decided whether "
          + period
          + " leaves or takes money: "
          + spoken.estimate(row.mean(), row.low95(), row.high95(), row.unit());
    }
    boolean takes = row.mean() < 0;
    return period
        + (takes ? " takes " : " leaves ")
        + spoken.estimate(
            Math.abs(row.mean()),
            takes ? -row.high95() : row.low95(),
            takes ? -row.low95() : row.high95(),
            row.unit());
  }
}
