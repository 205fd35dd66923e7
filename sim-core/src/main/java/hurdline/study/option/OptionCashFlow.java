package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.economics.Cash;
import hurdline.plant.Money;
import hurdline.study.replicate.LifeCalendar;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** What an option pays and brings in over its lives, each amount at its date. */
public final class OptionCashFlow {
  /** Dates so near to each other are one. */
  private static final double INSTANT_YR = 1e-9;

  /** A week: a pause this short between two calendars is not worth a date of its own. */
  private static final double PAUSE_YR = 7 / 365.25;

  private static final Money.Growth AT_FILE_PRICES = new Money.Growth(0, 0, 0, 0);

  private final CompareAnswer.Option option;
  private final Money money;
  private final AnnualMarginGain margin;

  public OptionCashFlow(CompareAnswer.Option option, Money money, AnnualMarginGain margin) {
    this.option = option;
    this.money = money;
    this.margin = margin;
  }

  List<Cash> lives() {
    return IntStream.range(0, margin.lives()).mapToObj(this::of).toList();
  }

  /** The net present value of each life. */
  public double[] values() {
    return lives().stream()
        .mapToDouble(life -> life.netPresentValue(money.discountPerYr()))
        .toArray();
  }

  /** What each life brings in, cost and salvage left out. */
  List<Cash> incomes() {
    return IntStream.range(0, margin.lives()).mapToObj(this::income).toList();
  }

  private Cash income(int life) {
    NavigableMap<Double, Double> cash = new TreeMap<>();
    pay(cash, 0, 0);
    income(cash, life);
    return cash(cash);
  }

  private Cash of(int life) {
    NavigableMap<Double, Double> cash = new TreeMap<>();
    pay(cash, 0, -option.cost());
    income(cash, life);
    pay(cash, option.lifeYr(), option.salvage());
    return cash(cash);
  }

  private static Cash cash(NavigableMap<Double, Double> cash) {
    return new Cash(
        cash.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
        cash.values().stream().mapToDouble(Double::doubleValue).toArray());
  }

  private void income(NavigableMap<Double, Double> cash, int life) {
    put(cash, margin.option(), life, 1);
    put(cash, margin.base(), life, -1);
  }

  /**
   * A date without payment stands where a calendar begins after a pause, so that running sums stay
   * level in it.
   */
  private void put(NavigableMap<Double, Double> cash, MoneyYears plant, int life, int sign) {
    double reachedYr = 0;
    for (LifeCalendar.Share share : plant.shares(option.lifeYr())) {
      if (share.fromYr() > reachedYr + PAUSE_YR) {
        pay(cash, share.fromYr(), 0);
      }
      reachedYr = share.toYr();
      pay(cash, share.toYr(), sign * plant.amount(life, share, money.growth()));
    }
  }

  private static void pay(NavigableMap<Double, Double> cash, double atYr, double amount) {
    Double near = cash.ceilingKey(atYr - INSTANT_YR);
    cash.merge(near != null && near < atYr + INSTANT_YR ? near : atYr, amount, Double::sum);
  }

  /** What is added to the margin in the first year of each life, at the file's prices. */
  double[] firstYear() {
    return added(0, Math.min(1, option.lifeYr()), 1);
  }

  /**
   * What is added to the margin in each later year, on average over a life, at the file's prices;
   * empty if there is none.
   */
  double[] laterYears() {
    double laterYr = option.lifeYr() - 1;
    return laterYr > INSTANT_YR ? added(1, option.lifeYr(), laterYr) : new double[0];
  }

  private double[] added(double fromYr, double toYr, double overYr) {
    return IntStream.range(0, margin.lives())
        .mapToDouble(
            life ->
                (within(margin.option(), life, fromYr, toYr)
                        - within(margin.base(), life, fromYr, toYr))
                    / overYr)
        .toArray();
  }

  /** Earnings of a year of a calendar count evenly over it. */
  private double within(MoneyYears plant, int life, double fromYr, double toYr) {
    double sum = 0;
    for (LifeCalendar.Share share : plant.shares(option.lifeYr())) {
      double overlapYr = Math.min(toYr, share.toYr()) - Math.max(fromYr, share.fromYr());
      if (overlapYr > INSTANT_YR) {
        sum +=
            plant.amount(life, share, AT_FILE_PRICES) * overlapYr / (share.toYr() - share.fromYr());
      }
    }
    return sum;
  }
}
