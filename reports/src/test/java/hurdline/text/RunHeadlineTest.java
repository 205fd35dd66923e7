package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.BottleneckRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RunHeadlineTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  private static List<String> said(RunAnswer answer) {
    return new RunHeadline(answer, US).sentences();
  }

  private static BottleneckRow limit(String cause, double share, double half) {
    return new BottleneckRow(
        "base", "stalk_line", cause, 2048 * share, share, share - half, share + half, "student");
  }

  private static String first(BottleneckRow... rows) {
    return said(SampleAnswer.limitedBy(List.of(rows))).get(0);
  }

  @Test
  void aYearIsSaidInFourSentences() {
    assertThat(said(SampleAnswer.year()))
        .containsExactly(
            "The mill is the bottleneck: it limits the stalk line in 57 of 100 scheduled hours.",
            "The feeder is the bottleneck: it limits the cotton line in 67 of 100 scheduled hours.",
            "About 2,420 of 9,730 bales of stalk are left when the season ends.",
            "The year earns 167,000 USD before interest and tax, give or take 4,000; one time in 20"
                + " less than 149,000 USD.");
  }

  @Test
  void whereAllIsUsedItIsSaidWhenTheLinesAreDone() {
    List<SummaryRow> used = new ArrayList<>();
    for (SummaryRow row : SampleAnswer.year().summary()) {
      boolean left = row.measure().endsWith(".left_over");
      used.add(
          left
              ? Draft.from(row).with(SummaryRow::mean, 0.0).with(SummaryRow::most, 0.0).made()
              : row);
    }
    used.add(
        Draft.of(SummaryRow.class)
            .with(SummaryRow::measure, "season.stalk_line.ended")
            .with(SummaryRow::mean, 32.0)
            .with(SummaryRow::least, 30.0)
            .with(SummaryRow::most, 34.0)
            .made());
    assertThat(said(SampleAnswer.with(used)))
        .anySatisfy(
            sentence ->
                assertThat(sentence)
                    .startsWith("All of the stalk")
                    .contains(" is used when the season ends, the last stalk about 2027-02-04"));
  }

  @Test
  void oneReplicationIsOneSimulatedYear() {
    assertThat(said(SampleAnswer.bare()))
        .containsExactly(
            "The feeder is the bottleneck: it limits the only in all scheduled hours.",
            "About 97 tons of stalk are fed.",
            "This is one simulated year, and another may differ much.");
  }

  @Test
  void limitsThatAreCloseAreBothNamedWithTheReplicationsThatWouldDecide() {
    assertThat(
            first(
                limit("mill", 0.31, 0.02),
                limit("feeder", 0.29, 0.02),
                limit("no_bales", 0.2, 0.01)))
        .isEqualTo(
            "The mill and the feeder limit the stalk line about equally, in 31 and 29 of 100"
                + " scheduled hours; about 160 replications would show which limits it longer.");
    assertThat(first(limit("mill", 0.31, 0.005), limit("feeder", 0.29, 0.005)))
        .startsWith("The mill is the bottleneck");
    assertThat(first(limit("mill", 0.3, 0.02), limit("feeder", 0.3, 0.02)))
        .endsWith("; no number of replications within reach would show which limits it longer.");
  }

  @Test
  void aLackOfCropOrOrdersOrCrewIsNoMachine() {
    assertThat(
            first(
                limit("no_bales", 0.25, 0.01),
                limit("mill", 0.3, 0.01),
                limit("crop_done", 0.15, 0.01)))
        .isEqualTo(
            "A lack of stalk, not a machine, limits the stalk line: it has none to feed in 40 of"
                + " 100 scheduled hours. After that comes the mill, in 30 of 100 scheduled hours.");
    assertThat(first(limit("no_order", 0.6, 0.01)))
        .isEqualTo(
            "A lack of orders, not a machine, limits the stalk line: no order is open in 60 of 100"
                + " scheduled hours.");
    assertThat(first(limit("kept_apart", 0.6, 0.01)))
        .isEqualTo(
            "Stalk kept apart until released, not a machine, limits the stalk line: nothing may be"
                + " fed in 60 of 100 scheduled hours.");
    assertThat(first(limit("no_crew", 0.6, 0.01)))
        .isEqualTo(
            "A lack of crew, not a machine, limits the stalk line in 60 of 100 scheduled hours.");
    assertThat(first(limit("resource.bag_hand", 0.6, 0.01)))
        .isEqualTo(
            "The wait for the bag hand is the bottleneck: it limits the stalk line in 60 of 100"
                + " scheduled hours.");
  }

  @Test
  void aMachineWhoseStopsLimitLongestCountsThem() {
    assertThat(
            first(
                limit("mill", 0.2, 0.01),
                limit("mill.hammers", 0.24, 0.01),
                limit("feeder", 0.28, 0.01)))
        .isEqualTo(
            "The mill is the bottleneck: it limits the stalk line in 44 of 100 scheduled hours,"
                + " stops and changes included.");
    assertThat(first(limit("mill_a+mill_b", 0.8, 0.01)))
        .isEqualTo(
            "The mill a and the mill b are the bottleneck: they limit the stalk line in 80 of 100"
                + " scheduled hours.");
  }

  private static String earned(double mean, double half) {
    RunAnswer year = SampleAnswer.year();
    SummaryRow margin =
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, "base")
            .with(SummaryRow::measure, "money.margin")
            .with(SummaryRow::unit, "USD")
            .each(
                mean,
                SummaryRow::mean,
                SummaryRow::p05,
                SummaryRow::p50,
                SummaryRow::p95,
                SummaryRow::least,
                SummaryRow::most)
            .with(SummaryRow::low95, mean - half)
            .with(SummaryRow::high95, mean + half)
            .with(SummaryRow::sd, half)
            .with(SummaryRow::replications, 40)
            .with(SummaryRow::interval, "student")
            .made();
    List<SummaryRow> summary = new ArrayList<>(year.summary());
    summary.removeIf(row -> row.measure().equals(margin.measure()));
    summary.add(margin);
    List<String> said = said(SampleAnswer.with(summary));
    return said.get(said.size() - 1);
  }

  @Test
  void aLossIsSaidAsOneAndDoubtAsDoubt() {
    assertThat(earned(-12_340, 1_240))
        .isEqualTo("The year loses 12,300 USD before interest and tax, give or take 1,200.");
    assertThat(earned(1_000, 2_000))
        .isEqualTo(
            "Whether the year earns or loses money is not decided: the margin is 1,000 USD, give or"
                + " take 2,000; about 160 replications would show which.");
  }

  @Test
  void whatIsLeftAfterLoanAndTaxIsSaidWithItsSign() {
    assertThat(left(43_210, 1_900))
        .isEqualTo(
            "After loan and tax, before your accountant, the year leaves 43,200 USD, give or take"
                + " 1,900; one time in 20 less than 28,200 USD.");
    assertThat(left(-43_210, 1_900))
        .isEqualTo(
            "After loan and tax, before your accountant, the year takes 43,200 USD, give or take"
                + " 1,900; one time in 20 a loss of more than 58,200 USD.");
    assertThat(left(1_000, 2_000))
        .isEqualTo(
            "After loan and tax, before your accountant, it is not decided whether the year leaves"
                + " or takes money: 1,000 USD, give or take 2,000; one time in 20 a loss of more than"
                + " 14,000 USD.");
  }

  private static String left(double mean, double half) {
    RunAnswer year = SampleAnswer.year();
    List<SummaryRow> summary = new ArrayList<>(year.summary());
    SummaryRow margin =
        summary.stream()
            .filter(row -> row.measure().equals("money.margin"))
            .findFirst()
            .orElseThrow();
    summary.add(
        Draft.from(margin)
            .with(SummaryRow::measure, "cash.left")
            .with(SummaryRow::mean, mean)
            .with(SummaryRow::low95, mean - half)
            .with(SummaryRow::high95, mean + half)
            .with(SummaryRow::p05, mean - 15_000)
            .with(SummaryRow::p95, mean + 15_000)
            .made());
    List<String> said = said(SampleAnswer.with(summary));
    return said.get(said.size() - 1);
  }

  @Test
  void unitsAndMarksAreTheReaders() {
    List<String> german =
        new RunHeadline(SampleAnswer.bare(), new Wording(UnitSystem.METRIC, Locale.GERMANY))
            .sentences();
    assertThat(german).contains("88 tonnes of stalk are fed.");
    assertThat(
            new RunHeadline(SampleAnswer.year(), new Wording(UnitSystem.METRIC, Locale.GERMANY))
                .sentences())
        .contains(
            "The year earns 167.000 USD before interest and tax, give or take 4.000; one time in"
                + " 20 less than 149.000 USD.");
  }
}
