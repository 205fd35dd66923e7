package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What all answers have in common: a few sentences that can be said aloud, and a table that fits.
 */
class HeadlinesTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);
  private static final int SENTENCES = 5;

  static Stream<List<String>> headlines() {
    return Stream.of(
        new RunHeadline(SampleAnswer.year(), US).sentences(),
        new RunHeadline(SampleAnswer.richYears(), US).sentences(),
        new RunHeadline(SampleAnswer.bare(), US).sentences(),
        new CheckHeadline(SampleAnswer.paper(), US).sentences(),
        new CompareHeadline(SampleCompare.two(), US).sentences(),
        new CompareHeadline(SampleCompare.stopped(), US).sentences(),
        new SeasonHeadline(SampleSeason.two(), US).sentences(),
        new SeasonHeadline(SampleSeason.leavingCropOver(false), US).sentences(),
        new YardHeadline(SampleYard.tooSmall(), US).sentences(),
        new YardHeadline(SampleYard.stopped(), US).sentences(),
        new GridHeadline(SampleGrid.line(), US).sentences(),
        new GridHeadline(SampleGrid.tiles(), US).sentences(),
        new ChooseHeadline(SampleChoose.budgets(), US).sentences(),
        new ChooseHeadline(SampleChoose.ended(), US).sentences());
  }

  @ParameterizedTest
  @MethodSource("headlines")
  void twoToFiveSentencesWithoutBracketsAndWithAtMostTwoNumbersThatMayBeOff(
      List<String> sentences) {
    assertThat(sentences).hasSizeBetween(2, SENTENCES);
    assertThat(sentences)
        .allSatisfy(
            sentence -> {
              assertThat(sentence)
                  .matches("[A-Z0-9].*[^.]\\.")
                  .doesNotContainPattern("[()\\[\\]]")
                  .doesNotContain("_", "  ", "NaN");
              assertThat(sentence.split("give or take", -1)).hasSizeLessThanOrEqualTo(3);
            });
  }

  static Stream<MainTable> tables() {
    return Stream.of(
        RunTable.of(SampleAnswer.year(), US),
        RunTable.of(SampleAnswer.bare(), US),
        CompareTable.of(SampleCompare.two(), US),
        CompareTable.of(SampleCompare.stopped(), US),
        SeasonTable.of(SampleSeason.two(), US),
        YardTable.of(SampleYard.tooSmall(), US),
        GridTable.of(SampleGrid.line(), US),
        GridTable.of(SampleGrid.tiles(), US),
        ChooseTable.of(SampleChoose.budgets(), US));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyTableFitsTerminalsOfSixtyToAHundredColumns(MainTable table) {
    for (int width = 60; width <= 100; width++) {
      int columns = width;
      assertThat(table.lines(width))
          .isNotEmpty()
          .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(columns));
    }
  }

  @Test
  void theTablesOfCheckFitToo() {
    assertThat(
            new CheckWords(SampleAnswer.paper(), US)
                .lines(60).stream().filter(line -> line.matches("  \\S.*\\d  .*")))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(60));
  }
}
