package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.Measure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * What a season would earn without its first changeover, against a run of the file without that
 * changeover.
 */
final class ChangeoverCheck implements Check {
  static final String WORTH = "worth of a changeover avoided";

  /** The end of the line before it, then a line of its own. */
  private static final Pattern FIRST_CHANGEOVER =
      Pattern.compile("(to: )[-0-9]+([^\n]*)\n  - \\{changeover:[^\n]*");

  private final WrittenAnswer without;

  ChangeoverCheck(WrittenAnswer without) {
    this.without = without;
  }

  /**
   * The same plant without the first changeover of its season, the campaign before it running on
   * through its days.
   */
  static WrittenAnswer runWithout(
      WrittenAnswer season, Path plant, Path folder, String replications) throws IOException {
    String to = season.table(Tables.CHANGEOVERS).row(row -> true).text(Columns.TO);
    String text = Files.readString(plant);
    String without = FIRST_CHANGEOVER.matcher(text).replaceFirst("$1" + to + "$2");
    assertThat(without).isNotEqualTo(text);
    Path file = Files.writeString(folder.resolve("without-changeover.yaml"), without);
    return WrittenAnswer.of("run", file, folder.resolve("without"), "--replications", replications);
  }

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    Table changeovers = answer.table(Tables.CHANGEOVERS);
    String plan = answer.options().get(0);
    Table.Row row = changeovers.row(of -> of.is(Columns.PLAN, plan));
    double[] with = answer.samples(plan).all(Measure.MONEY_MARGIN);
    double[] margin = without.samples(without.options().get(0)).all(Measure.MONEY_MARGIN).clone();
    for (int at = 0; at < margin.length; at++) {
      margin[at] -= with[at];
    }
    Statistic worth = Statistic.of(margin);
    Statistic.Limits limits = worth.limits((int) changeovers.rows().count());
    double rounding = 1e-9 * Math.abs(Statistic.of(with).max());
    ledger.near(WORTH, row, worth.mean(), row.number(Columns.WORTH), rounding);
    ledger.near(WORTH, row, limits.low(), row.number(Columns.LOW_95), rounding);
    ledger.near(WORTH, row, limits.high(), row.number(Columns.HIGH_95), rounding);
  }
}
