package hurdline.answer;

import java.util.List;

/**
 * Which plant has most of a measure in one cell of a grid.
 *
 * @param measure its full name
 * @param plant the option or season plan with the highest mean
 * @param alike plants that paired intervals, which hold together over all cells and pairs of
 *     plants, do not tell apart from it
 */
public record GridLead(int cell, String measure, String plant, List<String> alike) {
  public GridLead {
    alike = List.copyOf(alike);
  }
}
