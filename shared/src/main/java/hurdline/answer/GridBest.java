package hurdline.answer;

import java.util.List;

/**
 * Where in a grid a measure is highest for one plant.
 *
 * @param measure its full name
 * @param plant the option or season plan
 * @param cell the cell with the highest mean
 * @param alike cells that paired intervals, which hold together for all pairs of cells, do not tell
 *     apart from it, itself not among them
 */
public record GridBest(String measure, String plant, int cell, List<Integer> alike) {
  public GridBest {
    alike = List.copyOf(alike);
  }
}
