package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Machine;
import hurdline.simulation.activity.LotPosting;
import hurdline.simulation.activity.Milling;
import java.util.ArrayList;
import java.util.List;

/** What each mill took in and drew on each of its screens, month by month. */
final class MonthScreens {
  private static final double TONNE_KG = 1000;
  private static final double KWH_J = 3.6e6;

  private final CompiledLines layout;
  private final int[] mills;
  private final double[][] totals; // [month][mass and energy of each screen in turn]

  MonthScreens(CompiledLines layout, int months) {
    this.layout = layout;
    mills = Milling.mills(layout);
    totals = new double[months][columns().size()];
  }

  List<Outcome.Column> columns() {
    List<Outcome.Column> columns = new ArrayList<>();
    for (int m : mills) {
      Machine.HammerMill mill = (Machine.HammerMill) layout.machine[m];
      for (Machine.Screen screen : mill.screens()) {
        for (Measure measure :
            List.of(Measure.MACHINE_SCREEN_MASS_IN, Measure.MACHINE_SCREEN_ENERGY)) {
          columns.add(new Outcome.Column(measure.of(mill.name(), screen.name()), measure, ""));
        }
      }
    }
    return columns;
  }

  void book(int month, LotPosting booking) {
    int at = 0;
    for (int m : mills) {
      for (int s = 0; s < booking.screenKg[m].length; s++) {
        totals[month][at++] = booking.screenKg[m][s] / TONNE_KG;
        totals[month][at++] = booking.screenJ[m][s] / KWH_J;
      }
    }
  }

  /** What the month brought, from a place on. */
  void put(int month, double[] to, int from) {
    for (int at = 0; at < totals[month].length; at++) {
      to[from + at] = totals[month][at] - (month > 0 ? totals[month - 1][at] : 0);
    }
  }
}
