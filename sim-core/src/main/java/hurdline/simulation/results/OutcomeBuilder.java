package hurdline.simulation.results;

import hurdline.account.BinBooks;
import hurdline.account.IntakeBooks;
import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.event.QueueStatistics;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.simulation.activity.Crewing;
import hurdline.simulation.activity.Feeding;
import hurdline.simulation.activity.Filling;
import hurdline.simulation.activity.LotPosting;
import hurdline.simulation.activity.Milling;
import hurdline.simulation.activity.Orders;
import hurdline.simulation.activity.PackageGrades;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.Rostering;
import hurdline.simulation.activity.StateRecorder;
import hurdline.simulation.activity.Stopping;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.List;

/**
 * From the books of a replication to its measures; checks the balance on the way.
 *
 * <p>One file because it is the one list of what a replication hands on.
 */
public final class OutcomeBuilder {
  private static final double HOUR_S = 3600;
  private static final double TONNE_KG = 1000;
  private static final double DAY_S = 86_400;
  private static final double KWH_J = 3.6e6;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Stopping stopping;
  private final Filling filling;
  private final Milling milling;
  private final Orders orders;
  private final StateRecorder watching;
  private final MaterialBooks material;
  private final BinBooks binBooks;
  private final IntakeBooks intake;
  private final Makers makers;
  private final PackageKinds kinds;
  private final MoneyResult money;
  private final PeriodTotals periods;
  private final YearTotals years;
  private final Crewing crewing;
  private final CropLeft left;
  private final CropShares sharing;
  private final IntakeResults intakes;
  private final SeasonEndResults season;
  private final Balance balance;
  private final double[] openedKg; // [bin]
  private final double[] openedDryKg;
  private final OutcomeWriter tally = new OutcomeWriter();

  public OutcomeBuilder(
      ReplicationState present,
      Haulage haulage,
      int[] component,
      Stopping stopping,
      Filling filling,
      Milling milling,
      Orders orders,
      Stacking stacking,
      Hauling hauling,
      Feeding feeding,
      Rostering rostering,
      StateRecorder watching,
      MaterialBooks material,
      BinBooks binBooks,
      IntakeBooks intake) {
    this.present = present;
    this.stopping = stopping;
    this.filling = filling;
    this.milling = milling;
    this.orders = orders;
    this.watching = watching;
    this.material = material;
    this.binBooks = binBooks;
    this.intake = intake;
    layout = present.layout;
    makers = new Makers(layout, layout.makes);
    kinds = new PackageKinds(layout);
    crewing = new Crewing(present, haulage, rostering, intake);
    CropPurchases purchases = new CropPurchases(layout, haulage, feeding, material, intake);
    CoverCost covers = new CoverCost(layout, purchases, intake);
    money =
        new MoneyResult(
            present, makers, crewing, stopping, filling, orders, watching, material, purchases,
            covers);
    left = new CropLeft(layout, rostering, feeding, intake, money);
    sharing = new CropShares(present, watching, material, left);
    season = new SeasonEndResults(layout, rostering);
    FormFed forms = new FormFed(layout, feeding, intake);
    periods = new PeriodTotals(present, watching, material, money, forms);
    intakes =
        new IntakeResults(layout, haulage, feeding, material, intake, purchases, covers, forms);
    years = new YearTotals(present, watching, stacking, hauling, intake, money);
    balance = new Balance(present, component, feeding, material, intake);
    openedKg = new double[layout.bins];
    openedDryKg = new double[layout.bins];
  }

  /**
   * @param demandW counted demand of the last months of the calendar before, the latest last; null
   *     where there is none
   */
  public void reset(double[] demandW) {
    balance.open();
    money.productStock().open();
    for (int b = 0; b < layout.bins; b++) {
      openedKg[b] = present.network.massKg(b);
      openedDryKg[b] = dryKg(b);
    }
    money.bill().open(demandW);
    money.markets().reset();
    periods.reset();
    years.reset();
    sharing.reset();
  }

  /** Demand of the last months that a ratchet still looks at after the horizon, the latest last. */
  public double[] latestDemandW() {
    return money.bill().latestW();
  }

  public boolean periodEnds(double nowS) {
    return periods.endsAt(nowS) || years.endsAt(nowS);
  }

