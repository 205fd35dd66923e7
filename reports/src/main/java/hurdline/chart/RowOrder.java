package hurdline.chart;

import hurdline.chart.FlowLayout.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Orders the spots of each row so that few links cross: rows are swept down and up by the mean
 * place of what a spot is linked to, the best order seen is kept, and then neighbours are swapped
 * as long as that helps. Rows are short, so counting all crossings again costs nothing.
 */
final class RowOrder {
  private static final int SWEEPS = 12;

  private final List<List<Spot>> rows;

  RowOrder(List<List<Spot>> rows) {
    this.rows = rows;
  }

  void settle() {
    List<List<Spot>> best = copy();
    int fewest = crossings();
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      sweep(sweep % 2 == 0);
      if (crossings() < fewest) {
        fewest = crossings();
        best = copy();
      }
    }
    for (int row = 0; row < rows.size(); row++) {
      rows.set(row, new ArrayList<>(best.get(row)));
    }
    while (swapNeighbours()) {
      // Each round leaves fewer crossings, so this ends.
    }
    rows.forEach(FlowLayout::layOut);
  }

  private List<List<Spot>> copy() {
    return rows.stream().map(List::copyOf).toList();
  }

  private void sweep(boolean downward) {
    for (int step = 0; step < rows.size(); step++) {
      int row = downward ? step : rows.size() - 1 - step;
      int other = downward ? row - 1 : row + 1;
      Map<Spot, Double> wanted = new HashMap<>();
      rows.get(row).forEach(spot -> wanted.put(spot, meanPlace(spot, other)));
      rows.get(row).sort(Comparator.comparingDouble(wanted::get));
      FlowLayout.layOut(rows.get(row));
    }
  }

  private static double meanPlace(Spot spot, int row) {
    return spot.linked.stream()
        .filter(other -> other.row == row)
        .mapToDouble(other -> other.x)
        .average()
        .orElse(spot.x);
  }

  private boolean swapNeighbours() {
    int before = crossings();
    for (List<Spot> row : rows) {
      for (int at = 1; at < row.size(); at++) {
        int with = crossings();
        swap(row, at);
        if (crossings() >= with) {
          swap(row, at);
        }
      }
    }
    return crossings() < before;
  }

  private static void swap(List<Spot> row, int at) {
    row.set(at - 1, row.set(at, row.get(at - 1)));
  }

  private int crossings() {
    int count = 0;
    for (int row = 0; row + 1 < rows.size(); row++) {
      count += crossings(rows.get(row), rows.get(row + 1));
    }
    return count;
  }

  /** Pairs of links between two rows whose ends stand in opposite order. */
  private static int crossings(List<Spot> upper, List<Spot> lower) {
    int count = 0;
    for (int left = 0; left < upper.size(); left++) {
      for (int right = left + 1; right < upper.size(); right++) {
        for (Spot below : upper.get(left).linked) {
          for (Spot other : upper.get(right).linked) {
            int at = lower.indexOf(below);
            int otherAt = lower.indexOf(other);
            count += otherAt >= 0 && at > otherAt ? 1 : 0;
          }
        }
      }
    }
    return count;
  }
}
