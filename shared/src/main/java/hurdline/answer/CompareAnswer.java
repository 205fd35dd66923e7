package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which of several options and what-ifs is better than the plant as it stands, by how much, how
 * sure, and whether it pays.
 *
 * @param header plant, program and settings; its option is {@code base}
 * @param outline of the base
 * @param options those compared with the base, in the order asked for
 * @param summary one row per option and measure, the base first
 * @param differences one row per option and measure that both it and the base have
 * @param adjusted differences in headline measures, adjusted for the drawn crop of the base; empty
 *     where none can be
 * @param inputs what of the intervals comes from inputs that are not known for certain
 * @param holders as of a run, for the base and then each option
 * @param months as of a run, for the base and then each option
 * @param mills what the mills are to do on each screen, the base first
 * @param payback empty where the file has no money, or does not say how a calendar shorter than a
 *     year repeats
 * @param cash empty as {@code payback} is
 * @param lives each life of each option; empty as {@code payback} is
 * @param afterTax years of each purchase after loan and tax; empty where the file has neither
 * @param terms how lives are made of calendars
 * @param further what was asked besides
 * @param assumptions what the figures take for granted
 * @param cautions what in this very plant can hurt someone
 * @param warnings what {@code check} warns of
 * @param samples every measure of every replication, the base first; {@link Replayed} after reading
 *     {@code record.json}
 */
public record CompareAnswer(
    Header header,
    Outline outline,
    List<Option> options,
    List<SummaryRow> summary,
    List<DifferenceRow> differences,
    List<AdjustedRow> adjusted,
    InputUncertainty inputs,
    List<BottleneckRow> holders,
    List<MonthRow> months,
    List<MillRow> mills,
    List<PaybackRow> payback,
    List<CashRow> cash,
    List<ServiceLifeRow> lives,
    List<AfterTaxRow> afterTax,
    LifeTerms terms,
    FollowUps further,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings,
    Replayed samples)
    implements Answer {
  public CompareAnswer {
    inputs = inputs == null ? InputUncertainty.none() : inputs;
    options = List.copyOf(options);
    summary = List.copyOf(summary);
    differences = List.copyOf(differences);
    adjusted = adjusted == null ? List.of() : List.copyOf(adjusted);
    holders = List.copyOf(holders);
    months = List.copyOf(months);
    mills = List.copyOf(mills);
    payback = List.copyOf(payback);
    cash = List.copyOf(cash);
    lives = List.copyOf(lives);
    afterTax = afterTax == null ? List.of() : List.copyOf(afterTax);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    terms = terms == null ? LifeTerms.none() : terms;
    further = further == null ? FollowUps.nothing() : further;
    samples = samples == null ? Replayed.none() : samples;
  }

  /**
   * An option or what-if that is compared.
   *
   * @param name as it was asked for, {@code A}, {@code A+B} or {@code KEY=VALUE}
   * @param says what the plant file says of it, or empty
   * @param cost in the file's currency
   * @param lifeYr years
   * @param salvage what it is worth at the end of its life
   */
  public record Option(String name, String says, double cost, double lifeYr, double salvage) {
    /** A change without a cost that the plant file knows nothing of. */
    public static Option whatIf(String name) {
      return new Option(name, "", 0, 0, 0);
    }

    /** Whether it was typed, and is not of the plant file; then it has no service life. */
    public boolean isWhatIf() {
      return WhatIf.isOne(name);
    }

    /** Whether money is spent on it, so that one may ask whether it pays. */
    public boolean isPurchase() {
      return cost != 0 || salvage != 0;
    }
  }

  /** The base and then the options, by name. */
  public List<String> plants() {
    return Stream.concat(Stream.of(header.option()), options.stream().map(Option::name)).toList();
  }

  /** The difference of an option in the measure with this full name, if both have it. */
  public Optional<DifferenceRow> difference(String option, String measure) {
    return differences.stream()
        .filter(row -> row.option().equals(option) && row.measure().equals(measure))
        .findFirst();
  }

  /** What held the lines with an option, or in the base. */
  public List<BottleneckRow> holdersOf(String option) {
    return holders.stream().filter(row -> row.option().equals(option)).toList();
  }

  /** What an option is worth in one quantity, if money was asked. */
  public Optional<PaybackRow> worth(String option, PaybackRow.Quantity quantity) {
    return payback.stream()
        .filter(row -> row.option().equals(option) && row.quantity() == quantity)
        .findFirst();
  }
}
