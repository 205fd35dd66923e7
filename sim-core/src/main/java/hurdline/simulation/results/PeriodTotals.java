package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.Causes;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import hurdline.compiled.Stretch;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Crop;
import hurdline.plant.Machine;
import hurdline.plant.Product;
import hurdline.simulation.activity.LotPosting;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.StateRecorder;
import java.util.List;

/** Running totals at the end of each week and month, and from them what each of these brought. */
final class PeriodTotals {
  private static final double HOUR_S = 3600;
  private static final double TONNE_KG = 1000;
  private static final double KWH_J = 3.6e6;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StateRecorder watching;
  private final MaterialBooks material;
  private final MoneyResult money;
  private final FormFed forms;
  private final Periods weeks;
  private final Periods months;
  private final boolean[][] holds; // [line][cause]
  private final PeriodMeasures weekMeasures = new PeriodMeasures(); // running totals
  private final PeriodMeasures monthMeasures = new PeriodMeasures(); // what each month brought
  private final double[][] weekTotals;
  private final double[] monthEnergyJ;
  private final double[] monthRevenue; // from the first day on
  private final MonthScreens screens;
  private int week;
  private int month;

  PeriodTotals(
      ReplicationState present,
      StateRecorder watching,
      MaterialBooks material,
      MoneyResult money,
      FormFed forms) {
    this.present = present;
    this.forms = forms;
    this.watching = watching;
    this.material = material;
    this.money = money;
    layout = present.layout;
    weeks = present.roster.weeks();
    months = present.roster.months();
    holds = new boolean[layout.lines][layout.causes.count()];
    for (int l = 0; l < layout.lines; l++) {
      lineCauses(l);
    }
    // once for each bin, so that lines joined over several bins know of one another
    for (int b = 0; b < layout.bins; b++) {
      joinLinesOverBins();
    }
    weekMeasures();
    weekTotals = new double[weeks.count()][weekMeasures.count()];
    monthEnergyJ = new double[months.count()];
    monthRevenue = new double[months.count()];
    screens = new MonthScreens(layout, months.count());
    monthMeasures();
  }

  /** Causes that can hold a line: its machines', resources, and the words. */
  private void lineCauses(int l) {
    Causes causes = layout.causes;
    boolean[] held = holds[l];
    for (int h = 0; h < layout.heads; h++) {
      if (layout.headLine[h] == l) {
        stretchCauses(l, layout.stretch[h]);
      }
    }
    for (int m : layout.alongside[l]) {
      machineCauses(held, m);
    }
    for (int cause :
        new int[] {
          causes.noBales, causes.cropDone, causes.noOrder, causes.noCrew, causes.setOnTable
        }) {
      held[cause] = true;
    }
    held[causes.keptApart] = isKeptApart(l);
    for (int cause : causes.resource) {
      held[cause] = true;
    }
  }

  /** Whether loads of a line's crop are kept apart at all. */
  private boolean isKeptApart(int l) {
    String crop = layout.naming.crops.name(layout.crop[l]);
    return layout.plant.deliveries().stream()
        .anyMatch(of -> layout.plant.baseOf(of.crop()).equals(crop) && of.release().isPresent());
  }

  /** Trails run through bins, so lines that share one can be held by each other's machines. */
  private void joinLinesOverBins() {
    for (int b = 0; b < layout.bins; b++) {
      boolean[] all = new boolean[layout.causes.count()];
      for (int[] heads : new int[][] {layout.producers[b], layout.draws[b]}) {
        for (int h : heads) {
          for (int cause = 0; cause < all.length; cause++) {
            all[cause] |= holds[layout.headLine[h]][cause];
          }
        }
      }
      for (int[] heads : new int[][] {layout.producers[b], layout.draws[b]}) {
        for (int h : heads) {
          for (int cause = 0; cause < all.length; cause++) {
            holds[layout.headLine[h]][cause] |= all[cause];
          }
        }
      }
    }
  }

  private void stretchCauses(int l, Stretch stretch) {
    for (int m : stretch.machine) {
      if (m >= 0) {
        machineCauses(holds[l], m);
      }
    }
  }

  private void machineCauses(boolean[] held, int m) {
    held[m] = true;
    if (layout.causes.change[m] >= 0) {
      held[layout.causes.change[m]] = true;
    }
    for (int k : layout.stops.of(m)) {
      held[layout.causes.stop[k]] = true;
    }
    if (layout.machine[m] instanceof Machine.Packer && layout.stores.count > 0) {
      for (int h : layout.headsOf[m]) {
        storeCauses(held, layout.stretch[h]);
      }
    }
  }

