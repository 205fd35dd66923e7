package hurdline.audit;

/** The columns of the tables, spelled here and nowhere else in this package. */
final class Columns {
  static final String OPTION = "alternative";
  static final String PLAN = "alternative";
  static final String AGAINST = "against";
  static final String REPLICATION = "replication";
  static final String MEASURE = "measure";
  static final String UNIT = "unit";
  static final String VALUE = "value";
  static final String MEAN = "mean";
  static final String LOW_95 = "low_95";
  static final String HIGH_95 = "high_95";
  static final String SD = "sd";
  static final String P05 = "p05";
  static final String P50 = "p50";
  static final String P95 = "p95";
  static final String MIN = "min";
  static final String MAX = "max";
  static final String DEFINITION = "definition";
  static final String REPLICATIONS = "replications";
  static final String ERROR = "error";
  static final String ADJUSTED_MEAN = "adjusted";
  static final String ADJUSTED_ERROR = "adjusted_error";
  static final String INTERVAL = "interval";
  static final String WEEK = "week";
  static final String MONTH = "month";
  static final String DATE = "date";
  static final String PLACE = "place";
  static final String CROP = "crop";

  /** What stands for all places of a crop together. */
  static final String ALL_PLACES = "*";

  static final String MACHINE = "machine";
  static final String LINE = "line";
  static final String CAUSE = "cause";
  static final String HOURS = "hours";
  static final String SHARE = "share";
  static final String SHARE_LOW = "share_low_95";
  static final String SHARE_HIGH = "share_high_95";
  static final String BASE_MEAN = "base_mean";
  static final String OPTION_MEAN = "alternative_mean";
  static final String DIFFERENCE = "difference";
  static final String LOW_JOINT = "low_joint";
  static final String HIGH_JOINT = "high_joint";
  static final String SIGNIFICANT = "significant";
  static final String NEEDED = "replications_needed";
  static final String VARIANCE_REMOVED = "variance_removed";
  static final String BALES = "bales";
  static final String AREA_M2 = "area_m2";
  static final String CHANCE = "chance_of_overflow";
  static final String HELD_AT_FIELD = "held_at_field_bales";
  static final String LOST_T = "lost_t";
  static final String WAITING_D = "truck_waiting_d";
  static final String MONEY = "money_per_year";
  static final String MONEY_LOW = "money_low_95";
  static final String MONEY_HIGH = "money_high_95";
  static final String GROUND = "ground_per_year";
  static final String WAITING = "waiting_per_year";
  static final String MARGIN_BELOW = "margin_below_no_limit";
  static final String RECEIVING = "receiving_wages";
  static final String ABOVE = "money_above_cheapest";
  static final String QUANTILE = "quantile";
  static final String WEIGHT_T = "weight_t";
  static final String MOISTURE = "moisture";
  static final String DRY_T = "dry_t";
  static final String WORKED_T = "mass_in_t";
  static final String WORTH = "worth";
  static final String LIFE = "life";
  static final String QUANTITY = "quantity";
  static final String YEAR = "year";
  static final String INPUT = "input";
  static final String LOW = "low";
  static final String HIGH = "high";
  static final String NPV = "net_present_value";
  static final String SWING = "swing";
  static final String NPV_AT_LOW = "net_present_value_at_low";
  static final String NPV_AT_HIGH = "net_present_value_at_high";
  static final String FROM = "from";
  static final String TO = "to";
  static final String FOUND = "found";
  static final String WHAT = "what";
  static final String EFFECT = "gain";

  static final String CHOSEN_PLAN = "plan";
  static final String STATUS = "status";
  static final String COST = "cost";

  private Columns() {}
}
