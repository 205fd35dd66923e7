package hurdline.chart.flow;

import hurdline.chart.flow.FlowLayout.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Orders the spots of each row so that few links cross: rows are swept down and up by the mean
 * place of what a spot is linked to, the best order seen is kept, and then neighbours are swapped
 * as long as that helps.
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
    rows.forEach(RowOrder::number);
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

  /** Swaps neighbours whose links cross less the other way round; whether any did. */
  private boolean swapNeighbours() {
    boolean swapped = false;
    for (List<Spot> row : rows) {
      for (int at = 1; at < row.size(); at++) {
        Spot left = row.get(at - 1);
        Spot right = row.get(at);
        if (crossings(right, left) < crossings(left, right)) {
          row.set(at - 1, right);
          row.set(at, left);
          number(row);
          swapped = true;
        }
      }
    }
    return swapped;
  }

  private int crossings() {
    rows.forEach(RowOrder::number);
    int count = 0;
    for (List<Spot> row : rows) {
      for (int left = 0; left < row.size(); left++) {
        for (int right = left + 1; right < row.size(); right++) {
          count += crossings(row.get(left), row.get(right));
        }
      }
    }
    return count / 2; // each is seen from both its rows
  }

  private static void number(List<Spot> row) {
    for (int at = 0; at < row.size(); at++) {
      row.get(at).place = at;
    }
  }

  /**
   * Pairs of links of two spots of a row, the left one first, whose ends stand in opposite order.
   */
  private static int crossings(Spot left, Spot right) {
    int count = 0;
    for (Spot one : left.linked) {
      for (Spot other : right.linked) {
        count += one.row == other.row && one.place > other.place ? 1 : 0;
      }
    }
    return count;
  }
}
