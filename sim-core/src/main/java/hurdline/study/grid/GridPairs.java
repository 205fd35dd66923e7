package hurdline.study.grid;

import hurdline.answer.GridBest;
import hurdline.answer.GridChange;
import hurdline.answer.GridKey;
import hurdline.answer.GridLead;
import hurdline.answer.SimulatedCell;
import hurdline.statistics.Interval;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.Summary;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One measure of a grid, its cells and plants set against each other replication by replication.
 *
 * <p>Which cell or plant is the best is found in the same figures by which its lead is then judged,
 * so the intervals hold together for all pairs that might have come to be asked for, not for those
 * only that were.
 */
final class GridPairs {
  private final String measure;
  private final List<String> plants;
  private final int cells;
  private final double[][][] series;

  /**
   * @param cells how many cells the grid has, those left out counted
   */
  GridPairs(String measure, List<String> plants, int cells, List<SimulatedCell> simulated) {
    this.measure = measure;
    this.plants = plants;
    this.cells = cells;
    series = new double[plants.size()][cells][];
    for (SimulatedCell cell : simulated) {
      for (SimulatedCell.Plant plant : cell.plants()) {
        plant.drawn().stream()
            .filter(drawn -> drawn.measure().equals(measure))
            .forEach(drawn -> series[plants.indexOf(plant.name())][cell.cell()] = drawn.values());
      }
    }
  }

  /** The best cell of each plant. */
  List<GridBest> best() {
    List<GridBest> best = new ArrayList<>();
    for (int plant = 0; plant < plants.size(); plant++) {
      double[][] of = series[plant];
      int[] there = there(of);
      int most = most(there, of);
      if (most >= 0) {
        int pairs = Math.max(1, there.length * (there.length - 1) / 2);
        List<Integer> alike =
            IntStream.of(there)
                .filter(cell -> cell != most && hasMean(of[cell]))
                .filter(cell -> !difference(of[cell], of[most], pairs).excludes0())
                .boxed()
                .toList();
        best.add(new GridBest(measure, plants.get(plant), most, alike));
      }
    }
    return best;
  }

  /** The best plant of each cell; none where there is but one, the others being left out. */
  List<GridLead> leads() {
    List<GridLead> leads = new ArrayList<>();
    for (int cell = 0; cell < cells; cell++) {
      double[][] here = here(cell);
      int most = most(there(here), here);
      if (most >= 0 && there(here).length > 1) {
        List<String> alike =
            IntStream.of(there(here))
                .filter(plant -> plant != most && hasMean(here[plant]))
                .filter(plant -> !difference(here[plant], here[most], plantPairs()).excludes0())
                .mapToObj(plants::get)
                .toList();
        leads.add(new GridLead(cell, measure, plants.get(most), alike));
      }
    }
    return leads;
  }

  /**
   * @param leads in the order of the one key's values
   */
  List<GridChange> changes(List<GridLead> leads, GridKey key) {
    List<GridChange> changes = new ArrayList<>();
    for (int at = 1; at < leads.size(); at++) {
      GridLead below = leads.get(at - 1);
      GridLead above = leads.get(at);
      if (!below.plant().equals(above.plant())) {
        GridChange change = change(below, above, key);
        // Plants without any significant difference change places by accident.
        if (change.lastBefore() >= 0 || change.firstAfter() >= 0) {
          changes.add(change);
        }
      }
    }
    return changes;
  }

  private GridChange change(GridLead below, GridLead above, GridKey key) {
    int before = plants.indexOf(below.plant());
    int after = plants.indexOf(above.plant());
    int lastBefore = below.cell();
    while (lastBefore >= 0 && !(gain(before, after, lastBefore).high() < 0)) {
      lastBefore--;
    }
    int firstAfter = above.cell();
    while (firstAfter < cells && !(gain(before, after, firstAfter).low() > 0)) {
      firstAfter++;
    }
    double low = -meanGain(before, after, below.cell());
    double high = meanGain(before, after, above.cell());
    double from = key.values().get(below.cell()).number();
    double to = key.values().get(above.cell()).number();
    double at = low + high > 0 ? from + (to - from) * low / (low + high) : (from + to) / 2;
    return new GridChange(
        measure,
        below.plant(),
        above.plant(),
        at,
        lastBefore,
        firstAfter == cells ? -1 : firstAfter);
  }

  /** By how much the one plant is above the other in a cell; no limits where either is left out. */
  private Interval gain(int before, int after, int cell) {
    double[] from = series[before][cell];
    double[] to = series[after][cell];
    return from == null || to == null ? Interval.NONE : difference(from, to, plantPairs());
  }

  private double meanGain(int before, int after, int cell) {
    double[] from = series[before][cell];
    double[] to = series[after][cell];
    return from == null || to == null ? 0 : PairedDifference.of(from, to, 1).difference();
  }

  private int plantPairs() {
    return Math.max(1, cells * plants.size() * (plants.size() - 1) / 2);
  }

  private static Interval difference(double[] from, double[] to, int pairs) {
    return PairedDifference.of(from, to, pairs).joint();
  }

  private double[][] here(int cell) {
    return IntStream.range(0, plants.size())
        .mapToObj(plant -> series[plant][cell])
        .toArray(double[][]::new);
  }

  private static int[] there(double[][] all) {
    return IntStream.range(0, all.length).filter(at -> all[at] != null).toArray();
  }

  private static boolean hasMean(double[] values) {
    return Summary.of(values).count() > 0;
  }

  /** The first with the highest mean; −1 if none has one. */
  private static int most(int[] among, double[][] of) {
    int most = -1;
    double highest = Double.NEGATIVE_INFINITY;
    for (int at : among) {
      double mean = Summary.of(of[at]).mean();
      if (mean > highest) {
        highest = mean;
        most = at;
      }
    }
    return most;
  }
}