  /**
   * @param booking which has the energy of each screen up to now
   */
  public void bookPeriods(double nowS, LotPosting booking) {
    money.markets().book(nowS);
    periods.book(nowS, booking);
    sharing.book(nowS);
    if (years.endsAt(nowS)) {
      years.book(nowS);
    }
  }

  public Outcome outcome(int replication, LotPosting booking, int balesLeft) {
    double endS = present.nowS;
    watching.states.bookAll(endS);
    watching.holders.bookAll(endS);
    watching.power.bookAll(endS);
    tally.start();
    intakes.put(tally, endS);
    lines();
    machines(endS, booking);
    bins(endS);
    products();
    money.productStock().putProducts(tally);
    money.productStock().putStores(tally, endS);
    resources();
    trucks();
    tally.putMass(Measure.AIR_DUST, material.dustKg, material.dustDryKg);
    tally.putMass(Measure.WASTE_MASS, material.wasteKg / TONNE_KG, material.wasteDryKg / TONNE_KG);
    tally.put(Measure.ENERGY_TOTAL, watching.power.totalJ() / KWH_J);
    tally.put(Measure.ENERGY_PEAK, periods.peakW() / 1000);
    money.bill().putEnergy(tally);
    new CrewResults(present, crewing).put(tally);
    money.put(tally);
    season.put(tally);
    if (layout.plant.money().isPresent()) {
      tally.put(Measure.MONEY_MARGIN_LESS_FORGONE, money.margin() - left.forgone());
    }
    balance.checkStores(filling, money.sold());
    tally.put(Measure.BALANCE_RESIDUAL, balance.residual());
    List<Outcome.Column> columns = List.copyOf(tally.columns());
    double[] values = tally.values();
    return new Outcome(
        replication,
        columns,
        values,
        periods.weekColumns(),
        periods.weeks(),
        periods.monthColumns(),
        periods.months(),
        levels(),
        money.productStock().levels(present.roster.days()),
        ways(),
        years.outcome(columns, values),
        sharing.outcome(),
        balesLeft);
  }

  private void mass(Measure measure, double kg, double dryKg, String... names) {
    tally.putMass(measure, kg / TONNE_KG, dryKg / TONNE_KG, names);
  }

  private void lines() {
    for (int l = 0; l < layout.lines; l++) {
      String line = layout.naming.lines.name(l);
      double scheduled = 0;
      for (int cause = 0; cause < layout.causes.count(); cause++) {
        scheduled += watching.holders.lastedS(l, cause);
      }
      tally.put(Measure.LINE_HOURS_SCHEDULED, scheduled / HOUR_S, line);
      for (int cause = 0; cause < layout.causes.count(); cause++) {
        if (canHold(l, cause)) {
          tally.put(
              Measure.LINE_HOURS_LIMITED_BY,
              watching.holders.lastedS(l, cause) / HOUR_S,
              line,
              layout.causes.name(cause));
        }
      }
      tally.put(Measure.LINE_HOURS_AFTER_SHIFT, present.afterShift.seconds(l) / HOUR_S, line);
      double fed = material.fedKg[l];
      tally.put(
          Measure.LINE_THROUGHPUT,
          scheduled > 0 ? fed / TONNE_KG / (scheduled / HOUR_S) : Double.NaN,
          line);
      for (Product product : layout.plant.products()) {
        int p = layout.naming.products.index(product.name());
        if (makers.makes(l, p)) {
          double made = material.productKg[l * layout.naming.products.count() + p];
          tally.put(Measure.LINE_TURNOUT, fed > 0 ? made / fed : Double.NaN, line, product.name());
          packagesPerHour(line, product, made, scheduled);
        }
      }
    }
  }

  /** Nothing is said where packages of several masses are filled, or part of it is left loose. */
  private void packagesPerHour(String line, Product product, double madeKg, double scheduledS) {
    int p = layout.naming.products.index(product.name());
    if (kinds.isOneKind(p)) {
      double packages = madeKg / kinds.of(p).get(0).massKg();
      double perHour = scheduledS > 0 ? packages / (scheduledS / HOUR_S) : Double.NaN;
      tally.put(Measure.LINE_PACKAGES_PER_HOUR, perHour, line, product.name());
    }
  }

  private boolean canHold(int line, int cause) {
    return periods.canHold(line, cause);
  }

