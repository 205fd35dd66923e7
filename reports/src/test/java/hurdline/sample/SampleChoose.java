package hurdline.sample;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRange;
import hurdline.answer.ChoiceRound;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChoiceRow.Status;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenLimit;
import hurdline.answer.ChosenRow;
import hurdline.answer.FrontierRow;
import hurdline.answer.RunAnswer;
import java.util.List;

/** Invented answers of choices among plans. No figure in here is a result. */
public final class SampleChoose {
  private static final RunAnswer YEAR = SampleAnswer.year();
  private static final double NONE = Double.NaN;

  private SampleChoose() {}

  /** Eight plans of three choices under two budgets, of which one has no plan. */
  public static ChooseAnswer budgets() {
    return of(
        new ChooseTerms(
            "money.margin",
            "USD",
            5_000,
            true,
            0.05,
            20,
            List.of(10, 20, 40),
            false,
            List.of(new ChooseTerms.Bound("yard.stalk.peak", "bales", false, 4_000, 0.9)),
            0,
            false),
        List.of(
            new FrontierRow(NONE, 5, 4_210, 2, 5, 2),
            new FrontierRow(60_000, 1, NONE, 2, 2, 2),
            new FrontierRow(-1, -1, NONE, 0, 0, 0)),
        List.of(0.95));
  }

  /** The same plans without budgets and bounds, ended before the gap is small enough. */
  public static ChooseAnswer ended() {
    return of(
        new ChooseTerms(
            "mass.stalk.fed",
            "t",
            5,
            false,
            0.05,
            10,
            List.of(10, 20),
            true,
            List.of(),
            400,
            false),
        List.of(new FrontierRow(NONE, 5, 72.4, 3, 6, 1)),
        List.of());
  }

  private static ChooseAnswer of(ChooseTerms terms, List<FrontierRow> frontier, List<Double> met) {
    return Draft.of(ChooseAnswer.class)
        .with(ChooseAnswer::header, YEAR.header())
        .with(ChooseAnswer::outline, YEAR.outline())
        .with(ChooseAnswer::terms, terms)
        .with(
            ChooseAnswer::choices,
            List.of(
                new ChoiceRange("mill", "key", List.of("25 hp", "45.5 hp")),
                new ChoiceRange("machines.mill.rate", "key", List.of("x1", "x1.2")),
                new ChoiceRange("buy", "option", List.of("base", "bigger<mill>"))))
        .with(
            ChooseAnswer::plans,
            List.of(
                plan(0, Status.NEVER, 0, ""),
                plan(1, Status.LEFT, 30, ""),
                plan(2, Status.PROBLEM, 0, "p.yaml:3:1 rest is too long"),
                plan(3, Status.BOUND, 20, "yard.stalk.peak"),
                out(4),
                plan(5, Status.NAMED, 70, ""),
                out(6),
                plan(7, Status.PROBLEM, 30, "money.margin: no value")))
        .with(
            ChooseAnswer::rounds,
            List.of(
                new ChoiceRound(NONE, 0, 4, NONE, 4, 300),
                new ChoiceRound(NONE, 1, 5, 4_210, 2, 500),
                new ChoiceRound(60_000, 0, 1, NONE, 2, 300)))
        .with(ChooseAnswer::frontier, frontier)
        .with(ChooseAnswer::chosen, List.of(chosen(1, 410_000, met), chosen(5, 478_300, met)))
        .with(
            ChooseAnswer::effects,
            List.of(
                new ChoiceEffect(0, 0, 1, -68_300, -70_000, -66_600, -140_000),
                new ChoiceEffect(1, 1, 7, 120, -400, 640, 0)))
        .with(ChooseAnswer::years, 12_345L)
        .with(ChooseAnswer::assumptions, SampleFacts.ofChoices())
        .with(ChooseAnswer::cautions, YEAR.cautions())
        .with(ChooseAnswer::warnings, YEAR.warnings())
        .made();
  }

  private static List<Integer> at(int plan) {
    return List.of(plan / 4, plan / 2 % 2, plan % 2);
  }

  private static ChoiceRow plan(int plan, Status status, int years, String reason) {
    double mean = years == 0 ? NONE : 400_000 + plan;
    double cost = plan * 20_000.0;
    return new ChoiceRow(
        plan, at(plan), cost, cost / 8, status, -1, -1, NONE, NONE, years, mean, reason);
  }

  private static ChoiceRow out(int plan) {
    return new ChoiceRow(
        plan, at(plan), 0, 0, Status.OUT, 1, 5, -9_000.5, -3_000.25, 40, 300_000, "");
  }

  private static ChosenRow chosen(int plan, double mean, List<Double> met) {
    return new ChosenRow(
        plan,
        plan == 5 ? 4_210 : NONE,
        mean,
        mean - 2_000,
        mean + 2_000,
        mean - 12_000,
        40,
        "student",
        met,
        List.of(new ChosenLimit(YEAR.outline().lines().get(0).name(), "mill", 0.62)));
  }
}
