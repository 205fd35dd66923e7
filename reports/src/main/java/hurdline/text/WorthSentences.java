package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.ServiceLifeRow;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Whether an option pays over its service life, as one says it. */
final class WorthSentences {
  /** By the interval of the net present value. */
  enum Verdict {
    PAYS,
    OPEN,
    LOSES
  }

  private static final String LIVES = "service lives";

  private final CompareAnswer answer;
  private final Spoken spoken;
  private final SpokenNames names;

  WorthSentences(CompareAnswer answer, Spoken spoken, SpokenNames names) {
    this.answer = answer;
    this.spoken = spoken;
    this.names = names;
  }

  PaybackRow netPresentValue(Option option) {
    return answer.worth(option.name(), Quantity.NET_PRESENT_VALUE).orElseThrow();
  }

  Verdict verdictOf(Option option) {
    PaybackRow worth = netPresentValue(option);
    double low = Double.isNaN(worth.low95()) ? worth.mean() : worth.low95();
    double high = Double.isNaN(worth.high95()) ? worth.mean() : worth.high95();
    return low > 0 ? Verdict.PAYS : high < 0 ? Verdict.LOSES : Verdict.OPEN;
  }

  /**
   * {@code The bigger mill pays: it adds 43,000 USD a year, give or take 10,000, and is paid back
   * after about 0.8 years}.
   */
  String verdict(Option option) {
    String name = names.option(option.name());
    boolean plural = CompareHeadline.isPlural(option.name());
    return switch (verdictOf(option)) {
      case PAYS ->
          SpokenNames.upper(name)
              + (plural ? " pay" : " pays")
              + (isBest(option) ? " most" : "")
              + (plural ? ": they " : ": it ")
              + addedIfAnything(option, plural)
              + paidBack(option, plural);
      case LOSES ->
          SpokenNames.upper(name)
              + (plural ? " do not pay: they " : " does not pay: it ")
              + added(option, plural)
              + tooLittle(option);
      case OPEN -> open(option, name, plural);
    };
  }

  /** Whether others pay too, each of them significantly less. */
  private boolean isBest(Option option) {
    List<Option> others =
        answer.options().stream()
            .filter(
                other ->
                    !other.equals(option)
                        && other.isPurchase()
                        && answer.worth(other.name(), Quantity.NET_PRESENT_VALUE).isPresent())
            .filter(other -> verdictOf(other) == Verdict.PAYS)
            .toList();
    return !others.isEmpty() && others.stream().allMatch(other -> isDecided(option, other));
  }

  private String open(Option option, String name, boolean plural) {
    PaybackRow worth = netPresentValue(option);
    double half = (worth.high95() - worth.low95()) / 2;
    String doubt =
        half > 0
            ? "; "
                + spoken.wouldDecide(
                    Spoken.needed(lives(option), worth.mean(), half), lives(option), LIVES, "which")
            : "";
    return "Whether "
        + name
        + (plural ? " pay" : " pays")
        + " is not decided: the net present value is "
        + spoken.estimate(worth.mean(), worth.low95(), worth.high95(), worth.unit())
        + doubt;
  }

  /** The same; not the direction of what chance alone could bring. */
  private String addedIfAnything(Option option, boolean plural) {
    return answer
        .worth(option.name(), Quantity.ADDED_IN_EACH_LATER_YEAR)
        .filter(row -> row.low95() < 0 && row.high95() > 0 && differs(option))
        .map(row -> (plural ? "add" : "adds") + " no significant amount a year after the first")
        .orElseGet(() -> added(option, plural));
  }

