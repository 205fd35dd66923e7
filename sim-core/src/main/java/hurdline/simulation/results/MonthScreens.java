package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Machine;
import hurdline.simulation.activity.LotPosting;
import hurdline.simulation.activity.Milling;
import java.util.List;

/** What each mill took in and drew on each of its screens, month by month. */
final class MonthScreens {
  private static final double TONNE_KG = 1000;
  private static final double KWH_J = 3.6e6;

  private final CompiledLines layout;
  private final int[] mills;
  private final double[][][] massKg; // [month][mill][screen], from the first day to the month's end
  private final double[][][] energyJ;

  MonthScreens(CompiledLines layout, int months) {
    this.layout = layout;
    mills = Milling.mills(layout);
    massKg = new double[months][mills.length][];
    energyJ = new double[months][mills.length][];
    for (int month = 0; month < months; month++) {
      for (int at = 0; at < mills.length; at++) {
        massKg[month][at] = new double[screens(at).size()];
        energyJ[month][at] = new double[screens(at).size()];
      }
    }
  }

  private List<Machine.Screen> screens(int at) {
    return ((Machine.HammerMill) layout.machine[mills[at]]).screens();
  }

  void addTo(PeriodMeasures months) {
    for (int at = 0; at < mills.length; at++) {
      for (int s = 0; s < screens(at).size(); s++) {
        add(months, Measure.MACHINE_SCREEN_MASS_IN, massKg, TONNE_KG, at, s);
        add(months, Measure.MACHINE_SCREEN_ENERGY, energyJ, KWH_J, at, s);
      }
    }
  }

  private void add(
      PeriodMeasures months, Measure measure, double[][][] totals, double unit, int at, int s) {
    months.add(
        month -> totals[month][at][s] / unit - (month > 0 ? totals[month - 1][at][s] / unit : 0),
        measure,
        layout.machine[mills[at]].name(),
        screens(at).get(s).name());
  }

  void book(int month, LotPosting booking) {
    for (int at = 0; at < mills.length; at++) {
      System.arraycopy(
          booking.screenKg[mills[at]], 0, massKg[month][at], 0, massKg[month][at].length);
      System.arraycopy(
          booking.screenJ[mills[at]], 0, energyJ[month][at], 0, energyJ[month][at].length);
    }
  }
}
