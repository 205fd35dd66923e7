package hurdline.audit;

/**
 * differences.csv: paired by replication, intervals that hold together, and how many replications
 * would show it.
 */
final class DifferenceCheck implements Check {
  static final String DIFFERENCES = "paired differences";

  /**
   * Share of the values, or of their unit where that is more, below which two of a pair count as
   * equal; what the tables call no difference.
   */
  private static final double EQUAL = 1e-9;

  private static final int MOST = 1_000_000_000;

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    if (answer.has(Tables.DIFFERENCES)) {
      Table differences = answer.table(Tables.DIFFERENCES);
      boolean plans = differences.columns().contains(Columns.AGAINST);
      int plants = answer.options().size();
      int comparisons = plans ? plants * (plants - 1) / 2 : plants - 1;
      differences
          .rows()
          .forEach(
              row -> {
                String of = row.text(plans ? Columns.PLAN : Columns.OPTION);
                String against = plans ? row.text(Columns.AGAINST) : answer.options().get(0);
                compare(answer.samples(of), answer.samples(against), comparisons, row, ledger);
              });
    }
  }

  private static void compare(
      Samples of, Samples against, int comparisons, Table.Row row, Ledger ledger) {
    String measure = row.text(Columns.MEASURE);
    double[] option = of.all(measure).clone();
    double[] base = against.all(measure).clone();
    double[] differences = new double[base.length];
    double largest = 0;
    for (int at = 0; at < base.length; at++) {
      differences[at] = option[at] - base[at];
      double larger = Math.max(Math.abs(option[at]), Math.abs(base[at]));
      if (Double.isNaN(differences[at])) {
        option[at] = Double.NaN;
        base[at] = Double.NaN;
      } else if (Math.abs(differences[at]) <= EQUAL * Math.max(1, larger)) {
        differences[at] = 0;
      }
      largest = Math.max(largest, Double.isNaN(larger) ? 0 : larger);
    }
    figures(
        Statistic.of(base),
        Statistic.of(option),
        Statistic.of(differences),
        comparisons,
        1e-9 * largest,
        row,
        ledger);
  }

  private static void figures(
      Statistic base,
      Statistic option,
      Statistic paired,
      int comparisons,
      double rounding,
      Table.Row row,
      Ledger ledger) {
    ledger.near(DIFFERENCES, row, paired.count(), row.number(Columns.REPLICATIONS));
    ledger.near(DIFFERENCES, row, base.mean(), row.number(Columns.BASE_MEAN));
    ledger.near(DIFFERENCES, row, option.mean(), row.number(Columns.OPTION_MEAN));
    ledger.near(DIFFERENCES, row, paired.mean(), row.number(Columns.DIFFERENCE), rounding);
    Statistic.Limits own = paired.limits();
    Statistic.Limits joint = paired.limits(comparisons);
    ledger.near(DIFFERENCES, row, own.low(), row.number(Columns.LOW_95), rounding);
    ledger.near(DIFFERENCES, row, own.high(), row.number(Columns.HIGH_95), rounding);
    ledger.near(DIFFERENCES, row, joint.low(), row.number(Columns.LOW_JOINT), rounding);
    ledger.near(DIFFERENCES, row, joint.high(), row.number(Columns.HIGH_JOINT), rounding);
    String kind = row.text(Columns.INTERVAL);
    ledger.same(DIFFERENCES, row + " is " + kind, true, paired.isCalled(kind, rounding));
    boolean significant = joint.low() > 0 || joint.high() < 0;
    ledger.same(DIFFERENCES, row, significant ? "yes" : "no", row.text(Columns.SIGNIFICANT));
    if (paired.mean() == 0 || Math.abs(paired.mean()) > rounding) { // else it is rounding
      needed(paired, comparisons, significant, row, ledger);
    }
    double apart = base.variance() + option.variance();
    double removed = apart > 0 ? 1 - paired.variance() / apart : Double.NaN;
    if (Math.sqrt(apart) > rounding) { // else both variances are rounding
      ledger.near(DIFFERENCES, row, removed, row.number(Columns.VARIANCE_REMOVED), 1e-6);
    }
  }

  /**
   * None where there is no difference, or no spread known; a billion stands for more than anybody
   * makes. Hall's limits may show what Student's do not, and the other way round: what is
   * significant takes no more than there are, what is not more.
   */
  private static void needed(
      Statistic paired, int comparisons, boolean significant, Table.Row row, Ledger ledger) {
    double needed = row.number(Columns.NEEDED);
    if (paired.count() < 2 || paired.mean() == 0) {
      ledger.near(DIFFERENCES, row, Double.NaN, needed);
    } else if (paired.shows(paired.count(), comparisons) != significant) {
      ledger.near(DIFFERENCES, row, significant ? paired.count() : paired.count() + 1, needed);
    } else if (needed < MOST) {
      ledger.same(
          DIFFERENCES,
          row + " replications",
          true,
          paired.isLeastToShow((int) needed, comparisons));
    }
  }
}
