package hurdline.study.option;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Gaps;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.ServiceLifeRow;
import hurdline.economics.Cash;
import hurdline.economics.InternalRate;
import hurdline.plant.Money;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.Quantiles;
import hurdline.statistics.Summary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What the service lives of an option come to.
 *
 * <p>Each life has simulated calendars of its own, so lives are independent of each other and any
 * interval over them counts each once.
 */
public final class ServiceLives {
  private final CompareAnswer.Option option;
  private final Money money;
  private final double withinYr;
  private final OptionCashFlow life;
  private final List<Cash> lives;
  private final Optional<AfterTaxLives> afterTax;

  /**
   * @param withinYr time within which it is asked how likely it pays back; else its life
   */
  public ServiceLives(
      CompareAnswer.Option option,
      Money money,
      Financing financing,
      AnnualMarginGain margin,
      OptionalDouble withinYr) {
    this.option = option;
    this.money = money;
    this.withinYr = withinYr.orElse(Double.POSITIVE_INFINITY);
    life = new OptionCashFlow(option, money, margin);
    lives = life.lives();
    afterTax =
        financing.isGiven() && option.isPurchase()
            ? Optional.of(new AfterTaxLives(option, money.discountPerYr(), financing.terms(), life))
            : Optional.empty();
  }

  public List<PaybackRow> payback() {
    double rate = money.discountPerYr();
    List<PaybackRow> rows = new ArrayList<>();
    rows.add(amount(Quantity.NET_PRESENT_VALUE, life.values()));
    rows.add(
        defined(Quantity.INTERNAL_RATE_OF_RETURN, "share", over(this::internalRate), rates(), -1));
    rows.add(payback(Quantity.SIMPLE_PAYBACK, 0));
    rows.add(payback(Quantity.DISCOUNTED_PAYBACK, rate));
    rows.add(chance(Quantity.CHANCE_OF_PAYBACK, this::paysBackInTime));
    rows.add(chance(Quantity.CHANCE_OF_LOSS, cash -> cash.netPresentValue(rate) < 0));
    rows.add(amount(Quantity.ADDED_IN_FIRST_YEAR, life.firstYear()));
    if (life.laterYears().length > 0) {
      rows.add(amount(Quantity.ADDED_IN_EACH_LATER_YEAR, life.laterYears()));
    }
    afterTax.ifPresent(after -> afterTax(rows, after));
    return rows;
  }

  private void afterTax(List<PaybackRow> rows, AfterTaxLives after) {
    rows.add(amount(Quantity.NET_PRESENT_VALUE_AFTER_TAX, after.values()));
    if (option.cost() > 0) {
      double[] years = after.lives().stream().mapToDouble(cash -> cash.paybackYr(0)).toArray();
      long never = Arrays.stream(years).filter(Double::isInfinite).count();
      rows.add(defined(Quantity.PAYBACK_AFTER_TAX, "yr", years, gaps(never, new double[0], 0), 0));
    }
  }

  /** The years after loan and tax; none where nothing is said of loan or tax. */
  public List<AfterTaxRow> afterTaxRows() {
    return afterTax.map(after -> after.rows(money.currency())).orElse(List.of());
  }

  private boolean paysBackInTime(Cash cash) {
    double after = cash.paybackYr(0);
    return Double.isFinite(after) && after <= withinYr;
  }

  private double[] over(ToDoubleFunction<Cash> figure) {
    return lives.stream().mapToDouble(figure).toArray();
  }

  private double internalRate(Cash cash) {
    return InternalRate.of(cash).against(cash, money.discountPerYr());
  }

  private PaybackRow amount(Quantity quantity, double[] values) {
    return row(
        quantity,
        money.currency(),
        Summary.of(values).mean(),
        Intervals.mean95(values),
        values,
        Gaps.none(lives.size()));
  }

  private PaybackRow payback(Quantity quantity, double rate) {
    if (option.cost() == 0) {
      return nothingToPayBack(quantity, "yr");
    }
    double[] values = over(cash -> cash.paybackYr(rate));
    long never = Arrays.stream(values).filter(Double::isInfinite).count();
    return defined(quantity, "yr", values, gaps(never, new double[0], 0), 0);
  }

