package hurdline.table;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.GridRow;
import java.util.ArrayList;
import java.util.List;

/** The table of a grid. */
public final class GridTables {
  private final GridAnswer answer;

  public GridTables(GridAnswer answer) {
    this.answer = answer;
  }

  public List<Table> all() {
    List<String> columns = new ArrayList<>(answer.keys().stream().map(GridKey::path).toList());
    columns.add("alternative");
    columns.addAll(
        List.of("measure", "unit", "mean", "low_95", "high_95", "replications", "interval"));
    return List.of(
        new Table("grid.csv", columns, () -> answer.all().rows().stream().map(this::row)));
  }

  private Object[] row(GridRow row) {
    List<Object> cells = new ArrayList<>();
    for (int key = 0; key < answer.keys().size(); key++) {
      cells.add(answer.value(row.cell(), key).text());
    }
    cells.addAll(
        List.of(
            row.plant(),
            row.measure(),
            row.unit(),
            row.mean(),
            row.low95(),
            row.high95(),
            row.replications(),
            row.interval()));
    return cells.toArray();
  }
}