  /** What it does to the margin year by year; the first year stands apart in {@link #firstYear}. */
  private String added(Option option, boolean plural) {
    Optional<PaybackRow> later = answer.worth(option.name(), Quantity.ADDED_IN_EACH_LATER_YEAR);
    PaybackRow row =
        later.or(() -> answer.worth(option.name(), Quantity.ADDED_IN_FIRST_YEAR)).orElse(null);
    if (row == null) {
      PaybackRow worth = netPresentValue(option);
      return (plural ? "have" : "has")
          + " a net present value of "
          + spoken.estimate(worth.mean(), worth.low95(), worth.high95(), worth.unit());
    }
    boolean more = row.mean() >= 0;
    String verb = more ? "add" : "take";
    return verb
        + (plural ? " " : "s ")
        + amount(row)
        + (more ? " a year" : " a year from the margin")
        + (later.isPresent() && differs(option) ? " after the first" : "")
        + giveOrTake(row);
  }

  /**
   * What a change without a cost does year by year, where its years are known; nobody pays for it,
   * so it is not said to pay.
   */
  Optional<String> yearly(Option option) {
    boolean plural = CompareHeadline.isPlural(option.name());
    String name = names.option(option.name());
    return answer
        .worth(option.name(), Quantity.ADDED_IN_EACH_LATER_YEAR)
        .or(() -> answer.worth(option.name(), Quantity.ADDED_IN_FIRST_YEAR))
        .map(
            row ->
                row.low95() <= 0 && row.high95() >= 0 && row.low95() < row.high95()
                    ? "Whether "
                        + name
                        + (plural ? " change" : " changes")
                        + " the margin is not decided: "
                        + (plural ? "they " : "it ")
                        + added(option, plural)
                    : SpokenNames.upper(name) + " " + added(option, plural));
  }

  private String paidBack(Option option, boolean plural) {
    if (option.cost() == 0) {
      return "";
    }
    Optional<PaybackRow> row = answer.worth(option.name(), Quantity.SIMPLE_PAYBACK);
    if (row.isEmpty()) {
      return "";
    }
    PaybackRow years = row.get();
    if (Double.isNaN(years.mean())) {
      int of = years.gaps().lives();
      return ", but in "
          + years.gaps().without()
          + " of "
          + of
          + " "
          + LIVES
          + (plural ? " they are" : " it is")
          + " never paid back";
    }
    return ", and "
        + (plural ? "are" : "is")
        + " paid back after "
        + spoken.aboutYears(years.mean(), years.low95(), years.high95());
  }

  private String tooLittle(Option option) {
    boolean adds =
        answer
            .worth(option.name(), Quantity.ADDED_IN_EACH_LATER_YEAR)
            .or(() -> answer.worth(option.name(), Quantity.ADDED_IN_FIRST_YEAR))
            .filter(row -> row.mean() >= 0)
            .isPresent();
    double none = Double.NaN;
    return adds && option.cost() > 0
        ? ", too little for its price of "
            + spoken.amount(option.cost(), none, none, answer.header().currency())
        : "";
  }

  /** What it adds in the first year and why, where that differs from later years. */
  Optional<String> firstYear(Option option) {
    if (!differs(option)) {
      return Optional.empty();
    }
    boolean plural = CompareHeadline.isPlural(option.name());
    return answer
        .worth(option.name(), Quantity.ADDED_IN_FIRST_YEAR)
        .map(
            row ->
                "In the first year "
                    + (plural ? "they " : "it ")
                    + (row.mean() >= 0 ? "add" : "take")
                    + (plural ? " " : "s ")
                    + amount(row)
                    + (row.mean() >= 0 ? "" : " from it")
                    + giveOrTake(row)
                    + reason());
  }

  private String reason() {
    return switch (answer.terms().carried()) {
      case STOCK_ON_HAND -> ", since the stock on hand is used once";
      case CROP_LEFT -> ", since crop left over goes into the next year";
      case NOTHING -> "";
    };
  }

  /** Whether first and later years differ by more than their intervals leave open. */
  private boolean differs(Option option) {
    Optional<PaybackRow> first = answer.worth(option.name(), Quantity.ADDED_IN_FIRST_YEAR);
    Optional<PaybackRow> later = answer.worth(option.name(), Quantity.ADDED_IN_EACH_LATER_YEAR);
    return first.isPresent()
        && later.isPresent()
        && (first.get().low95() > later.get().high95()
            || first.get().high95() < later.get().low95());
  }

