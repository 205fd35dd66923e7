package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.WhatIf;
import hurdline.measure.Measure;
import hurdline.unit.Counted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which option pays, how much, when, what a change without a cost does, and what limits the line
 * then: sentences that one could say aloud.
 */
public final class CompareHeadline {
  /** More changes without a cost are left to the ranked table. */
  private static final int CHANGES = 3;

  /** Of what the plant as it stands has: less is not worth the replications that would show it. */
  private static final double HARDLY = 0.002;

  private final CompareAnswer answer;
  private final Spoken spoken;
  private final SpokenNames names;
  private final WorthSentences worth;

  public CompareHeadline(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.spoken = new Spoken(wording);
    this.names = new SpokenNames(wording.reading(answer).titles());
    this.worth = new WorthSentences(answer, spoken, names);
  }

  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    List<Option> ranked = ranked();
    if (ranked.isEmpty()) {
      sentences.addAll(withoutWorth());
    } else {
      Option best = ranked.get(0);
      sentences.add(worth.verdict(best));
      worth.firstYear(best).ifPresent(sentences::add);
      new AfterTaxSentences(answer, spoken).of(best).ifPresent(sentences::add);
      limits(best.name()).ifPresent(sentences::add);
      if (ranked.size() > 1) {
        sentences.add(others(ranked));
      }
      sentences.addAll(changes());
      worth.caveat().ifPresent(sentences::add);
    }
    return sentences.stream().map(sentence -> sentence + ".").toList();
  }

  /** Purchases of which a worth is known, the one of the highest net present value first. */
  private List<Option> ranked() {
    return answer.options().stream()
        .filter(Option::isPurchase)
        .filter(option -> answer.worth(option.name(), Quantity.NET_PRESENT_VALUE).isPresent())
        .sorted(
            Comparator.comparingDouble((Option option) -> worth.netPresentValue(option).mean())
                .reversed())
        .toList();
  }

  /** On the options behind the first one; one that may be as good comes first. */
  private String others(List<Option> ranked) {
    Option best = ranked.get(0);
    Option second = ranked.get(1);
    String rival =
        worth.isDecided(best, second) || worth.verdictOf(second) == WorthSentences.Verdict.LOSES
            ? ""
            : "Whether "
                + names.option(best.name())
                + " or "
                + names.option(second.name())
                + " is worth more is not decided: "
                + worth.wouldDecide(best, second);
    List<String> parts = new ArrayList<>();
    for (WorthSentences.Verdict verdict : WorthSentences.Verdict.values()) {
      List<String> named =
          ranked.stream()
              .skip(1)
              .filter(option -> worth.verdictOf(option) == verdict)
              .map(option -> names.option(option.name()))
              .toList();
      if (!named.isEmpty()) {
        parts.add(worth.ofOthers(verdict, named));
      }
    }
    String rest = String.join("; ", parts);
    return rival.isEmpty() ? SpokenNames.upper(rest) : rival + "; " + rest;
  }

  /** What differs, where no worth is known, and why it is not. */
  private List<String> withoutWorth() {
    List<String> sentences = new ArrayList<>();
    if (answer.options().isEmpty()) {
      answer
          .outline()
          .lines()
          .forEach(line -> limitsOf("base", line).sentence().ifPresent(sentences::add));
      return sentences;
    }
    boolean purchases = answer.options().stream().anyMatch(Option::isPurchase);
    if (!purchases) {
      sentences.addAll(changes());
      limits(mostChanged(false).name()).ifPresent(sentences::add);
      return sentences;
    }
    Option option = mostChanged(true);
    changed(option.name()).ifPresent(sentences::add);
    limits(option.name()).ifPresent(sentences::add);
    sentences.addAll(changes());
    worth.whyMissing().ifPresent(sentences::add);
    return sentences;
  }

  /**
   * What changes without a cost do, the one that moves the margin most first; further ones stand in
   * the ranked table.
   */
  private List<String> changes() {
    return answer.options().stream()
        .filter(option -> !option.isPurchase())
        .sorted(
            Comparator.comparingDouble(
                    (Option option) ->
                        difference(option.name())
                            .map(row -> Math.abs(row.difference()))
                            .orElse(0.0))
                .reversed())
        .limit(CHANGES)
        .flatMap(option -> worth.yearly(option).or(() -> changed(option.name())).stream())
        .toList();
  }

  /**
   * The purchase, or the change without a cost, with the greatest gain in margin; without money, in
   * what is fed.
   */
  private Option mostChanged(boolean purchase) {
    return answer.options().stream()
        .filter(option -> option.isPurchase() == purchase)
        .max(
            Comparator.comparingDouble(
                option ->
                    difference(option.name())
                        .map(DifferenceRow::difference)
                        .orElse(Double.NEGATIVE_INFINITY)))
        .orElseThrow();
  }

  private Optional<DifferenceRow> difference(String option) {
    return answer
        .difference(option, Measure.MONEY_MARGIN.of())
        .or(
            () ->
                answer.outline().lines().stream()
                    .findFirst()
                    .flatMap(line -> answer.difference(option, Measure.MASS_FED.of(line.crop()))));
  }

  private Optional<String> changed(String option) {
    return difference(option)
        .map(
            row -> {
              String of =
                  row.measure().equals(Measure.MONEY_MARGIN.of())
                      ? "margin"
                      : names.crop(answer.outline().lines().get(0).crop()) + " fed";
              return row.significant() || row.replications() < 2 || row.difference() == 0
                  ? moved(option, row, of)
                  : undecided(option, row, of);
            });
  }

  private String moved(String option, DifferenceRow row, String of) {
    String only =
        row.replications() < 2 ? " in one simulated year, and another may differ much" : "";
    if (row.difference() == 0) {
      return SpokenNames.upper(names.option(option))
          + " "
          + (isPlural(option) ? "leave" : "leaves")
          + " the "
          + of
          + " as it is"
          + only;
    }
    boolean more = row.difference() > 0;
    double low = more ? row.low95() : -row.high95();
    double high = more ? row.high95() : -row.low95();
    double size = Math.abs(row.difference());
    return SpokenNames.upper(names.option(option))
        + (isPlural(option) ? (more ? " raise" : " lower") : (more ? " raises" : " lowers"))
        + " the "
        + of
        + " by "
        + spoken.estimate(size, low, high, row.unit())
        + only;
  }

  private String undecided(String option, DifferenceRow row, String of) {
    double most = Math.max(Math.abs(row.lowJoint()), Math.abs(row.highJoint()));
    if (most < HARDLY * Math.abs(row.baseMean())) {
      return SpokenNames.upper(names.option(option))
          + (isPlural(option) ? " hardly change the " : " hardly changes the ")
          + of
          + ": by "
          + spoken.amount(most, Double.NaN, Double.NaN, row.unit())
          + " at most, if at all";
    }
    return "Whether "
        + names.option(option)
        + (isPlural(option) ? " change the " : " changes the ")
        + of
        + " is not decided at "
        + Counted.of(row.replications(), "replication")
        + (row.replicationsNeeded() > 0
            ? "; "
                + spoken.about(row.replicationsNeeded())
                + " would show a difference of this size"
            : "");
  }

  static boolean isPlural(String option) {
    return WhatIf.isOne(option) ? WhatIf.isOfSeveral(option) : option.contains("+");
  }

  /**
   * What limits the line with an option: of lines on which that changes, the first; else of the
   * line on which it changes most.
   */
  private Optional<String> limits(String option) {
    List<Outline.Line> lines = answer.outline().lines();
    Optional<Outline.Line> changed =
        lines.stream()
            .filter(line -> !limitsOf(option, line).first().equals(limitsOf(base(), line).first()))
            .findFirst();
    if (changed.isPresent()) {
      String then = isPlural(option) ? "With them " : "With it ";
      return limitsOf(option, changed.get()).inShort().map(limits -> then + limits);
    }
    return lines.stream()
        .max(
            Comparator.comparingDouble(
                line -> Math.abs(limitsOf(option, line).share() - limitsOf(base(), line).share())))
        .filter(line -> !limitsOf(option, line).first().isEmpty())
        .map(line -> limitsOf(option, line).still());
  }

  private String base() {
    return answer.header().option();
  }

  private LimitWords limitsOf(String option, Outline.Line line) {
    return new LimitWords(
        answer.holdersOf(option), line, answer.header().replications(), names, spoken);
  }
}
