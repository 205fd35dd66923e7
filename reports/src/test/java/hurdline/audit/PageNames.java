package hurdline.audit;

import hurdline.measure.Measure;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the page by which its tables and rows are found, spelled here and nowhere else in
 * this package.
 */
final class PageNames {
  static final String ANSWER = "the answer";
  static final String ADJUSTED = "adjusted for the drawn crop";
  static final String BOTTLENECKS = "What limits the %s";
  static final String BOTTLENECKS_SIDE_BY_SIDE = "What limits the %s, side by side";
  static final String FLOWS = "Flow through the %s, mean ton/h";
  static final String MACHINE_HOURS = "Where each machine's time goes";
  static final String STOPS = "stops";
  static final String RESOURCES = "resources";
  static final String TRUCKS = "trucks";
  static final String FED_BY_WEEK = "%s fed by week";
  static final String PRODUCTS_BY_WEEK = "Products of the %s by week";
  static final String IN_THE_YARD = "%s in the yard";
  static final String IN_THE_STORE = "Finished goods in the %s";
  static final String STORES = "stores";
  static final String IN_STORES = "products in stores";
  static final String MONEY = "Money over the calendar";
  static final String PRODUCTS = "products";
  static final String MARGIN_BY_LINE = "margin by line";
  static final String ENERGY_BY_MONTH = "Electricity by month";
  static final String PEAK_BY_MONTH = "Highest quarter-hour of each month";
  static final String MEAN_PEAK_BY_MONTH =
      "Highest quarter-hour of each month, mean over the replications";
  static final String DEMAND_BY_MONTH = "what peak demand costs by month";
  static final String DIFFERENCES = "%s against the plant as it stands";
  static final String RANKED = "alternatives by difference from the plant as it stands";
  static final String WORTH = "what each option is worth";
  static final String PAID_BACK = "When %s has paid back";
  static final String CASH = "Cash over the life of %s, discounted";
  static final String SENSITIVITY = "What the worth of %s is sensitive to";
  static final String BREAK_EVEN = "break-even of each option";
  static final String YARD_OVERFLOW = "Chance that a yard of each size overflows";
  static final String YARD_PEAK = "Peak of the yard without limit";
  static final String YARD_LOSSES =
      "What a smaller yard holds back, and what wastes away; dashed: as the file has it";
  static final String YARD_MONEY = "What a yard of each size costs a year";
  static final String YARD_WITHOUT_LIMIT = "%s in the yard without limit";
  static final String PLACES = "bales by place, the plant as the file has it";
  static final String PLANS = "plans";
  static final String BUILDING = "What the building is used for";
  static final String CHANGEOVERS = "avoided changeovers";
  static final String WEEKS_OF_PLAN = "The year at a glance, %s";
  static final String CROPS = "crops";
  static final String MACHINES_OF_PLAN = "Each machine's hours by crop, %s";
  static final String RATIOS = "ratios after ISO 22400-2";
  static final String PLAN_MONEY = "What each plan earns";
  static final String OWNER = "owner and tenant";
  static final String CREWS = "hand hours";
  static final String PLAN_AGAINST_PLAN = "plan against plan";
  static final String PLANS_LEFT = "plans that may be the best";
  static final String ROUNDS = "rounds";
  static final String ABOVE = "above ";
  static final String LESS = " less ";

  private static final Pattern FED = Pattern.compile("(.+) fed");
  private static final Pattern RATE = Pattern.compile("rate of (.+)");
  private static final Pattern LEFT_OVER = Pattern.compile("carry-over of (.+)");
  private static final Pattern PEAK = Pattern.compile("peak in the yard, (.+)");

  private PageNames() {}

  /**
   * The measure that a row such as "Stalk line: carry-over" of a run's main figures is about; none
   * of words and of shares of hours.
   */
  static Optional<String> ofRun(WrittenAnswer answer, String label) {
    String group = label.replaceAll(": .*", "");
    String row = label.replaceAll("^.*: ", "");
    PlantFacts plant = answer.plant("base");
    Optional<String> line = named(answer, "lines", group);
    if (row.startsWith("peak of ")) {
      return named(answer, "crops", row.substring("peak of ".length()).replaceAll(", room .*", ""))
          .map(Measure.YARD_PEAK::of);
    }
    if (line.isEmpty()) {
      return row.startsWith("margin, ")
          ? named(answer, "lines", row.substring("margin, ".length()))
              .map(Measure.MONEY_LINE_MARGIN_PER_TONNE::of)
          : row.equals("margin") ? Optional.of(Measure.MONEY_MARGIN.of()) : Optional.empty();
    }
    return switch (row) {
      case "scheduled" -> line.map(Measure.LINE_HOURS_SCHEDULED::of);
      case "throughput" -> line.map(Measure.LINE_THROUGHPUT::of);
      case "carry-over" -> line.map(Measure.SEASON_LEFT_OVER::of);
      default ->
          row.endsWith(" fed")
              ? line.map(of -> Measure.MASS_FED.of(MassCheck.crop(plant, of)))
              : made(answer, line.get(), row);
    };
  }

  private static Optional<String> made(WrittenAnswer answer, String line, String row) {
    if (row.startsWith("packages of ")) {
      return named(answer, "products", row.replaceAll("^packages of ", ""))
          .map(product -> Measure.LINE_PACKAGES_PER_HOUR.of(line, product));
    }
    if (row.startsWith("turnout of ")) {
      return named(answer, "products", row.replaceAll("^turnout of ", ""))
          .map(product -> Measure.LINE_TURNOUT.of(line, product));
    }
    return named(answer, "products", row).map(Measure.PRODUCT_MASS::of);
  }

  private static Optional<String> named(WrittenAnswer answer, String section, String shown) {
    String name = answer.names().named(section, shown);
    return answer.plant("base").names(section).contains(name)
        ? Optional.of(name)
        : Optional.empty();
  }

  private static String crop(WrittenAnswer answer, String shown) {
    return answer.names().named("crops", shown);
  }

  /** The measure that a row of main figures is about. */
  static Optional<String> measure(WrittenAnswer answer, String label) {
    String row = label.replaceAll(" \\(from .*", ""); // on how many replications it rests
    Matcher fed = FED.matcher(row);
    Matcher rate = RATE.matcher(row);
    Matcher left = LEFT_OVER.matcher(row);
    Matcher peak = PEAK.matcher(row);
    if (fed.matches()) {
      return Optional.of(Measure.MASS_FED.of(crop(answer, fed.group(1))));
    } else if (rate.matches()) {
      return Optional.of(Measure.LINE_THROUGHPUT.of(answer.names().named("lines", rate.group(1))));
    } else if (left.matches()) {
      PlantFacts plant = answer.plant("base");
      return plant.names("lines").stream()
          .filter(line -> MassCheck.crop(plant, line).equals(crop(answer, left.group(1))))
          .findFirst()
          .map(Measure.SEASON_LEFT_OVER::of);
    } else if (peak.matches()) {
      return Optional.of(Measure.YARD_PEAK.of(crop(answer, peak.group(1))));
    }
    return switch (row) {
      case "margin" -> Optional.of(Measure.MONEY_MARGIN.of());
      case "margin less margin forgone" -> Optional.of(Measure.MONEY_MARGIN_LESS_FORGONE.of());
      case "electricity" -> Optional.of(Measure.ENERGY_TOTAL.of());
      default ->
          Optional.of(answer.names().named("products", row))
              .filter(name -> name.matches("[A-Za-z0-9_-]+"))
              .map(Measure.PRODUCT_MASS::of)
              .filter(measure -> answer.samples(answer.options().get(0)).has(measure));
    };
  }
}