  private void machines(double endS, LotPosting booking) {
    for (int m = 0; m < layout.machines; m++) {
      String name = layout.machine[m].name();
      for (State state : State.values()) {
        double lasted = watching.states.lastedS(m, state.ordinal());
        tally.put(Measure.MACHINE_HOURS, lasted / HOUR_S, name, state.word());
      }
      mass(Measure.MACHINE_MASS_IN, material.machineKg[m], material.machineDryKg[m], name);
      if (layout.machine[m] instanceof Machine.Cyclone cyclone) {
        double lost = 1 - cyclone.collects();
        tally.putMass(
            Measure.MACHINE_AIR_DUST,
            (material.machineKg[m] - material.machineDriedKg[m]) * lost,
            material.machineDryKg[m] * lost,
            name);
      }
      tally.put(Measure.MACHINE_ENERGY, watching.power.joules(m, endS) / KWH_J, name);
      for (int k : layout.stops.of(m)) {
        String stop = layout.stops.stop(k).name();
        tally.put(Measure.MACHINE_STOP_COUNT, stopping.count[k], name, stop);
        tally.put(Measure.MACHINE_STOP_HOURS, stopping.hoursS[k] / HOUR_S, name, stop);
      }
      if (layout.machine[m] instanceof Machine.HammerMill mill) {
        for (int s = 0; s < mill.screens().size(); s++) {
          String screen = mill.screens().get(s).name();
          tally.put(Measure.MACHINE_SCREEN_HOURS, milling.runningS[m][s] / HOUR_S, name, screen);
          mass(
              Measure.MACHINE_SCREEN_MASS_IN,
              booking.screenKg[m][s],
              booking.screenDryKg[m][s],
              name,
              screen);
          tally.put(Measure.MACHINE_SCREEN_ENERGY, booking.screenJ[m][s] / KWH_J, name, screen);
        }
        tally.put(Measure.MACHINE_SCREEN_CHANGES, milling.swaps[m], name);
      }
    }
  }

  private void bins(double endS) {
    for (int b = 0; b < layout.bins; b++) {
      String name = layout.naming.bins.name(b);
      tally.put(Measure.BIN_LEVEL_MEAN, binBooks.kgSeconds(b) / endS / TONNE_KG, name);
      tally.put(Measure.BIN_LEVEL_PEAK, binBooks.peakKg(b) / TONNE_KG, name);
      if (layout.opensAt[b] > 0) {
        mass(Measure.BIN_LEVEL_START, openedKg[b], openedDryKg[b], name);
      }
      double dryKg = dryKg(b);
      mass(Measure.BIN_LEVEL_END, dryKg + present.network.waterKg(b), dryKg, name);
      tally.put(Measure.BIN_HOURS_FULL, binBooks.fullS(b) / HOUR_S, name);
      tally.put(Measure.BIN_HOURS_EMPTY, binBooks.emptyS(b) / HOUR_S, name);
    }
  }

  private double dryKg(int bin) {
    double dryKg = 0;
    for (int c = 0; c < layout.components; c++) {
      dryKg += present.network.dryKg(bin, c);
    }
    return dryKg;
  }

  /** Where a product is packed in several ways, how many of each. */
  private void packages(Product product, int p) {
    if (kinds.of(p).size() > 1) {
      for (Packaging kind : kinds.of(p)) {
        tally.put(
            Measure.PRODUCT_PACKAGES_OF,
            money.packages(product, kind),
            product.name(),
            kind.name());
      }
    }
  }

