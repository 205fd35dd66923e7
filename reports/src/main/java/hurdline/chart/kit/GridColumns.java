package hurdline.chart.kit;

import hurdline.answer.SummaryRow;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Columns of a table for the reader, each a head and what stands of a row under it, so that head
 * and rows cannot part. A number is given with the unit of the engine: the head then says in which
 * unit the reader has it, and the cell is in that.
 *
 * @param <R> what a row is of
 */
public final class GridColumns<R> {
  private final Wording wording;
  private final List<String> heads = new ArrayList<>();
  private final List<Function<? super R, String>> cells = new ArrayList<>();

  public GridColumns(Wording wording) {
    this.wording = wording;
  }

  public GridColumns<R> text(String head, Function<? super R, String> cell) {
    heads.add(head);
    cells.add(cell);
    return this;
  }

  public GridColumns<R> yes(String head, Predicate<? super R> question) {
    return text(head, row -> question.test(row) ? "yes" : "no");
  }

  /** A number to so many decimals. */
  public GridColumns<R> number(
      String head, int decimals, String unit, ToDoubleFunction<? super R> value) {
    return text(
        withUnit(head, unit), row -> wording.fixed(value.applyAsDouble(row), decimals, unit));
  }

  /**
   * @param none what stands where there is no number
   */
  public GridColumns<R> number(
      String head, int decimals, String unit, ToDoubleFunction<? super R> value, String none) {
    return text(
        withUnit(head, unit),
        row -> {
          double number = value.applyAsDouble(row);
          return Double.isNaN(number) ? none : wording.fixed(number, decimals, unit);
        });
  }

  /** A mean with its interval; without one the cell is empty. */
  public GridColumns<R> mean(
      String head, String unit, Function<? super R, Optional<SummaryRow>> measure) {
    return mean(head, unit, measure, "");
  }

  /**
   * @param none what stands where there is no mean
   */
  public GridColumns<R> mean(
      String head, String unit, Function<? super R, Optional<SummaryRow>> measure, String none) {
    return text(withUnit(head, unit), row -> cell(measure.apply(row), unit, none));
  }

  /** A mean with its interval, each in the unit of its measure, of which the head says enough. */
  public GridColumns<R> mean(String head, Function<? super R, Optional<SummaryRow>> measure) {
    return text(
        head,
        row -> {
          Optional<SummaryRow> found = measure.apply(row);
          return cell(found, found.map(SummaryRow::unit).orElse(""), "");
        });
  }

  private String cell(Optional<SummaryRow> found, String unit, String none) {
    if (found.isEmpty() || Double.isNaN(found.get().mean())) {
      return none;
    }
    SummaryRow row = found.get();
    if (!row.unit().equals(unit)) {
      throw new IllegalArgumentException(
          row.measure() + " is in " + row.unit() + "; its column is in " + unit);
    }
    return wording.cell(row.mean(), row.low95(), row.high95(), unit);
  }

  private String withUnit(String head, String unit) {
    return head.isEmpty() || unit.isEmpty()
        ? head + wording.unit(unit)
        : head + " " + wording.unit(unit);
  }

  /** The table of these rows. */
  public Chart.Grid of(Iterable<? extends R> rows) {
    List<List<String>> grid = new ArrayList<>();
    for (R row : rows) {
      grid.add(cells.stream().map(cell -> cell.apply(row)).toList());
    }
    return new Chart.Grid(heads, grid);
  }
}
