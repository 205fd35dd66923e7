package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.AdjustedRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
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
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, "base")
            .with(SummaryRow::measure, "mass.stalk.drawn_over_mean")
            .with(SummaryRow::unit, "share")
            .each(
                mean,
                SummaryRow::mean,
                SummaryRow::low95,
                SummaryRow::high95,
                SummaryRow::p05,
                SummaryRow::p50,
                SummaryRow::p95,
                SummaryRow::least,
                SummaryRow::most)
            .with(SummaryRow::sd, sd)
            .with(SummaryRow::replications, replications)
            .with(SummaryRow::interval, "student")
            .made());
    return DrawnCropWords.of(
        Draft.from(year)
            .with(RunAnswer::summary, summary)
            .with(RunAnswer::adjusted, List.of(adjusted))
            .made(),
        US);
  }

  private static AdjustedRow leftOver(double adjusted, double error) {
    return Draft.of(AdjustedRow.class)
        .with(AdjustedRow::option, "base")
        .with(AdjustedRow::measure, "season.stalk_line.left_over")
        .with(AdjustedRow::unit, "bales")
        .with(AdjustedRow::crop, "stalk")
        .with(AdjustedRow::mean, 2000)
        .with(AdjustedRow::error, 100)
        .with(AdjustedRow::adjusted, adjusted)
        .with(AdjustedRow::adjustedError, error)
        .with(AdjustedRow::low95, 1800)
        .with(AdjustedRow::high95, 1900)
        .made();
  }

  @Test
  void theTerminalSaysWhatTheDrawnYearsBroughtAndTheFiguresAdjustedForIt() {
    assertThat(new RunWords(SampleAnswer.richYears(), US).lines(80))
        .contains(
            "drawn crop  the 40 years drawn brought 1.9 % more stalk than the file's mean year (standard error 2.2 %); adjusted"
                + " for that: carry-over of the stalk line 2,300 bales (2,270 to 2,340)");
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
            Draft.of(AdjustedRow.class)
                .with(AdjustedRow::option, "a")
                .with(AdjustedRow::measure, "mass.stalk.fed")
                .with(AdjustedRow::unit, "t")
                .with(AdjustedRow::crop, "stalk")
                .with(AdjustedRow::mean, 843)
                .with(AdjustedRow::error, 37)
                .with(AdjustedRow::adjusted, 812)
                .with(AdjustedRow::adjustedError, 14)
                .with(AdjustedRow::low95, 783)
                .with(AdjustedRow::high95, 841)
                .made(),
            Draft.of(AdjustedRow.class)
                .with(AdjustedRow::option, "a")
                .with(AdjustedRow::measure, "money.margin")
                .with(AdjustedRow::unit, "USD")
                .with(AdjustedRow::crop, "stalk")
                .with(AdjustedRow::mean, 210_000)
                .with(AdjustedRow::error, 6000)
                .with(AdjustedRow::adjusted, 205_600)
                .with(AdjustedRow::adjustedError, 2300)
                .with(AdjustedRow::low95, 200_800)
                .with(AdjustedRow::high95, 210_300)
                .made(),
            Draft.of(AdjustedRow.class)
                .with(AdjustedRow::option, "b")
                .with(AdjustedRow::measure, "money.margin")
                .with(AdjustedRow::unit, "USD")
                .with(AdjustedRow::crop, "stalk")
                .with(AdjustedRow::mean, -9000)
                .with(AdjustedRow::error, 2000)
                .with(AdjustedRow::adjusted, -8000)
                .with(AdjustedRow::adjustedError, 600)
                .with(AdjustedRow::low95, -9200)
                .with(AdjustedRow::high95, -6800)
                .made());
    DrawnCropWords words =
        DrawnCropWords.of(
            Draft.from(of)
                .with(CompareAnswer::summary, summary)
                .with(CompareAnswer::adjusted, adjusted)
                .made(),
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
        Draft.of(AdjustedRow.class)
            .with(AdjustedRow::option, "base")
            .with(AdjustedRow::measure, "season.stalk_line.left_over")
            .with(AdjustedRow::unit, "bales")
            .with(AdjustedRow::crop, "stalk")
            .each(
                0,
                AdjustedRow::mean,
                AdjustedRow::error,
                AdjustedRow::adjusted,
                AdjustedRow::adjustedError,
                AdjustedRow::low95,
                AdjustedRow::high95)
            .made();
    assertThat(words(1.02, 0.01, 40, leftOver(1850, 20)).rows()).hasSize(1);
    assertThat(words(1.02, 0.01, 40, none).rows()).isEmpty();
  }
}
