package hurdline.audit;

import hurdline.measure.Measure;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** What the plant file and the replications say of the service lives of one option. */
final class LifeFacts {
  private final WrittenAnswer answer;
  private final String option;
  private final PlantFacts plant;
  private final double[] added;

  LifeFacts(WrittenAnswer answer, String option) {
    this.answer = answer;
    this.option = option;
    plant = answer.plant("base");
    double[] with = answer.samples(option).all(Measure.MONEY_MARGIN);
    double[] without = answer.samples(answer.options().get(0)).all(Measure.MONEY_MARGIN);
    added = new double[with.length];
    for (int at = 0; at < added.length; at++) {
      added[at] = with[at] - without[at];
    }
  }

  double cost() {
    return amount(".cost");
  }

  private double amount(String key) {
    double sum = 0;
    for (String one : option.split("\\+")) {
      sum += plant.amount("options." + one + key);
    }
    return sum;
  }

  double discount() {
    return plant.amount("money.discount_rate") * Amount.of("1 yr");
  }

  /** What a margin of a replication may be off by. */
  double rounding() {
    Samples base = answer.samples(answer.options().get(0));
    return 1e-9 * base.statistic(Measure.MONEY_REVENUE.of()).mean();
  }

  private double lifeYr(String one) {
    String path = "options." + one + ".life";
    return plant.has(path) ? plant.amount(path) / Amount.of("1 yr") : 10;
  }

  private int calendars() {
    return (int) Math.ceil(lifeYr(option) / strideYr() - 1e-9);
  }

  /** A whole year is a year; other lengths are in years of 365.25 days. */
  private double lengthYr() {
    LocalDate after = plant.date("calendar.to").plusDays(1);
    return plant.firstDay().plusYears(1).equals(after)
        ? 1
        : ChronoUnit.DAYS.between(plant.firstDay(), after) / 365.25;
  }

  private double strideYr() {
    return plant.text("calendar.repeats").filter("yearly"::equals).isPresent() ? 1 : lengthYr();
  }

  double firstEndYr() {
    return lengthYr();
  }

  /**
   * Replications from the first calendar of a life to that of the next: the calendars of the
   * longest life.
   */
  private int stride() {
    List<String> options = answer.options();
    return options.subList(1, options.size()).stream()
        .mapToInt(one -> (int) Math.ceil(lifeYr(one) / strideYr() - 1e-9))
        .max()
        .orElseThrow();
  }

  /** Whether each life's first calendar is a replication of the comparison. */
  boolean firstAreReplications(int lives) {
    return (lives - 1) * stride() < added.length;
  }

  /**
   * Whether every calendar is, as no crop that comes from fields is there at the start or left at
   * the end.
   */
  boolean areReplications(int lives) {
    boolean nothingCarried = true;
    for (String of : List.of(answer.options().get(0), option)) {
      Samples samples = answer.samples(of);
      for (String crop : plant.names("deliveries")) {
        nothingCarried &= samples.statistic(Measure.INTAKE_ON_HAND_AT_START.of(crop)).max() == 0;
        nothingCarried &= samples.statistic(Measure.INTAKE_ON_HAND_AT_END.of(crop)).max() == 0;
      }
      for (String line : plant.names("lines")) {
        boolean brought = plant.has("deliveries." + MassCheck.crop(plant, line));
        nothingCarried &=
            !brought || samples.statistic(Measure.SEASON_LEFT_OVER.of(line)).max() == 0;
      }
    }
    return nothingCarried
        && !plant.has("money.escalation")
        && (lives - 1) * stride() + calendars() <= added.length;
  }

  /** Of calendars of a year or less that begin once a year or follow each other as whole years. */
  double addedInFirstYear(int life) {
    return added[life * stride()];
  }

  /** A year, on average over the later ones. */
  double addedLater(int life) {
    double sum = 0;
    for (int at = 1; at < calendars(); at++) {
      sum += added[life * stride() + at];
    }
    return sum / (lifeYr(option) - 1);
  }

  ServiceLife life(int life) {
    return life(life, calendars());
  }

  /** Its first calendars alone. */
  ServiceLife life(int life, int calendars) {
    double[] from = new double[calendars];
    double[] to = new double[calendars];
    double[] amounts = new double[calendars];
    for (int at = 0; at < calendars; at++) {
      from[at] = at * strideYr();
      to[at] = Math.min(lifeYr(option), from[at] + lengthYr());
      amounts[at] = added[life * stride() + at] * (to[at] - from[at]) / lengthYr();
    }
    return new ServiceLife(cost(), amount(".salvage"), lifeYr(option), from, to, amounts);
  }

  /**
   * Where a price of the file lies among the ends of a swing: 1 where they are factors; none where
   * the input is no price.
   */
  Optional<Double> price(String input, String unit) {
    boolean isPrice =
        input.endsWith(".price")
            || input.startsWith("money.crop_prices.")
            || input.equals("money.wage");
    if (!isPrice) {
      return Optional.empty();
    }
    return Optional.of(unit.equals("x") ? 1 : plant.amount(input) / Amount.of("1 " + unit));
  }
}
