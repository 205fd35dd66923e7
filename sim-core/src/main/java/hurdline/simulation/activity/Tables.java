package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Step;
import java.util.Arrays;

/** Feed tables, one a line: bales in the order in which they were set down. */
public final class Tables {
  private final int[][] ring;
  private final int[] first;
  private final int[] count;

  static Tables of(CompiledLines layout) {
    int[] places = new int[layout.lines];
    for (Line line : layout.plant.lines()) {
      places[layout.naming.lines.index(line.name())] = places(layout, line);
    }
    return new Tables(places);
  }

  /**
   * Places on all tables: never more lifts are under way or asked for, since each has one at least.
   */
  public static int places(CompiledLines layout) {
    return layout.plant.lines().stream().mapToInt(line -> places(layout, line)).sum();
  }

  private static int places(CompiledLines layout, Line line) {
    for (Step step : line.steps()) {
      if (step.machine().equals(line.feed()) && step.table().isPresent()) {
        return step.table().getAsInt();
      }
    }
    return ((Machine.BaleFeeder) layout.machine[layout.naming.machines.index(line.feed())]).table();
  }

  private Tables(int[] places) {
    ring = new int[places.length][];
    for (int t = 0; t < places.length; t++) {
      ring[t] = new int[places[t]];
    }
    first = new int[places.length];
    count = new int[places.length];
  }

  void reset() {
    Arrays.fill(first, 0);
    Arrays.fill(count, 0);
  }

  public int places(int table) {
    return ring[table].length;
  }

  int count(int table) {
    return count[table];
  }

  /** The bale at a place of the order, 0 the next. */
  int bale(int table, int place) {
    return ring[table][(first[table] + place) % ring[table].length];
  }

  void setDown(int table, int bale) {
    ring[table][(first[table] + count[table]) % ring[table].length] = bale;
    count[table]++;
  }

  int take(int table) {
    int bale = bale(table, 0);
    first[table] = (first[table] + 1) % ring[table].length;
    count[table]--;
    return bale;
  }

  void clear(int table) {
    count[table] = 0;
  }
}
