package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Optional;

/**
 * What plants do over a grid of values of one or two keys, all on the same chance.
 *
 * @param header plant, program and settings; its option is the one of the plants or {@code base}
 * @param outline of the first plant without the varied values
 * @param called what tells the plants apart: {@code option}, or {@code plan}
 * @param plants their names
 * @param keys one or two
 * @param cells every pair of values, the last key's fastest
 * @param drawn the measures that are drawn, those to be had most of first
 * @param goals of these, how many are to be had most of
 * @param rows of the drawn measures
 * @param best for each goal and plant
 * @param leads for each goal and cell, where there is more than one plant
 * @param changes for each goal, where there is more than one plant and one key
 * @param assumptions what the figures take for granted
 * @param cautions what in this very plant can hurt someone
 * @param warnings what {@code check} warns of
 * @param all every measure; {@link All#none()} after reading {@code record.json}
 */
public record GridAnswer(
    Header header,
    Outline outline,
    String called,
    List<String> plants,
    List<GridKey> keys,
    List<GridCell> cells,
    List<String> drawn,
    int goals,
    List<GridRow> rows,
    List<GridBest> best,
    List<GridLead> leads,
    List<GridChange> changes,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings,
    All all)
    implements Answer {
  public GridAnswer {
    plants = List.copyOf(plants);
    keys = List.copyOf(keys);
    cells = List.copyOf(cells);
    drawn = List.copyOf(drawn);
    rows = List.copyOf(rows);
    best = List.copyOf(best);
    leads = List.copyOf(leads);
    changes = List.copyOf(changes);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    all = all == null ? All.none() : all;
  }

  /** Every row of {@code grid.csv}. */
  public record All(List<GridRow> rows) {
    public All {
      rows = List.copyOf(rows);
    }

    public static All none() {
      return new All(List.of());
    }
  }

  /** A drawn measure of a plant in a cell, if it was simulated and has it. */
  public Optional<GridRow> row(int cell, String plant, String measure) {
    return rows.stream()
        .filter(
            row -> row.cell() == cell && row.plant().equals(plant) && row.measure().equals(measure))
        .findFirst();
  }

  /** A cell's value of a key. */
  public GridKey.Value value(int cell, int key) {
    return keys.get(key).values().get(cells.get(cell).at().get(key));
  }
}
