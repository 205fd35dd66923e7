package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.AdjustedRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class DrawnCropWordsTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  private static DrawnCropWords words(
      double mean, double sd, int replications, AdjustedRow... adjusted) {
    RunAnswer year = SampleAnswer.year();
    List<SummaryRow> summary = new ArrayList<>(year.summary());
    summary.add(
        new SummaryRow(
            "base",
            "mass.stalk.drawn_over_mean",
            "share",
            mean,
            mean,
            mean,
            sd,
            mean,
            mean,
            mean,
            mean,
            mean,
            replications,
            "student"));
    return DrawnCropWords.of(
        new RunAnswer(
            year.header(),
            year.outline(),
            summary,
            List.of(adjusted),
            year.holders(),
            year.machines(),
            year.weeks(),
            year.months(),
            year.levels(),
            year.flows(),
            year.capacity(),
            year.assumptions(),
            year.cautions(),
            year.warnings(),
            year.samples(),
            year.trace()),
        US);
  }

  private static AdjustedRow leftOver(double adjusted, double error) {
    return new AdjustedRow(
        "base",
        "season.stalk_line.left_over",
        "bales",
        "stalk",
        2000,
        100,
        adjusted,
        error,
        1800,
        1900);
  }

  @Test
  void theTerminalSaysWhatTheDrawnYearsBroughtAndTheFiguresAdjustedForIt() {
    assertThat(new RunWords(SampleAnswer.richYears(), US).lines(80))
        .contains(
            "drawn crop  the 40 years drawn brought 1.9 % more stalk than the file's mean year (standard error 2.2 %); adjusted"
                + " for that: left over of the stalk line 2,300 bales (2,270 to 2,340)");
    assertThat(new RunWords(SampleAnswer.year(), US).lines(80))
        .noneMatch(line -> line.startsWith("drawn"));
  }

  @Test
  void aComparisonHasAdjustedDifferencesOptionByOption() {
    CompareAnswer of = SampleCompare.two();
    List<SummaryRow> summary = new ArrayList<>(of.summary());
    summary.add(SampleAnswer.richYears().find("mass.stalk.drawn_over_mean").orElseThrow());
    List<AdjustedRow> adjusted =
        List.of(
            new AdjustedRow("a", "mass.stalk.fed", "t", "stalk", 843, 37, 812, 14, 783, 841),
            new AdjustedRow(
                "a",
                "money.margin",
                "USD",
                "stalk",
                210_000,
                6000,
                205_600,
                2300,
                200_800,
                210_300),
            new AdjustedRow(
                "b", "money.margin", "USD", "stalk", -9000, 2000, -8000, 600, -9200, -6800));
    DrawnCropWords words =
        DrawnCropWords.of(
            new CompareAnswer(
                of.header(),
                of.outline(),
                of.options(),
                summary,
                of.differences(),
                adjusted,
                of.holders(),
                of.months(),
                of.mills(),
                of.payback(),
                of.cash(),
                of.lives(),
                of.terms(),
                of.further(),
                of.assumptions(),
                of.cautions(),
                of.warnings(),
                of.samples()),
            US);
    assertThat(words.clauses())
        .containsExactly(
            "the 40 years drawn brought 1.9 % more stalk than the file's mean year (standard error 2.2 %); adjusted for that: "
                + "a: stalk fed +900 ton (860 to 930), margin +206,000 USD (201,000 to 210,000); "
                + "b: margin -8,000 USD (-9,200 to -6,800)");
    assertThat(words.label(adjusted.get(2))).isEqualTo("b: margin");
  }

  @Test
  void whatIsOffByMoreThanItsStandardErrorIsReportedWithoutAnyAdjustedFigureToo() {
    assertThat(words(0.92, 0.1, 5).clauses())
        .containsExactly(
            "the 5 years drawn brought 8.0 % less stalk than the file's mean year (standard error 4.5 %)");
    assertThat(words(0.92, 0.2, 5).clauses())
        .as("8 % is less than one standard error of 8.9 %")
        .isEmpty();
  }

  @Test
  void withinItsStandardErrorItIsReportedWhereAFigureMovesByMoreThanItsOwn() {
    assertThat(words(1.01, 0.1, 40, leftOver(1950, 20)).clauses()).hasSize(1);
    assertThat(words(1.01, 0.1, 40, leftOver(1990, 20)).clauses())
        .as("10 bales are less than one of 20")
        .isEmpty();
    assertThat(words(1.01, 0.1, 40, leftOver(1900, 90)).clauses())
        .as("an error of 90 in place of 100 is no help")
        .isEmpty();
  }

  @Test
  void whereNothingVariesOrOneYearWasDrawnNothingIsReported() {
    assertThat(words(1 + 1e-15, 0, 40).clauses()).isEmpty();
    assertThat(words(1.2, Double.NaN, 1).clauses()).isEmpty();
    assertThat(words(Double.NaN, Double.NaN, 0).clauses()).isEmpty();
    assertThat(words(1.0004, 0.0001, 40).clauses()).as("does not show with one decimal").isEmpty();
  }

  /** A crop that is used up in every year has nothing left over, adjusted or not. */
  @Test
  void whatNeverVariesHasNoAdjustedFigure() {
    AdjustedRow none =
        new AdjustedRow("base", "season.stalk_line.left_over", "bales", "stalk", 0, 0, 0, 0, 0, 0);
    assertThat(words(1.02, 0.01, 40, leftOver(1850, 20)).rows()).hasSize(1);
    assertThat(words(1.02, 0.01, 40, none).rows()).isEmpty();
  }
}
