package hurdline.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Service lives: what is said of all of them follows from service_lives.csv; each life from
 * measures.csv where its calendars are replications of the comparison and none of them opens with
 * crop that the one before left.
 */
final class WorthCheck implements Check {
  static final String LIVES = "each service life";
  static final String ALL_LIVES = "all service lives";
  static final String CASH = "running sum of discounted cash";
  static final String SENSITIVITY = "sensitivity to prices";
  static final String BREAK_EVEN = "break-even";

  private static final String NPV = "net_present_value";
  private static final String RATE = "internal_rate_of_return";
  private static final String SIMPLE = "simple_payback";
  private static final String DISCOUNTED = "discounted_payback";

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    List<String> options = answer.options();
    for (String option : options.subList(1, options.size())) {
      if (answer.table(Tables.CASH).rows(Columns.OPTION, option).findAny().isPresent()) {
        new Option(answer, option, ledger).compare();
      }
    }
  }

  /** The lives of one option. */
  private static final class Option {
    private final WrittenAnswer answer;
    private final String option;
    private final Ledger ledger;
    private final LifeFacts facts;
    private final Map<String, double[]> lives = new LinkedHashMap<>();

    Option(WrittenAnswer answer, String option, Ledger ledger) {
      this.answer = answer;
      this.option = option;
      this.ledger = ledger;
      facts = new LifeFacts(answer, option);
      for (String quantity : List.of(NPV, RATE, SIMPLE, DISCOUNTED)) {
        lives.put(
            quantity,
            answer
                .table(Tables.SERVICE_LIVES)
                .rows(Columns.OPTION, option)
                .filter(row -> row.is(Columns.QUANTITY, quantity))
                .mapToDouble(row -> row.number(Columns.VALUE))
                .toArray());
      }
    }

    void compare() {
      lives.forEach(this::ofAllLives);
      chance("chance_of_loss", Statistic.of(lives.get(NPV)).below(0));
      cash();
      new AfterTaxYears(answer, option, ledger).compare();
      if (facts.areReplications(lives.get(NPV).length)) {
        for (int life = 0; life < lives.get(NPV).length; life++) {
          life(life);
        }
        added("added_in_first_year", facts::addedInFirstYear);
        added("added_in_each_later_year", facts::addedLater);
      }
      if (answer.has(Tables.TORNADO)) {
        answer.table(Tables.TORNADO).rows(Columns.OPTION, option).forEach(this::sensitivity);
      }
      if (answer.has(Tables.BREAK_EVEN)) {
        answer.table(Tables.BREAK_EVEN).rows(Columns.OPTION, option).forEach(this::breakEven);
      }
    }

    private Table.Row payback(String quantity) {
      return answer
          .table(Tables.PAYBACK)
          .row(of -> of.is(Columns.OPTION, option) && of.is(Columns.QUANTITY, quantity));
    }

    /**
     * A mean exists where every life has the figure; a rate is above -1 and a time above 0, and so
     * are their limits.
     */
    private void ofAllLives(String quantity, double[] values) {
      Statistic of = Statistic.of(values);
      if (of.count() == values.length) {
        double least =
            quantity.equals(NPV) ? Double.NEGATIVE_INFINITY : quantity.equals(RATE) ? -1 : 0;
        Table.Row row = payback(quantity);
        ledger.near(ALL_LIVES, row, of.mean(), row.number(Columns.MEAN));
        ledger.near(ALL_LIVES, row, Math.max(least, of.limits().low()), row.number(Columns.LOW_95));
        ledger.near(ALL_LIVES, row, of.limits().high(), row.number(Columns.HIGH_95));
        ledger.near(ALL_LIVES, row, of.quantile(0.05), row.number(Columns.P05));
        ledger.near(ALL_LIVES, row, of.quantile(0.5), row.number(Columns.P50));
        ledger.near(ALL_LIVES, row, of.quantile(0.95), row.number(Columns.P95));
      }
    }

    private void chance(String quantity, int happened) {
      int of = lives.get(NPV).length;
      Table.Row row = payback(quantity);
      ledger.near(ALL_LIVES, row, happened / (double) of, row.number(Columns.MEAN));
      ledger.near(ALL_LIVES, row, Statistic.chanceLow(happened, of), row.number(Columns.LOW_95));
      ledger.near(ALL_LIVES, row, Statistic.chanceHigh(happened, of), row.number(Columns.HIGH_95));
    }

    /** What the option adds to the margin, at the file's prices, in the mean over lives. */
    private void added(String quantity, IntToDoubleFunction ofLife) {
      Statistic of =
          Statistic.of(IntStream.range(0, lives.get(NPV).length).mapToDouble(ofLife).toArray());
      Table.Row row = payback(quantity);
      ledger.near(ALL_LIVES, row, of.mean(), row.number(Columns.MEAN), facts.rounding());
      ledger.near(
          ALL_LIVES, row, of.limits().low(), row.number(Columns.LOW_95), 10 * facts.rounding());
      ledger.near(
          ALL_LIVES, row, of.limits().high(), row.number(Columns.HIGH_95), 10 * facts.rounding());
    }

    private void life(int life) {
      ServiceLife own = facts.life(life);
      String where = option + " life " + (life + 1) + " ";
      double worth = own.netPresentValue(facts.discount());
      double slack = 1e-9 * (facts.cost() + Math.abs(worth)) + facts.rounding();
      ledger.near(LIVES, where + NPV, worth, lives.get(NPV)[life], slack);
      ledger.near(
          LIVES, where + RATE, own.internalRate(facts.discount()), lives.get(RATE)[life], 1e-6);
      boolean paid = facts.cost() > 0;
      ledger.near(
          LIVES,
          where + SIMPLE,
          paid ? own.paybackYr(0) : Double.NaN,
          lives.get(SIMPLE)[life],
          1e-6);
      double discounted = paid ? own.paybackYr(facts.discount()) : Double.NaN;
      ledger.near(LIVES, where + DISCOUNTED, discounted, lives.get(DISCOUNTED)[life], 1e-6);
    }

    /**
     * The sum begins with the cost, ends with the net present value, and after the first calendar
     * has its replications'.
     */
    private void cash() {
      List<Table.Row> rows = answer.table(Tables.CASH).rows(Columns.OPTION, option).toList();
      ledger.near(CASH, rows.get(0), -facts.cost(), rows.get(0).number(Columns.MEAN));
      double[] worth = lives.get(NPV);
      band(rows.get(rows.size() - 1), Statistic.of(worth));
      if (facts.firstAreReplications(worth.length)) {
        double[] sums = new double[worth.length];
        for (int life = 0; life < sums.length; life++) {
          sums[life] = facts.life(life, 1).runningSum(1, facts.discount());
        }
        band(row(rows, facts.firstEndYr()), Statistic.of(sums));
      }
      for (Table.Row row : rows) {
        ledger.between(
            CASH, row, row.number(Columns.P05), row.number(Columns.P50), row.number(Columns.P95));
      }
    }

    private static Table.Row row(List<Table.Row> rows, double yr) {
      return rows.stream()
          .filter(row -> Math.abs(row.number(Columns.YEAR) - yr) < 1e-9)
          .findFirst()
          .orElseThrow();
    }

    private void band(Table.Row row, Statistic of) {
      double slack = 1e-9 * facts.cost() + facts.rounding();
      ledger.near(CASH, row, of.mean(), row.number(Columns.MEAN), slack);
      ledger.near(CASH, row, of.quantile(0.05), row.number(Columns.P05), slack);
      ledger.near(CASH, row, of.quantile(0.5), row.number(Columns.P50), slack);
      ledger.near(CASH, row, of.quantile(0.95), row.number(Columns.P95), slack);
    }

    /** In a price the worth is a straight line through what it is at the file's. */
    private void sensitivity(Table.Row row) {
      double here = Statistic.of(lives.get(NPV)).mean();
      double low = row.number(Columns.NPV_AT_LOW);
      double high = row.number(Columns.NPV_AT_HIGH);
      double swing = Math.max(here, Math.max(low, high)) - Math.min(here, Math.min(low, high));
      ledger.near(SENSITIVITY, row, here, row.number(Columns.NPV));
      ledger.near(SENSITIVITY, row, swing, row.number(Columns.SWING), 1e-9 * Math.abs(here));
      Optional<Double> file = facts.price(row.text(Columns.INPUT), row.text(Columns.UNIT));
      if (file.isPresent()) {
        double slope = (high - low) / (row.number(Columns.HIGH) - row.number(Columns.LOW));
        double line = low + slope * (file.get() - row.number(Columns.LOW));
        ledger.near(
            SENSITIVITY,
            row,
            here,
            line,
            1e-7 * (facts.cost() + Math.abs(here)) + facts.rounding());
      }
    }

    /** A price paid at once breaks even where it takes the whole worth. */
    private void breakEven(Table.Row row) {
      if (row.is(Columns.INPUT, "options." + option + ".cost")) {
        double here = Statistic.of(lives.get(NPV)).mean();
        ledger.near(
            BREAK_EVEN, row, facts.cost() + here, row.number(Columns.VALUE), 1e-6 * facts.cost());
      }
      if (row.is(Columns.FOUND, "yes")) {
        ledger.between(
            BREAK_EVEN,
            row,
            row.number(Columns.FROM),
            row.number(Columns.VALUE),
            row.number(Columns.TO));
      }
    }
  }
}
