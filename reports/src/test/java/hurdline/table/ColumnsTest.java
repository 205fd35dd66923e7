package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import hurdline.answer.GainRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.YardSizeRow;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Head and cells of a table are one thing. */
class ColumnsTest {
  static Stream<Table> tables() {
    return Stream.of(
            new RunTables(SampleAnswer.year()).all(),
            new CompareTables(SampleCompare.two()).all(),
            new SeasonTables(SampleSeason.two()).all(),
            new YardTables(SampleYard.tooSmall()).all(),
            new GridTables(SampleGrid.tiles()).all(),
            new ChooseTables(SampleChoose.budgets()).all())
        .flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowHasACellForEachColumn(Table table) {
    assertThat(table.columns()).doesNotHaveDuplicates();
    try (Stream<Object[]> rows = table.rows().get()) {
      assertThat(rows)
          .as(table.file())
          .allSatisfy(row -> assertThat(row).hasSameSizeAs(table.columns()));
    }
  }

  @Test
  void aColumnIsThePartThatTheRecordCallsSo() {
    GainRow gain = SampleCompare.two().further().gains().get(0);
    assertThat(new Columns(GainRow.class, "gain,significant,what").cells(gain))
        .containsExactly(gain.gain(), gain.significant() ? "yes" : "no", gain.what());
    PaybackRow payback = SampleCompare.two().payback().get(0);
    assertThat(new Columns(PaybackRow.class, "alternative,quantity").cells(payback))
        .containsExactly(payback.option(), payback.quantity().word());
  }

  @Test
  void aPartOfAPartCountsWhereNoOwnOneHasTheName() {
    YardSizeRow size = SampleYard.tooSmall().capacity().get(0);
    assertThat(
            new Columns(YardSizeRow.class, "low_95,money_low_95,money_above_cheapest").cells(size))
        .containsExactly(size.low95(), size.cost().low95(), size.cost().above().money());
  }

  @Test
  void aColumnWithoutAPartIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Columns(GainRow.class, "gain,lost"))
        .withMessage("GainRow has no lost");
  }

  @Test
  void aRowThatIsTooShortIsNotWritten() {
    Table table =
        new Table("t.csv", List.of("a", "b"), () -> Stream.<Object[]>of(new Object[] {1}));
    assertThatIllegalStateException()
        .isThrownBy(() -> table.write(new StringBuilder()))
        .withMessageContaining("t.csv has 2 columns");
  }
}