  private void products() {
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      mass(Measure.PRODUCT_MASS, material.productKg(p), material.productDryKg(p), product.name());
      tally.put(Measure.PRODUCT_SOLD, money.soldKg(product) / TONNE_KG, product.name());
      if (product.moisture().atMost().isPresent()) {
        tally.put(Measure.PRODUCT_TOO_WET, material.tooWetAsIsKg[p] / TONNE_KG, product.name());
      }
      tally.put(Measure.PRODUCT_PACKAGES, money.packages(product), product.name());
      packages(product, p);
      if (layout.plant.money().isPresent()) {
        tally.put(Measure.PRODUCT_REVENUE, money.revenue(product), product.name());
        money.putStockWorth(tally, product);
      }
      grades(product, p);
      money.markets().put(tally, product);
      money.purge().put(tally, product);
      if (!product.orders().isEmpty()) {
        tally.put(Measure.PRODUCT_LATE_DAYS, orders.lateDays(p, present.nowS), product.name());
        eachOrder(product.name(), p);
      }
    }
    if (layout.plant.money().isPresent()) {
      money.freight().put(tally);
    }
  }

  /** When each order of a product was met, by due date, and what it cost that it was late. */
  private void eachOrder(String product, int p) {
    for (int i = 0; i < orders.count(p); i++) {
      String n = String.valueOf(i + 1);
      tally.put(Measure.PRODUCT_ORDER_MET, orders.metDay(p, i), product, n);
      tally.put(Measure.PRODUCT_ORDER_LATE_DAYS, orders.lateDays(p, i, present.nowS), product, n);
      tally.put(Measure.PRODUCT_ORDER_MISSING, orders.missingKg(p, i) / TONNE_KG, product, n);
      if (layout.plant.money().isPresent()) {
        tally.put(Measure.PRODUCT_ORDER_PENALTY, orders.lateCost(p, i, present.nowS), product, n);
      }
    }
  }

  /** What is left in a product's packages, and what that does to its price. */
  private void grades(Product product, int p) {
    PackageGrades grades = filling.grades;
    if (!grades.has(p)) {
      return;
    }
    String name = product.name();
    String component = product.cleanliness().orElseThrow().component();
    tally.put(Measure.PRODUCT_SHARE_MEAN, grades.meanShare(p), name, component);
    tally.put(Measure.PRODUCT_SHARE_SD, grades.shareDeviation(p), name, component);
    double alike = money.atOnePrice(product);
    tally.put(
        Measure.PRODUCT_PRICE_FACTOR, alike != 0 ? grades.revenue(p) / alike : Double.NaN, name);
    if (layout.plant.money().isPresent()) {
      double less = money.markets().pointCost(p);
      tally.put(Measure.PRODUCT_POINT_COST, grades.pointCost(p) - less, name);
    }
  }

  private void resources() {
    QueueStatistics books = present.resources.books();
    for (int r = 0; r < layout.naming.resources.count(); r++) {
      String name = layout.naming.resources.name(r);
      double hours = books.hoursS(r) * present.resources.count(r);
      tally.put(Measure.RESOURCE_BUSY, hours > 0 ? books.busyS(r) / hours : 0, name);
      tally.put(
          Measure.RESOURCE_WAIT_MEAN,
          books.requests(r) > 0 ? books.waitsS(r) / books.requests(r) / 60 : 0,
          name);
      tally.put(Measure.RESOURCE_QUEUE_PEAK, books.waitingPeak(r), name);
    }
  }

  private void trucks() {
    for (var delivery : layout.plant.deliveries()) {
      int c = layout.naming.crops.index(delivery.crop());
      int trips = intake.trips.trips(c);
      tally.put(Measure.TRUCKS_TRIPS, trips, delivery.crop());
      tally.put(
          Measure.TRUCKS_WAIT_MEAN,
          trips > 0 ? intake.trips.waitS(c) / trips / 60 : Double.NaN,
          delivery.crop());
      tally.put(
          Measure.TRUCKS_TURNAROUND_MEAN,
          trips > 0 ? intake.trips.turnaroundS(c) / trips / 60 : Double.NaN,
          delivery.crop());
      tally.put(Measure.TRUCKS_WAITED_FOR_ROOM, intake.room.waitS(c) / DAY_S, delivery.crop());
    }
  }

  private int[][][] levels() {
    int crops = layout.naming.crops.count();
    int places = layout.plant.yard().places().size();
    int days = present.roster.days();
    int[][][] levels = new int[crops][places + 1][days];
    for (int c = 0; c < crops; c++) {
      for (int p = 0; p <= places; p++) {
        for (int d = 0; d < days; d++) {
          levels[c][p][d] = intake.levels.dayPeak(c, p, d);
        }
      }
    }
    return levels;
  }

  private double[][][] ways() {
    double[][][] ways = new double[layout.heads][][];
    for (int h = 0; h < layout.heads; h++) {
      ways[h] = new double[layout.stretch[h].nodes][];
      for (int node = 0; node < ways[h].length; node++) {
        ways[h][node] = material.wayKg[h][node].clone();
      }
    }
    return ways;
  }
}