  /**
   * A figure whose mean exists only if every life has one.
   *
   * @param least what it cannot be below; the interval ends there
   */
  private PaybackRow defined(
      Quantity quantity, String unit, double[] values, Gaps gaps, double least) {
    boolean all = Arrays.stream(values).allMatch(Double::isFinite);
    double mean = all ? Summary.of(values).mean() : Double.NaN;
    Interval known =
        all ? Intervals.mean95(values).within(least, Double.POSITIVE_INFINITY) : Interval.NONE;
    return row(quantity, unit, mean, known, values, gaps);
  }

  private Gaps rates() {
    long none = lives.stream().filter(cash -> Double.isNaN(internalRate(cash))).count();
    long another = lives.stream().filter(cash -> !others(cash).isEmpty()).count();
    double[] all =
        lives.stream()
            .flatMap(cash -> others(cash).stream())
            .mapToDouble(rate -> rate)
            .sorted()
            .toArray();
    return gaps(none, all, another);
  }

  /**
   * @param others internal rates of so many lives, rising
   */
  private Gaps gaps(long without, double[] others, long withOther) {
    boolean any = others.length > 0;
    return new Gaps(
        lives.size(),
        (int) without,
        (int) withOther,
        any ? others[0] : Double.NaN,
        any ? others[others.length - 1] : Double.NaN);
  }

  private List<Double> others(Cash cash) {
    return InternalRate.of(cash).othersThan(internalRate(cash));
  }

  private interface Event {
    boolean happens(Cash cash);
  }

  private PaybackRow nothingToPayBack(Quantity quantity, String unit) {
    double none = Double.NaN;
    return new PaybackRow(
        option.name(), quantity, unit, none, none, none, none, none, none, Gaps.nothingToPayBack());
  }

  private PaybackRow chance(Quantity quantity, Event event) {
    if (option.cost() == 0 && quantity == Quantity.CHANCE_OF_PAYBACK) {
      return nothingToPayBack(quantity, "share");
    }
    int happened = (int) lives.stream().filter(event::happens).count();
    double share = (double) happened / lives.size();
    Interval known = Intervals.chance95(happened, lives.size());
    return new PaybackRow(
        option.name(),
        quantity,
        "share",
        share,
        known.low(),
        known.high(),
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Gaps.none(lives.size()));
  }

  private PaybackRow row(
      Quantity quantity, String unit, double mean, Interval known, double[] values, Gaps gaps) {
    return new PaybackRow(
        option.name(),
        quantity,
        unit,
        mean,
        known.low(),
        known.high(),
        quantile(values, 0.05),
        quantile(values, 0.5),
        quantile(values, 0.95),
        gaps);
  }

  /** NaN where a life without the figure, or that never comes to it, would have a say in it. */
  private static double quantile(double[] values, double share) {
    if (Arrays.stream(values).anyMatch(Double::isNaN)) {
      return Double.NaN;
    }
    double[] rising = values.clone();
    Arrays.sort(rising);
    int above = (int) Math.ceil(share * (rising.length - 1));
    if (Double.isInfinite(rising[above])) {
      return Double.NaN;
    }
    double[] finite =
        Arrays.stream(rising).map(value -> Math.min(value, Double.MAX_VALUE)).toArray();
    return Quantiles.of(finite, share);
  }

  public List<ServiceLifeRow> rows() {
    List<ServiceLifeRow> rows = new ArrayList<>();
    for (Cash cash : lives) {
      rows.add(
          new ServiceLifeRow(
              option.name(),
              rows.size() + 1,
              cash.netPresentValue(money.discountPerYr()),
              internalRate(cash),
              others(cash).stream().findFirst().orElse(Double.NaN),
              paidBack(cash, 0),
              paidBack(cash, money.discountPerYr())));
    }
    return rows;
  }

  private double paidBack(Cash cash, double rate) {
    double after = cash.paybackYr(rate);
    return option.cost() == 0 || Double.isInfinite(after) ? Double.NaN : after;
  }

  public List<CashRow> cash() {
    List<double[]> sums =
        lives.stream().map(cash -> cash.runningSums(money.discountPerYr())).toList();
    List<CashRow> rows = new ArrayList<>();
    for (int date = 0; date < lives.get(0).atYr().length; date++) {
      int at = date;
      double[] values = sums.stream().mapToDouble(of -> of[at]).toArray();
      Summary s = Summary.of(values);
      rows.add(
          new CashRow(
              option.name(),
              lives.get(0).atYr()[at],
              money.currency(),
              s.mean(),
              s.p05(),
              s.p50(),
              s.p95()));
    }
    return rows;
  }
}
