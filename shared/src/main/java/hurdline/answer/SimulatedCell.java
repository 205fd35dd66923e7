package hurdline.answer;

import java.util.List;

/**
 * What the plants of a grid came to in one cell: kept on disk until the grid is whole.
 *
 * @param cell its place in the list of cells, from 0
 * @param plants those that could be simulated, in their order
 */
public record SimulatedCell(int cell, List<Plant> plants) {
  public SimulatedCell {
    plants = List.copyOf(plants);
  }

  /**
   * One plant.
   *
   * @param rows every measure
   * @param drawn replication by replication, the measures by which cells are set against each other
   */
  public record Plant(String name, List<GridRow> rows, List<Series> drawn) {
    public Plant {
      rows = List.copyOf(rows);
      drawn = List.copyOf(drawn);
    }
  }

  /**
   * A measure over the replications.
   *
   * @param values handed over, not to be written again
   */
  public record Series(String measure, double[] values) {}
}
