package hurdline.simulation.results;

import hurdline.account.PowerBooks;
import hurdline.compiled.MeterSchedule;
import hurdline.compiled.Periods;
import hurdline.measure.Measure;
import hurdline.plant.Tariff;
import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What electricity costs up to now: energy at the price of its hours, and each calendar month's
 * demand.
 *
 * <p>With p(k) the highest quarter-hour mean of month k, r a ratchet's share and N its months, the
 * demand billed for month k is max(p(k), r · max over the counted months j of k − N to k − 1 of
 * p(j)), the greatest of all ratchets (such a schedule stands under "billing demand" at
 * lawinsider.com: 50 % of the summer's, 20 % of the winter's highest of twelve months). Months
 * before the first day are those that the file or the calendar before gives.
 */
final class ElectricityBill {
  private static final double KWH_J = 3.6e6;

  private final PowerBooks power;
  private final MeterSchedule meter;
  private final Periods months;
  private final Tariff tariff;
  private final List<Tariff.Ratchet> ratchets;
  private int begun; // months up to now
  private double[] earlierW; // demand of months before the first day, the latest last; or null

  /**
   * @param tariff null where the file asks no money questions
   */
  ElectricityBill(PowerBooks power, MeterSchedule meter, Periods months, Tariff tariff) {
    this.power = power;
    this.meter = meter;
    this.months = months;
    this.tariff = tariff;
    ratchets = tariff == null ? List.of() : tariff.ratchets();
  }

  /**
   * @param demandW of the last months of a calendar before, the latest last; null where there is
   *     none and what the file says of the months before holds
   */
  void open(double[] demandW) {
    earlierW = demandW;
  }

  /** Demand of the last months, as many as ratchets look at, the latest last. */
  double[] latestW() {
    int looked = ratchets.stream().mapToInt(Tariff.Ratchet::months).max().orElse(0);
    double[] latest = new double[looked];
    for (int ago = 1; ago <= looked; ago++) {
      int month = months.count() - ago;
      latest[looked - ago] = month >= 0 ? power.peakW(month) : earlierW(month);
    }
    return latest;
  }

  /**
   * @param month below 0, −1 the last before the first day
   */
  private double earlierW(int month) {
    int at = earlierW == null ? -1 : earlierW.length + month;
    return at >= 0 ? earlierW[at] : 0;
  }

  /** What a ratchet holds against a month of the calendar, or one before it. */
  private double countedW(Tariff.Ratchet ratchet, int month) {
    if (month < 0 && earlierW == null) {
      return month == -1 ? ratchet.beforeW() : 0;
    }
    Month ofYear = months.firstDate(0).getMonth().plus(month);
    boolean counts = ratchet.counted().contains(ofYear);
    return !counts ? 0 : month < 0 ? earlierW(month) : power.peakW(month);
  }

  /** What ratchets bill at least for a month. */
  private double leastW(int month) {
    double least = 0;
    for (Tariff.Ratchet ratchet : ratchets) {
      for (int ago = 1; ago <= ratchet.months(); ago++) {
        least = Math.max(least, ratchet.share() * countedW(ratchet, month - ago));
      }
    }
    return least;
  }

  /** From now on what months cost that have begun by then; a ratchet bills later ones later. */
  void upTo(double nowS) {
    begun = 0;
    while (begun < months.count() && months.fromS(begun) < nowS) {
      begun++;
    }
  }

  /** What a month's demand costs, in all windows. */
  double demand(int month) {
    double charge = Math.max(power.peakW(month), leastW(month)) * tariff.demandPerWMonth();
    for (int j = 0; j < meter.charged().size(); j++) {
      charge += demand(month, j);
    }
    return charge;
  }

  private double demand(int month, int charged) {
    double perWMonth = meter.charged().get(charged).demandPerWMonth().orElseThrow();
    return power.peakW(month, charged + 1) * perWMonth;
  }

  double demand() {
    double all = 0;
    for (int month = 0; month < begun; month++) {
      all += demand(month);
    }
    return all;
  }

  /** Of {@link #demand()}, the part that ratchets bill above what was reached. */
  private double ofRatchet() {
    double all = 0;
    for (int month = 0; month < begun; month++) {
      all += Math.max(0, leastW(month) - power.peakW(month)) * tariff.demandPerWMonth();
    }
    return all;
  }

  private double demandOf(int charged) {
    double all = 0;
    for (int month = 0; month < begun; month++) {
      all += demand(month, charged);
    }
    return all;
  }

  /** Energy and demand. */
  double total() {
    double bill = power.pricedJ(0) * tariff.energyPerJ();
    for (int k = 0; k < meter.periods().size(); k++) {
      bill += energy(k);
    }
    for (int month = 0; month < begun; month++) {
      bill += demand(month);
    }
    return bill;
  }

  private double energy(int period) {
    OptionalDouble perJ = meter.periods().get(period).energyPerJ();
    return power.pricedJ(period + 1) * perJ.orElse(0);
  }

  /** The bill, with the part of each period and of the ratchet where there are any. */
  void put(OutcomeWriter tally) {
    tally.put(Measure.MONEY_ELECTRICITY, total());
    tally.put(Measure.MONEY_DEMAND, demand());
    if (!ratchets.isEmpty()) {
      tally.put(Measure.MONEY_RATCHET, ofRatchet());
    }
    for (int k = 0; k < meter.periods().size(); k++) {
      Tariff.Period period = meter.periods().get(k);
      if (period.energyPerJ().isPresent()) {
        tally.put(Measure.MONEY_PERIOD_ENERGY, energy(k), period.name());
      }
    }
    for (int j = 0; j < meter.charged().size(); j++) {
      tally.put(Measure.MONEY_PERIOD_DEMAND, demandOf(j), meter.charged().get(j).name());
    }
  }

  /** What was drawn at each period's price and its highest demand, and by each base load. */
  void putEnergy(OutcomeWriter tally) {
    for (int k = 0; k < meter.periods().size(); k++) {
      Tariff.Period period = meter.periods().get(k);
      if (period.energyPerJ().isPresent()) {
        tally.put(Measure.ENERGY_PERIOD, power.pricedJ(k + 1) / KWH_J, period.name());
      }
    }
    for (int j = 0; j < meter.charged().size(); j++) {
      tally.put(Measure.ENERGY_PERIOD_PEAK, peakW(j) / 1000, meter.charged().get(j).name());
    }
    for (int load = 0; load < meter.baseLoads().size(); load++) {
      String name = meter.baseLoads().get(load).name();
      tally.put(Measure.BASE_LOAD_ENERGY, meter.baseWh(load) / 1000, name);
    }
  }

  private double peakW(int charged) {
    double peak = 0;
    for (int month = 0; month < months.count(); month++) {
      peak = Math.max(peak, power.peakW(month, charged + 1));
    }
    return peak;
  }
}
