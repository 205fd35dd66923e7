package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.compiled.Periods;
import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.StateRecorder;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What each year of a horizon of several earned and cost, from the running totals at the end of
 * each.
 *
 * <p>A shift and a changeover are paid in the year in which they begin, and a month's peak in that
 * in which it is reached. Stock that lies in the yard as a year ends is worth its price and opens
 * the next. A horizon of a year or less is one year, and costs nothing here.
 */
final class YearTotals {
  private final Periods years;
  private final StateRecorder watching;
  private final Stacking stacking;
  private final Hauling hauling;
  private final IntakeBooks intake;
  private final MoneyResult money;
  private final OutcomeWriter tally = new OutcomeWriter();
  private final List<double[]> totals = new ArrayList<>();

  YearTotals(
      ReplicationState present,
      StateRecorder watching,
      Stacking stacking,
      Hauling hauling,
      IntakeBooks intake,
      MoneyResult money) {
    this.watching = watching;
    this.stacking = stacking;
    this.hauling = hauling;
    this.intake = intake;
    this.money = money;
    years = present.roster.years();
  }

  void reset() {
    totals.clear();
  }

  /** Whether a year ends that is not the last. */
  boolean endsAt(double nowS) {
    return totals.size() + 1 < years.count() && nowS == years.toS(totals.size());
  }

  /** All that heads have drawn is booked; takes the totals of the year that ends now. */
  void book(double nowS) {
    watching.power.bookAll(nowS);
    intake.clearStock();
    stacking.yearEnds(nowS);
    hauling.weighing.bookWeighedIn();
    totals.add(total());
    intake.clearStock();
  }

  private double[] total() {
    tally.start();
    money.put(tally);
    money.putProducts(tally);
    return tally.values();
  }

  /**
   * At the end of the horizon, after everything is booked.
   *
   * @param all the measures of the whole horizon
   */
  Outcome.Years outcome(List<Outcome.Column> columns, double[] all) {
    if (years.count() == 1) {
      return new Outcome.Years(columns, new double[][] {all});
    }
    totals.add(total());
    int[] amounts = IntStream.range(0, tally.columns().size()).filter(this::isAmount).toArray();
    double[][] values = new double[totals.size()][amounts.length];
    for (int year = 0; year < values.length; year++) {
      for (int k = 0; k < amounts.length; k++) {
        double before = year == 0 ? 0 : totals.get(year - 1)[amounts[k]];
        values[year][k] = totals.get(year)[amounts[k]] - before;
      }
    }
    return new Outcome.Years(IntStream.of(amounts).mapToObj(tally.columns()::get).toList(), values);
  }

  private boolean isAmount(int column) {
    Measure measure = tally.columns().get(column).measure();
    return measure.unit() == Unit.MONEY;
  }
}
