package hurdline.audit;

import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;

/**
 * What limits each line: hours by cause, and their share of the scheduled hours as the mean over
 * replications.
 */
final class BottleneckCheck implements Check {
  static final String SHARES = "shares of scheduled hours";

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (Table.Row row : rows(answer)) {
      Samples samples = answer.samples(row.text(Columns.OPTION));
      Figure share = share(samples, row.text(Columns.LINE), row.text(Columns.CAUSE));
      String hours =
          Measure.LINE_HOURS_LIMITED_BY.of(row.text(Columns.LINE), row.text(Columns.CAUSE));
      ledger.near(SHARES, row, samples.statistic(hours).mean(), row.number(Columns.HOURS));
      ledger.near(SHARES, row, share.value(), row.number(Columns.SHARE));
      ledger.near(SHARES, row, share.low(), row.number(Columns.SHARE_LOW));
      ledger.near(SHARES, row, share.high(), row.number(Columns.SHARE_HIGH));
    }
  }

  /**
   * The mean over replications of a cause's hours over the scheduled hours, no limit below nothing
   * or beyond all.
   */
  static Figure share(Samples samples, String line, String cause) {
    double[] hours = samples.all(Measure.LINE_HOURS_LIMITED_BY, line, cause);
    double[] scheduled = samples.all(Measure.LINE_HOURS_SCHEDULED, line);
    Statistic share =
        Statistic.of(samples.each().mapToDouble(at -> hours[at] / scheduled[at]).toArray());
    Statistic.Limits limits = share.limits();
    return new Figure(share.mean(), Math.max(0, limits.low()), Math.min(1, limits.high()), "share");
  }

  /** Of every cause of every line. */
  static List<Figure> shares(Samples samples) {
    return samples.matches(Measure.LINE_HOURS_LIMITED_BY).stream()
        .map(match -> share(samples, match.names().get(0), match.names().get(1)))
        .toList();
  }

  private static List<Table.Row> rows(WrittenAnswer answer) {
    List<Table.Row> rows = new ArrayList<>();
    if (answer.has(Tables.BOTTLENECKS)) {
      answer.table(Tables.BOTTLENECKS).rows().forEach(rows::add);
    }
    return rows;
  }
}