  /** Stores of what a stretch packs. */
  private void storeCauses(boolean[] held, Stretch stretch) {
    for (int k = 0; k < stretch.sinks; k++) {
      int target = stretch.sinkTarget[k];
      int[] packed =
          switch (stretch.sinkKind[k]) {
            case PACKED -> new int[] {target};
            case PACKED_FROM_MILL -> layout.makes[target];
            default -> new int[0];
          };
      for (int p : packed) {
        if (p >= 0 && layout.stores.has(p)) {
          held[layout.causes.store[layout.stores.storeOf[p]]] = true;
        }
      }
    }
  }

  boolean canHold(int line, int cause) {
    return holds[line][cause];
  }

  private void weekMeasures() {
    for (Crop crop : layout.plant.crops()) {
      int c = layout.naming.crops.index(crop.name());
      boolean isForm = crop.formOf().isPresent(); // a crop is with all its forms
      weekMeasures.add(
          week -> (isForm ? forms.kg(c) : fedKg(c)) / TONNE_KG, Measure.MASS_FED, crop.name());
    }
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      weekMeasures.add(
          week -> material.productKg(p) / TONNE_KG, Measure.PRODUCT_MASS, product.name());
    }
    for (int m = 0; m < layout.machines; m++) {
      for (State state : State.values()) {
        hoursOf(m, state);
      }
    }
    for (int l = 0; l < layout.lines; l++) {
      for (int cause = 0; cause < layout.causes.count(); cause++) {
        if (holds[l][cause]) {
          hoursLimited(l, cause);
        }
      }
    }
  }

  private double fedKg(int crop) {
    double fed = 0;
    for (int l = 0; l < layout.lines; l++) {
      fed += layout.crop[l] == crop ? material.fedKg[l] : 0;
    }
    return fed;
  }

  private void hoursOf(int m, State state) {
    weekMeasures.add(
        week -> watching.states.lastedS(m, state.ordinal()) / HOUR_S,
        Measure.MACHINE_HOURS,
        layout.machine[m].name(),
        state.word());
  }

  private void hoursLimited(int l, int cause) {
    weekMeasures.add(
        week -> watching.holders.lastedS(l, cause) / HOUR_S,
        Measure.LINE_HOURS_LIMITED_BY,
        layout.naming.lines.name(l),
        layout.causes.name(cause));
  }

  private void monthMeasures() {
    monthMeasures.add(
        month -> (monthEnergyJ[month] - (month > 0 ? monthEnergyJ[month - 1] : 0)) / KWH_J,
        Measure.ENERGY_TOTAL);
    monthMeasures.add(month -> watching.power.peakW(month) / 1000, Measure.ENERGY_PEAK);
    if (layout.plant.money().isPresent()) {
      monthMeasures.add(month -> money.wagesByMonth()[month], Measure.MONEY_WAGES);
      monthMeasures.add(
          month -> monthRevenue[month] - (month > 0 ? monthRevenue[month - 1] : 0),
          Measure.MONEY_REVENUE);
      monthMeasures.add(money::demand, Measure.MONEY_DEMAND);
    }
    screens.addTo(monthMeasures);
  }

  void reset() {
    week = 0;
    month = 0;
  }

  boolean endsAt(double nowS) {
    return week < weeks.count() && nowS == weeks.toS(week)
        || month < months.count() && nowS == months.toS(month);
  }

  /**
   * All that heads have drawn is booked; takes the totals of the periods that end now.
   *
   * @param booking which has the energy of each screen up to now
   */
  void book(double nowS, LotPosting booking) {
    if (week < weeks.count() && nowS == weeks.toS(week)) {
      watching.states.bookAll(nowS);
      watching.holders.bookAll(nowS);
      weekMeasures.write(week, weekTotals[week]);
      week++;
    }
    if (month < months.count() && nowS == months.toS(month)) {
      watching.power.periodEnds(nowS);
      monthEnergyJ[month] = watching.power.totalJ();
      monthRevenue[month] = money.revenue();
      screens.book(month, booking);
      month++;
    }
  }

  List<Outcome.Column> weekColumns() {
    return weekMeasures.columns();
  }

  List<Outcome.Column> monthColumns() {
    return monthMeasures.columns();
  }

  /** Highest quarter-hour mean of the horizon. */
  double peakW() {
    double peak = 0;
    for (int k = 0; k < months.count(); k++) {
      peak = Math.max(peak, watching.power.peakW(k));
    }
    return peak;
  }

  double[][] weeks() {
    double[][] brought = new double[weekTotals.length][];
    for (int w = 0; w < brought.length; w++) {
      brought[w] = weekTotals[w].clone();
      for (int k = 0; w > 0 && k < brought[w].length; k++) {
        brought[w][k] -= weekTotals[w - 1][k];
      }
    }
    return brought;
  }

  double[][] months() {
    double[][] brought = new double[months.count()][monthMeasures.count()];
    for (int k = 0; k < brought.length; k++) {
      monthMeasures.write(k, brought[k]);
    }
    return brought;
  }
}
