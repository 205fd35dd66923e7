package hurdline.audit;

import java.util.List;
import java.util.stream.IntStream;

/** The page of a choice among plans against its tables. */
final class ChoicePageCheck implements Check {
  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    PageBook book = new PageBook(answer, ledger);
    left(answer, book, ledger);
    rounds(answer, book, ledger);
  }

  /** Plan, its cost, mean with limits, 5th percentile; rows are named by choices, not by number. */
  private static void left(WrittenAnswer answer, PageBook book, Ledger ledger) {
    List<Figure> known =
        answer
            .table(Tables.CHOICE)
            .rows()
            .filter(row -> List.of("named", "left").contains(row.text(Columns.STATUS)))
            .map(row -> Figure.of(row, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95))
            .sorted((a, b) -> Double.compare(b.value(), a.value()))
            .toList();
    List<PageBook.Line> lines = book.lines(PageNames.PLANS_LEFT).toList();
    ledger.near(PageBook.PAGE, "plans that may be the best", known.size(), lines.size());
    String named = lines.get(0).name();
    List<PageBook.Line> falling =
        lines.stream().sorted((a, b) -> Double.compare(first(b), first(a))).toList();
    ledger.same(PageBook.PAGE, "the named plan has a name", false, named.isEmpty());
    IntStream.range(0, falling.size()).forEach(at -> book.cell(falling.get(at), 2, known.get(at)));
  }

  private static double first(PageBook.Line line) {
    return Shown.all(line.cell(2)).get(0).value();
  }

  private static void rounds(WrittenAnswer answer, PageBook book, Ledger ledger) {
    List<Table.Row> rows = answer.table(Tables.ROUNDS).rows().toList();
    List<PageBook.Line> lines = book.lines(PageNames.ROUNDS).toList();
    ledger.near(PageBook.PAGE, "rounds", rows.size(), lines.size());
    for (int at = 0; at < rows.size(); at++) {
      book.cell(lines.get(at), 2, Figure.alone(rows.get(at).number("years"), ""));
      book.cell(lines.get(at), 5, Figure.alone(rows.get(at).number("left"), ""));
    }
  }
}
