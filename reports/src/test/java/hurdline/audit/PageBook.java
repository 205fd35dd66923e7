package hurdline.audit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables of a page, and what compares their cells with figures of the tables. */
final class PageBook {
  static final String PAGE = "page is the tables, rounded";

  private final WrittenAnswer answer;
  private final Ledger ledger;

  PageBook(WrittenAnswer answer, Ledger ledger) {
    this.answer = answer;
    this.ledger = ledger;
  }

  WrittenAnswer answer() {
    return answer;
  }

  /** One row of one table of the page. */
  record Line(PageTable table, List<String> cells) {
    String name() {
      return cells.get(0);
    }

    String cell(int column) {
      return cells.get(column);
    }

    String head(int column) {
      return table.head().get(column);
    }

    @Override
    public String toString() {
      return "page table \"" + table.label() + "\" row \"" + name() + "\"";
    }
  }

  /** Rows of the table with this label, none where the page has no such table. */
  Stream<Line> lines(String label, Object... names) {
    String wanted = String.format(Locale.ROOT, label, names);
    Optional<PageTable> table =
        answer.page().stream().filter(of -> of.label().equalsIgnoreCase(wanted)).findFirst();
    return table.stream().flatMap(of -> of.rows().stream().map(cells -> new Line(of, cells)));
  }

  /** A number, and where the cell has them its limits in a bracket. */
  void cell(Line line, int column, Figure figure) {
    List<Shown> shown = Shown.all(line.cell(column));
    if (Double.isNaN(figure.value())) { // words say why, and may hold a count
      ledger.same(PAGE, line + " column " + column, false, line.cell(column).matches("[-+]?\\d.*"));
    } else if (line.cell(column).startsWith(PageNames.ABOVE)) {
      double inUs = Shown.inUs(figure.value(), figure.unit());
      ledger.between(
          PAGE, line + " column " + column, shown.get(0).value(), inUs, Double.MAX_VALUE);
    } else if (shown.isEmpty()) {
      ledger.same(PAGE, line + " column " + column, figure, line.cell(column));
    } else {
      number(line, column, shown.get(0), figure.value(), figure);
      if (shown.size() > 2) {
        number(line, column, shown.get(1), figure.low(), figure);
        number(line, column, shown.get(2), figure.high(), figure);
      }
    }
  }

  /** Two limits, or nothing where they do not differ as written. */
  void limits(Line line, int column, Figure figure) {
    List<Shown> shown = Shown.all(line.cell(column));
    if (shown.size() == 2) {
      number(line, column, shown.get(0), figure.low(), figure);
      number(line, column, shown.get(1), figure.high(), figure);
    } else {
      ledger.between(
          PAGE,
          line + " column " + column + " without limits",
          0,
          figure.halfWidth(),
          0.005 * Math.abs(figure.value()));
    }
  }

  void number(Line line, int column, Shown shown, double expected, Figure figure) {
    double inUs = Shown.inUs(expected, figure.unit());
    boolean rounded = isRounded(shown, expected, figure);
    ledger.near(PAGE, line + " column " + column, rounded ? shown.value() : inUs, shown.value());
  }

  /** Rows of the table adjusted.csv that the page picks out: mean, adjusted mean and its limits. */
  void adjusted() {
    lines(PageNames.ADJUSTED)
        .forEach(
            line -> {
              boolean found =
                  answer.table(Tables.ADJUSTED).rows().anyMatch(row -> isShown(line, row));
              ledger.same(PAGE, line + " is a row of " + Tables.ADJUSTED, true, found);
            });
  }

  private static boolean isShown(Line line, Table.Row row) {
    Figure adjusted = Figure.of(row, Columns.ADJUSTED_MEAN, Columns.LOW_95, Columns.HIGH_95);
    List<Shown> limits = Shown.all(line.cell(3));
    return isShown(line.cell(1), adjusted.withValue(row.number(Columns.MEAN)))
        && isShown(line.cell(2), adjusted)
        && (limits.size() == 2
            ? isRounded(limits.get(0), adjusted.low(), adjusted)
                && isRounded(limits.get(1), adjusted.high(), adjusted)
            : adjusted.halfWidth() == 0);
  }

  private static boolean isShown(String cell, Figure figure) {
    List<Shown> shown = Shown.all(cell);
    return !shown.isEmpty() && isRounded(shown.get(0), figure.value(), figure);
  }

  private static boolean isRounded(Shown shown, double expected, Figure figure) {
    return shown.isRounded(
        Shown.inUs(expected, figure.unit()), Shown.inUs(figure.halfWidth(), figure.unit()));
  }

  void text(Line line, int column, String expected) {
    ledger.same(PAGE, line + " column " + column, expected, line.cell(column));
  }
}