  private String amount(PaybackRow row) {
    double size = Math.abs(row.mean());
    return spoken.amount(size, size - half(row), size + half(row), row.unit());
  }

  private String giveOrTake(PaybackRow row) {
    double size = Math.abs(row.mean());
    return spoken.giveOrTake(size, size - half(row), size + half(row), row.unit());
  }

  private static double half(PaybackRow row) {
    return Math.max(row.high95() - row.mean(), row.mean() - row.low95());
  }

  /** {@code the second bag hand does not pay}. */
  String ofOthers(Verdict verdict, List<String> options) {
    boolean plural = options.size() > 1 || options.get(0).contains(" and the ");
    String named = CapacityWords.and(options);
    return switch (verdict) {
      case PAYS -> named + (plural ? " pay too" : " pays too");
      case LOSES -> named + (plural ? " do not pay" : " does not pay");
      case OPEN -> "whether " + named + (plural ? " pay" : " pays") + " is not decided";
    };
  }

  /**
   * Whether one is worth more than the other beyond doubt, life by life on the same random draws.
   */
  boolean isDecided(Option one, Option other) {
    double half = halfWidth(one, other);
    return Double.isNaN(half) || Math.abs(difference(one, other)) > half;
  }

  String wouldDecide(Option one, Option other) {
    int lives = lives(one);
    return spoken.wouldDecide(
        Spoken.needed(lives, difference(one, other), halfWidth(one, other)), lives, LIVES, "which");
  }

  private double difference(Option one, Option other) {
    return netPresentValue(one).mean() - netPresentValue(other).mean();
  }

  /**
   * Of the paired difference: its spread times what the interval of the one option is of its own
   * spread, which is the quantile over the root of the lives.
   */
  private double halfWidth(Option one, Option other) {
    double[] of = netPresentValues(one);
    double[] against = netPresentValues(other);
    if (of.length != against.length || of.length < 2) {
      return Double.NaN;
    }
    double[] pairs = new double[of.length];
    for (int life = 0; life < of.length; life++) {
      pairs[life] = of[life] - against[life];
    }
    double own = spread(of);
    return own > 0 ? spread(pairs) / own * half(netPresentValue(one)) : Double.NaN;
  }

  private double[] netPresentValues(Option option) {
    return answer.lives().stream()
        .filter(life -> life.option().equals(option.name()))
        .mapToDouble(ServiceLifeRow::netPresentValue)
        .toArray();
  }

  private static double spread(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    return Math.sqrt(
        Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum()
            / (values.length - 1));
  }

  private int lives(Option option) {
    return (int)
        answer.lives().stream().filter(life -> life.option().equals(option.name())).count();
  }

  /** What makes all worths doubtful. */
  Optional<String> caveat() {
    boolean oneLife = answer.terms().lives() == 1;
    boolean longer = answer.options().stream().anyMatch(option -> option.lifeYr() > 1);
    if (Double.isNaN(answer.terms().discount()) && longer) {
      return Optional.of("The file gives no discount rate, so money of later years counts in full");
    }
    return oneLife
        ? Optional.of("This is one simulated service life, and another may differ much")
        : Optional.empty();
  }

  /** Why no worth can be given. */
  Optional<String> whyMissing() {
    LifeTerms terms = answer.terms();
    if (!terms.unrepeated().isEmpty()) {
      return Optional.of(
          "Whether it pays cannot be said, since the file does not say how its calendar repeats");
    }
    return answer.header().currency().isEmpty()
        ? Optional.of("Whether it pays cannot be said, since the file gives no prices")
        : Optional.of(
            "Whether it pays is not known, since the comparison was stopped before its service lives were whole");
  }
}
