package hurdline.audit;

/** The files of an answer, spelled here and nowhere else in this package. */
public final class Tables {
  static final String MEASURES = "measures.csv";
  static final String SUMMARY = "summary.csv";
  static final String ADJUSTED = "adjusted.csv";
  static final String WEEKS = "weeks.csv";
  static final String MONTHS = "months.csv";
  static final String YARD_LEVELS = "yard_levels.csv";
  static final String STORE_LEVELS = "store_levels.csv";
  static final String ORDERS = "orders.csv";
  static final String DIFFERENCES = "differences.csv";
  static final String BOTTLENECKS = "bottlenecks.csv";
  static final String PAYBACK = "payback.csv";
  static final String CASH = "cash.csv";
  static final String AFTER_TAX = "after_tax.csv";
  static final String SERVICE_LIVES = "service_lives.csv";
  static final String TORNADO = "tornado.csv";
  static final String BREAK_EVEN = "break_even.csv";
  static final String GAIN = "gain.csv";
  static final String SELECTION = "selection.csv";
  static final String PEAKS = "peaks.csv";
  static final String YARD_SIZES = "yard_sizes.csv";
  static final String CHEAPEST = "cheapest.csv";
  static final String LOADS = "loads.csv";
  static final String ACRES = "acres.csv";
  static final String PLANS = "plans.csv";
  static final String MACHINE_WEEKS = "machine_weeks.csv";
  static final String CHANGEOVERS = "changeovers.csv";

  static final String CHOICE = "choice.csv";
  static final String SCREENED = "screened_out.csv";
  static final String FRONTIER = "frontier.csv";
  static final String EFFECTS = "effects.csv";
  static final String ROUNDS = "rounds.csv";

  static final String INPUT_PLANTS = "input_plants.csv";

  private Tables() {}
}
