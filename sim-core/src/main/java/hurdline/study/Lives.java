package hurdline.study;

import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.estimate.Interval;
import hurdline.estimate.Intervals;
import hurdline.estimate.Quantiles;
import hurdline.estimate.Summary;
import hurdline.plant.Money;
import hurdline.worth.Cash;
import hurdline.worth.InternalRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Lives of an option, drawn from the replications as years.
 *
 * <p>Where years follow each other the lives are their chains, which share no year and count as independent. Else life k of n has as its years the replications k, k+1, … in their order, and goes on from the first
 * after the last: the seed that settles the replications settles the lives, no life has a year twice,
 * and over all lives each replication is each year of a life exactly once. Lives share years, so they
 * count as no more than ⌊n/years⌋ independent ones where an interval is taken over them; the average
 * over all is at least as sure as that over so many without a common year. The mean net present value
 * needs no such care: it is the mean over replications of what a life would be worth all of whose years
 * are that one, and these are independent.
 */
final class Lives {
  private final CompareAnswer.Option option;
  private final Money money;
  private final MarginYears margin;
  private final double withinYr;
  private final LifeCash life;
  private final int years;
  private final List<Cash> lives = new ArrayList<>();

  /** @param withinYr time within which it is asked how likely it pays back; else its life */
  Lives(
      CompareAnswer.Option option, Money money, MarginYears margin, OptionalDouble withinYr) {
    this.option = option;
    this.money = money;
    this.margin = margin;
    this.withinYr = withinYr.orElse(Double.POSITIVE_INFINITY);
    life = new LifeCash(option, money, margin);
    years = life.years();
    if (margin.isFollowing()) {
      lives.addAll(life.chains());
    } else if (areEnough()) {
      for (int one = 0; one < margin.count(); one++) {
        int first = one;
        lives.add(life.of(year -> (first + year - 1) % margin.count()));
      }
    }
  }

  /** Whether a life can be drawn without a year twice. */
  boolean areEnough() {
    return margin.count() >= years;
  }

  List<PaybackRow> payback() {
    double rate = money.discountPerYr();
    return List.of(
        value(rate),
        defined(
            Quantity.INTERNAL_RATE_OF_RETURN, "share", over(cash -> InternalRate.of(cash).only()), rates(), -1),
        payback(Quantity.SIMPLE_PAYBACK, 0),
        payback(Quantity.DISCOUNTED_PAYBACK, rate),
        chance(Quantity.CHANCE_OF_PAYBACK, this::paysBackInTime),
        chance(Quantity.CHANCE_OF_LOSS, cash -> cash.netPresentValue(rate) < 0));
  }

  private boolean paysBackInTime(Cash cash) {
    double after = cash.paybackYr(0);
    return Double.isFinite(after) && after <= withinYr;
  }

  private double[] over(ToDoubleFunction<Cash> figure) {
    return lives.stream().mapToDouble(figure).toArray();
  }

  private PaybackRow value(double rate) {
    double[] values = over(cash -> cash.netPresentValue(rate));
    Summary mean = life.value();
    return row(
        Quantity.NET_PRESENT_VALUE, money.currency(), mean.mean(), mean.mean95(), values, "");
  }

  private PaybackRow payback(Quantity quantity, double rate) {
    if (option.cost() == 0) {
      return nothingToPayBack(quantity, "yr");
    }
    double[] values = over(cash -> cash.paybackYr(rate));
    long never = Arrays.stream(values).filter(Double::isInfinite).count();
    return defined(quantity, "yr", values, never == 0 ? "" : "never in " + ofLives(never), 0);
  }

  /**
   * A figure whose mean exists only if every life has one.
   *
   * @param least what it cannot be below; the interval ends there
   */
  private PaybackRow defined(Quantity quantity, String unit, double[] values, String says, double least) {
    boolean all = Arrays.stream(values).allMatch(Double::isFinite);
    double mean = all ? Summary.of(values).mean() : Double.NaN;
    Interval known =
        all ? Intervals.mean95(values, margin.count() / years).within(least, Double.POSITIVE_INFINITY) : Interval.NONE;
    return row(quantity, unit, mean, known, values, says);
  }

  private String rates() {
    long none = lives.stream().filter(cash -> InternalRate.of(cash).rates().isEmpty()).count();
    long several = lives.stream().filter(cash -> InternalRate.of(cash).rates().size() > 1).count();
    List<String> said = new ArrayList<>();
    if (none > 0) {
      said.add("none in " + ofLives(none));
    }
    if (several > 0) {
      said.add("several in " + ofLives(several));
    }
    return String.join(", ", said);
  }

  private String ofLives(long count) {
    return count + " of " + lives.size() + " lives";
  }

  private interface Event {
    boolean happens(Cash cash);
  }

  private PaybackRow nothingToPayBack(Quantity quantity, String unit) {
    double none = Double.NaN;
    return new PaybackRow(
        option.name(), quantity, unit, none, none, none, none, none, none, "nothing to pay back");
  }

  private PaybackRow chance(Quantity quantity, Event event) {
    if (option.cost() == 0 && quantity == Quantity.CHANCE_OF_PAYBACK) {
      return nothingToPayBack(quantity, "share");
    }
    double share = (double) lives.stream().filter(event::happens).count() / lives.size();
    int independent = margin.count() / years;
    double low = Intervals.chance95((int) Math.floor(share * independent), independent).low();
    double high = Intervals.chance95((int) Math.ceil(share * independent), independent).high();
    return new PaybackRow(
        option.name(),
        quantity,
        "share",
        share,
        low,
        high,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        "");
  }

  private PaybackRow row(
      Quantity quantity, String unit, double mean, Interval known, double[] values, String says) {
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
        says);
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

  List<LifeRow> rows() {
    List<LifeRow> rows = new ArrayList<>();
    for (Cash cash : lives) {
      rows.add(
          new LifeRow(
              option.name(),
              rows.size() + 1,
              cash.netPresentValue(money.discountPerYr()),
              InternalRate.of(cash).only(),
              paidBack(cash, 0),
              paidBack(cash, money.discountPerYr())));
    }
    return rows;
  }

  private double paidBack(Cash cash, double rate) {
    double after = cash.paybackYr(rate);
    return option.cost() == 0 || Double.isInfinite(after) ? Double.NaN : after;
  }

  List<CashRow> cash() {
    List<double[]> sums =
        lives.stream().map(cash -> cash.runningSums(money.discountPerYr())).toList();
    List<CashRow> rows = new ArrayList<>();
    for (int year = 0; year <= years; year++) {
      int at = year;
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
