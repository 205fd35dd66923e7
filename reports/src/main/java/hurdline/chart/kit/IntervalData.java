package hurdline.chart.kit;

import java.util.HashMap;
import java.util.Map;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Values of bars with the limits of their intervals, which need not lie at even distances from the
 * value.
 */
public final class IntervalData extends DefaultCategoryDataset {
  private static final long serialVersionUID = 1L;

  private final transient Map<Cell, Limits> limits = new HashMap<>();

  private record Cell(Comparable<?> row, Comparable<?> column) {}

  /**
   * @param low NaN where there is no interval
   */
  record Limits(double low, double high) {
    /** Whether there is anything to draw. */
    boolean hasWidth() {
      return high > low;
    }
  }

  public void add(double value, double low, double high, String row, String column) {
    addValue(value, row, column);
    limits.put(new Cell(row, column), new Limits(low, high));
  }

  Limits limits(int row, int column) {
    return limits.get(new Cell(getRowKey(row), getColumnKey(column)));
  }
}
