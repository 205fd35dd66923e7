package hurdline.table;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRange;
import hurdline.answer.ChoiceRound;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenLimit;
import hurdline.answer.ChosenRow;
import hurdline.answer.FrontierRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The tables of a choice among very many plans. */
public final class ChooseTables {
  private final ChooseAnswer answer;

  public ChooseTables(ChooseAnswer answer) {
    this.answer = answer;
  }

  public List<Table> all() {
    return List.of(choice(), screened(), frontier(), effects(), rounds());
  }

  /** A column for each choice; a choice may be called like another column. */
  private List<String> columns(List<String> before, List<String> after) {
    List<String> columns = new ArrayList<>(before);
    answer.choices().stream().map(ChoiceRange::name).forEach(name -> columns.add("choice." + name));
    columns.addAll(after);
    return columns;
  }

  private Object[] row(int plan, List<Object> before, Object... after) {
    List<Object> cells = new ArrayList<>(before);
    for (int choice = 0; choice < answer.choices().size(); choice++) {
      cells.add(plan < 0 ? "" : answer.value(answer.plans().get(plan), choice));
    }
    cells.addAll(Arrays.asList(after));
    return cells.toArray();
  }

  private Table choice() {
    List<String> after =
        new ArrayList<>(
            List.of(
                "cost",
                "yearly_cost",
                "unit",
                "gap",
                "mean",
                "low_95",
                "high_95",
                "p05",
                "replications",
                "interval"));
    answer.terms().bounds().stream().map(ChooseTables::bound).forEach(after::add);
    after.add("limited_by");
    return new Table(
        "choice.csv",
        columns(List.of("plan", "status"), after),
        () -> answer.chosen().stream().map(this::choice));
  }

  private static String bound(ChooseTerms.Bound bound) {
    return "share_"
        + bound.measure()
        + (bound.atLeast() ? "_at_least_" : "_at_most_")
        + Exact.text(bound.value());
  }

  private Object[] choice(ChosenRow row) {
    ChoiceRow plan = answer.plans().get(row.plan());
    List<Object> after =
        new ArrayList<>(
            List.of(
                plan.cost(),
                plan.yearlyCost(),
                answer.terms().unit(),
                row.gap(),
                row.mean(),
                row.low95(),
                row.high95(),
                row.p05(),
                row.replications(),
                row.interval()));
    after.addAll(row.met());
    after.add(limits(row.limits()));
    return row(row.plan(), List.of(row.plan(), word(plan.status())), after.toArray());
  }

  private static String limits(List<ChosenLimit> limits) {
    return limits.stream()
        .map(limit -> limit.line() + "=" + limit.cause())
        .collect(Collectors.joining(" "));
  }

  private static String word(ChoiceRow.Status status) {
    return status.name().toLowerCase(Locale.ROOT);
  }

  private Table screened() {
    return new Table(
        "screened_out.csv",
        columns(
            List.of("plan", "status"),
            List.of("cost", "round", "against", "difference", "limit", "mean", "years", "reason")),
        () -> answer.plans().stream().map(this::screened));
  }

  /** Rounds count from 1. */
  private Object[] screened(ChoiceRow plan) {
    return row(
        plan.plan(),
        List.of(plan.plan(), word(plan.status())),
        plan.cost(),
        plan.round() < 0 ? "" : plan.round() + 1,
        plan.against() < 0 ? "" : plan.against(),
        plan.difference(),
        plan.limit(),
        plan.mean(),
        plan.years(),
        plan.reason());
  }

  private Table frontier() {
    return new Table(
        "frontier.csv",
        columns(
            List.of("budget", "plan"),
            List.of("cost", "unit", "gap", "mean", "low_95", "high_95", "p05", "left", "of")),
        () -> answer.frontier().stream().map(this::frontier));
  }

  private Object[] frontier(FrontierRow of) {
    if (of.plan() < 0) {
      return row(
          -1,
          List.of(of.budget(), ""),
          "",
          answer.terms().unit(),
          "",
          "",
          "",
          "",
          "",
          of.left(),
          of.of());
    }
    ChosenRow shown = answer.chosen(of.plan()).orElseThrow();
    return row(
        of.plan(),
        List.of(of.budget(), of.plan()),
        answer.plans().get(of.plan()).cost(),
        answer.terms().unit(),
        of.gap(),
        shown.mean(),
        shown.low95(),
        shown.high95(),
        shown.p05(),
        of.left(),
        of.of());
  }

  private Table effects() {
    return new Table(
        "effects.csv",
        List.of(
            "choice",
            "value",
            "instead_of",
            "plan",
            "unit",
            "difference",
            "low_95",
            "high_95",
            "cost_difference",
            "limited_by"),
        () -> answer.effects().stream().map(this::effect));
  }

  private Object[] effect(ChoiceEffect effect) {
    ChoiceRange choice = answer.choices().get(effect.choice());
    return new Object[] {
      choice.name(),
      choice.values().get(effect.value()),
      answer.value(answer.plans().get(answer.best().plan()), effect.choice()),
      effect.plan(),
      answer.terms().unit(),
      effect.difference(),
      effect.low95(),
      effect.high95(),
      effect.cost(),
      answer.chosen(effect.plan()).map(row -> limits(row.limits())).orElse("")
    };
  }

  private Table rounds() {
    return new Table(
        "rounds.csv",
        List.of("budget", "round", "years", "leader", "unit", "gap", "left", "years_in_all"),
        () -> answer.rounds().stream().map(this::round));
  }

  private Object[] round(ChoiceRound round) {
    return new Object[] {
      round.budget(),
      round.round() + 1,
      answer.terms().rounds().get(round.round()),
      round.leader(),
      answer.terms().unit(),
      round.gap(),
      round.left(),
      round.years()
    };
  }
}
