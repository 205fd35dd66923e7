package hurdline.text;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The main figures of a grid: each drawn measure value by value, or its lowest and its highest
 * where there are many.
 */
public final class GridTable {
  private static final int FEW = 12;

  private final GridAnswer answer;
  private final KeyWords keys;
  private final GridWords words;
  private final List<MainTable.Row> rows = new ArrayList<>();

  private GridTable(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.keys = new KeyWords(answer, wording);
    this.words = new GridWords(answer, wording);
  }

  public static MainTable of(GridAnswer answer, Wording wording) {
    GridTable table = new GridTable(answer, wording);
    answer.drawn().forEach(measure -> answer.plants().forEach(plant -> table.add(measure, plant)));
    return new MainTable(table.rows, wording);
  }

  private void add(String measure, String plant) {
    List<GridRow> found =
        answer.rows().stream()
            .filter(
                row ->
                    row.measure().equals(measure)
                        && row.plant().equals(plant)
                        && !Double.isNaN(row.mean()))
            .toList();
    if (found.isEmpty()) {
      return;
    }
    String group =
        SpokenNames.upper(words.label(measure))
            + (answer.plants().size() > 1 ? " with " + keys.plant(plant) : "");
    if (answer.keys().size() == 1 && found.size() <= FEW && !words.isLevel(measure, plant)) {
      found.forEach(row -> rows.add(row(group, "at " + keys.cell(row.cell()), row)));
      return;
    }
    if (words.isLevel(measure, plant)) {
      rows.add(row(group, "at every value", found.get(0)));
      return;
    }
    GridRow least = found.stream().min(Comparator.comparingDouble(GridRow::mean)).orElseThrow();
    GridRow most = found.stream().max(Comparator.comparingDouble(GridRow::mean)).orElseThrow();
    rows.add(row(group, "highest, at " + keys.cell(most.cell()), most));
    rows.add(row(group, "lowest, at " + keys.cell(least.cell()), least));
  }

  private static MainTable.Row row(String group, String label, GridRow row) {
    return MainTable.Row.of(
        group, label, row.unit(), MainTable.Figures.of(row.mean(), row.low95(), row.high95()));
  }
}
