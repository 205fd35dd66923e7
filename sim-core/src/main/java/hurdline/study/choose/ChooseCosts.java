package hurdline.study.choose;

import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.study.replicate.LifeCalendar;
import java.util.Arrays;

/** What each plan costs, once and in a calendar. */
final class ChooseCosts {
  private final PlanSpace space;
  private final boolean worth;
  private final double ratePerYr;
  private final double calendarYr;

  /**
   * @param plant as it stands; its discount rate is the interest of all plans
   * @param worth whether the yearly cost is taken off
   */
  ChooseCosts(PlanSpace space, Plant plant, boolean worth) {
    this.space = space;
    this.worth = worth;
    ratePerYr = plant.money().map(Money::discountPerYr).orElse(0.0);
    calendarYr = LifeCalendar.of(plant.calendar()).map(LifeCalendar::strideYr).orElse(Double.NaN);
  }

  boolean isTakenOff() {
    return worth;
  }

  double ratePerYr() {
    return ratePerYr;
  }

  /** What a plan costs to buy. */
  double cost(int plan) {
    return space.cost(plan);
  }

  /** Cost of capital in a calendar; NaN where it is not asked. */
  double perCalendar(int plan) {
    return worth ? space.costPerYr(plan, ratePerYr) * calendarYr : Double.NaN;
  }

  /** Mean of years less what is taken off. */
  double mean(int plan, double[] years) {
    return Arrays.stream(net(plan, years)).average().orElse(Double.NaN);
  }

  /** Years less what is taken off. */
  double[] net(int plan, double[] years) {
    if (!worth) {
      return years;
    }
    double each = perCalendar(plan);
    double[] net = new double[years.length];
    for (int year = 0; year < net.length; year++) {
      net[year] = years[year] - each;
    }
    return net;
  }
}
