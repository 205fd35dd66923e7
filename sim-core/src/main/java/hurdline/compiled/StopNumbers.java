package hurdline.compiled;

import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The one numbering of all machines' stops: machine by machine, by name within one. Whatever has a
 * place for each stop (its cause, its slot, its job, its count) has it under this number.
 */
public final class StopNumbers {
  private final List<Stop> stops = new ArrayList<>();
  private final List<Integer> machines = new ArrayList<>();
  private final int[][] of;
  private final List<boolean[]> lines = new ArrayList<>();
  private final List<double[]> planned = new ArrayList<>();

  StopNumbers(Plant plant, Indexes naming, Machine[] machine) {
    of = new int[machine.length][];
    for (int m = 0; m < machine.length; m++) {
      List<Stop> own =
          machine[m].common().stops().stream().sorted(Comparator.comparing(Stop::name)).toList();
      of[m] = new int[own.size()];
      for (int i = 0; i < own.size(); i++) {
        of[m][i] = stops.size();
        stops.add(own.get(i));
        machines.add(m);
        lines.add(lines(own.get(i), plant, naming));
        planned.add(PlannedStops.beginS(own.get(i), plant.calendar()));
      }
    }
  }

  private static boolean[] lines(Stop stop, Plant plant, Indexes naming) {
    boolean[] belongs = new boolean[naming.lines.count()];
    Set<String> names = stop.lines(plant.lines());
    for (int l = 0; l < belongs.length; l++) {
      belongs[l] = stop.count().isOfAll() || names.contains(naming.lines.name(l));
    }
    return belongs;
  }

  /** [line] whether a stop belongs to it; read only. */
  public boolean[] lines(int stop) {
    return lines.get(stop);
  }

  /**
   * When a planned stop begins, in order; the first may lie before the first day, where what is
   * left of it reaches into it. Null where it comes due on a count; read only.
   */
  public double[] plannedS(int stop) {
    return planned.get(stop);
  }

  public int count() {
    return stops.size();
  }

  /** The numbers of a machine's stops; read only. */
  public int[] of(int machine) {
    return of[machine];
  }

  public int machine(int stop) {
    return machines.get(stop);
  }

  public Stop stop(int stop) {
    return stops.get(stop);
  }
}
