package hurdline.study.choose;

import hurdline.answer.ChooseFact;
import hurdline.answer.ChooseTerms;
import hurdline.answer.FrontierRow;
import hurdline.statistics.LeaderScreening;
import hurdline.statistics.LeaderScreening.Candidate;
import hurdline.statistics.PairwiseLooks;
import hurdline.statistics.ScreeningYears;
import hurdline.study.replicate.ReplicationRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;

/**
 * Goes through the years that choose, the rounds, the looks where they are asked, and the last
 * years, in which nothing is judged any more.
 */
final class ChooseRounds {
  private final ChooseAsk ask;
  private final ChooseTerms terms;
  private final PlanSpace space;
  private final ChooseCosts costs;
  private final ScreeningYears schedule;
  private final ReplicationRange last;
  private final BlockRunner runner;
  private final Map<Integer, String> outOfBounds = new TreeMap<>();
  private PlanYears years;
  private PlanYears fresh;
  private PairwiseLooks looks;

  /**
   * @param last years that show the plans in the end, behind all others
   */
  ChooseRounds(
      ChooseAsk ask,
      ChooseTerms terms,
      PlanSpace space,
      ChooseCosts costs,
      ScreeningYears schedule,
      ReplicationRange last,
      BlockRunner runner) {
    this.ask = ask;
    this.terms = terms;
    this.space = space;
    this.costs = costs;
    this.schedule = schedule;
    this.last = last;
    this.runner = runner;
  }

  /** Empty if it was stopped, or time was up before the first round was judged. */
  Optional<Found> simulate(
      List<Integer> plans,
      BlockStore store,
      ChooseProgress progress,
      BooleanSupplier stop,
      BooleanSupplier timeUp) {
    YearCount year = new YearCount(progress);
    year.expect((long) plans.size() * schedule.before(1));
    BooleanSupplier ending = () -> stop.getAsBoolean() || timeUp.getAsBoolean();
    int measures = 1 + terms.bounds().size();
    years = new PlanYears(runner, store, year, space.count(), measures, 1);
    ReplicationRange choosing = ReplicationRange.first(schedule.choosing());
    if (!years.simulate(PlanBlock.of(0, plans, choosing, false), ending)) {
      return Optional.empty();
    }
    List<Candidate> candidates = candidates(plans);
    progress.stage(stage(0, candidates.size(), Double.NaN));
    List<BudgetScreening> budgets = budgets(candidates);
    judge(budgets, year, progress, ending);
    if (stop.getAsBoolean() || budgets.get(0).known().isEmpty()) {
      return Optional.empty();
    }
    long simulated = years.simulated();
    if (ask.eachGap() && !timeUp.getAsBoolean()) {
      simulated += look(budgets.get(0), store, year, ending);
    }
    Verdict verdict = verdict(budgets);
    List<Integer> shown = shown(verdict);
    fresh = new PlanYears(runner, store, year, space.count(), measures, last.from());
    year.expect((long) shown.size() * last.count());
    int number = 1 + schedule.rounds().size() + PairwiseLooks.usualLooks().size();
    if (!fresh.simulate(PlanBlock.of(number, shown, last, true), stop)) {
      return Optional.empty();
    }
    return Optional.of(
        new Found(verdict, years, fresh, outOfBounds, shown, simulated + fresh.simulated()));
  }

  /** Round after round, as long as there is something to judge and years for it. */
  private void judge(
      List<BudgetScreening> budgets,
      YearCount year,
      ChooseProgress progress,
      BooleanSupplier ending) {
    for (int round = 0; round < schedule.rounds().size(); round++) {
      List<BudgetScreening> active =
          budgets.stream().filter(budget -> !budget.isDone(terms.band())).toList();
      List<Integer> due = left(active);
      long more = (long) due.size() * schedule.rounds().get(round);
      if (due.isEmpty() || isTooMany(more) || ending.getAsBoolean()) {
        return;
      }
      year.expect(more);
      ReplicationRange range =
          new ReplicationRange(1 + schedule.before(round), 1 + schedule.before(round + 1));
      if (!years.simulate(PlanBlock.of(round + 1, due, range, false), ending)) {
        return;
      }
      double[][] net = net(years, due);
      active.forEach(budget -> budget.judge(net, years.simulated()));
      progress.stage(stage(round + 1, budgets.get(0).left().size(), gap(budgets.get(0))));
    }
  }

  private Verdict verdict(List<BudgetScreening> budgets) {
    BudgetScreening best = budgets.get(0);
    List<FrontierRow> frontier =
        new ArrayList<>(budgets.stream().map(BudgetScreening::row).toList());
    int named = looks == null ? best.known().get().leader() : looks.best();
    List<Integer> left = looks == null ? best.left() : looks.left();
    Map<Integer, Double> gaps = new TreeMap<>();
    if (looks == null) {
      gaps.put(named, frontier.get(0).gap());
    } else {
      left.forEach(plan -> gaps.put(plan, looks.gap(plan)));
      FrontierRow row = frontier.get(0);
      frontier.set(
          0,
          new FrontierRow(
              row.budget(), named, gaps.get(named), left.size(), row.of(), row.rounds()));
    }
    return new Verdict(
        named,
        left,
        best.exits(),
        frontier,
        budgets.stream().flatMap(budget -> budget.rounds().stream()).toList(),
        gaps,
        List.of(
            new ChooseFact.OneLeader(terms.alpha(), terms.rounds().size(), budgets.size()),
            new ChooseFact.RareYears()),
        best.unsure());
  }

  private boolean isTooMany(long more) {
    return ask.mostYears() > 0 && years.simulated() + more > ask.mostYears();
  }

  private ChooseProgress.Stage stage(int round, int left, double gap) {
    return new ChooseProgress.Stage(
        round, schedule.rounds().size(), left, years.simulated(), gap, terms.unit());
  }

  private static double gap(BudgetScreening budget) {
    return budget
        .known()
        .map(LeaderScreening.Round::gap)
        .filter(Double::isFinite)
        .orElse(Double.NaN);
  }

  private static List<Integer> left(List<BudgetScreening> budgets) {
    TreeSet<Integer> left = new TreeSet<>();
    budgets.forEach(budget -> left.addAll(budget.left()));
    return List.copyOf(left);
  }

  /** Plans of which a plant comes and that meet each bound in enough of the years that choose. */
  private List<Candidate> candidates(List<Integer> plans) {
    List<Candidate> candidates = new ArrayList<>();
    for (int plan : plans) {
      Optional<String> out = outOfBounds(plan);
      out.ifPresent(said -> outOfBounds.put(plan, said));
      if (out.isEmpty() && !years.problems().containsKey(plan)) {
        candidates.add(new Candidate(plan, costs.cost(plan), space.isKept(plan)));
      }
    }
    if (candidates.isEmpty()) {
      Map<Integer, String> why = years.problems().isEmpty() ? outOfBounds : years.problems();
      throw PlanSpace.noneLeft(why.values().iterator().next(), true);
    }
    return candidates;
  }

  private Optional<String> outOfBounds(int plan) {
    if (years.problems().containsKey(plan)) {
      return Optional.empty();
    }
    for (int bound = 0; bound < terms.bounds().size(); bound++) {
      ChooseTerms.Bound of = terms.bounds().get(bound);
      double met = met(of, years.of(1 + bound, plan));
      if (!(met >= of.share())) {
        return Optional.of(of.measure());
      }
    }
    return Optional.empty();
  }

  /** Share of the years in which a bound is met; a year without a value does not meet it. */
  static double met(ChooseTerms.Bound bound, double[] years) {
    long met =
        Arrays.stream(years)
            .filter(value -> bound.atLeast() ? value >= bound.value() : value <= bound.value())
            .count();
    return met / (double) years.length;
  }

  private List<BudgetScreening> budgets(List<Candidate> candidates) {
    int count = 1 + ask.budgets().size();
    double alpha = terms.alpha() / count / (ask.eachGap() ? 2 : 1);
    List<BudgetScreening> budgets = new ArrayList<>();
    budgets.add(new BudgetScreening(Double.NaN, candidates, alpha, schedule));
    ask.budgets()
        .forEach(budget -> budgets.add(new BudgetScreening(budget, candidates, alpha, schedule)));
    return budgets;
  }

  /** By plan, those that are asked for. */
  private double[][] net(PlanYears of, List<Integer> plans) {
    double[][] net = new double[space.count()][];
    plans.forEach(plan -> net[plan] = costs.net(plan, of.of(0, plan)));
    return net;
  }

  /** All against all of those left; how many years that took. */
  private long look(BudgetScreening best, BlockStore store, Runnable year, BooleanSupplier ending) {
    if (best.left().size() < 2 || best.left().size() > PairwiseLooks.most()) {
      return 0;
    }
    PairwiseLooks begun =
        new PairwiseLooks(best.left(), terms.alpha() / 2, PairwiseLooks.usualLooks());
    int base = 1 + schedule.before(schedule.rounds().size());
    PlanYears own =
        new PlanYears(runner, store, year, space.count(), 1 + terms.bounds().size(), base);
    int from = base;
    int number = 1 + schedule.rounds().size();
    while (!begun.isOver() && !(looks != null && looks.gap(looks.best()) <= terms.band())) {
      List<Integer> due = begun.left();
      ReplicationRange range = new ReplicationRange(from, base + begun.next());
      if (isTooMany((long) due.size() * range.count())
          || !own.simulate(PlanBlock.of(number, due, range, false), ending)) {
        break;
      }
      begun.look(net(own, due));
      looks = begun;
      from = range.to();
      number++;
    }
    return own.simulated();
  }

  private List<Integer> shown(Verdict verdict) {
    List<Integer> named = new ArrayList<>(List.of(verdict.named()));
    verdict.frontier().stream()
        .map(FrontierRow::plan)
        .filter(plan -> plan >= 0)
        .forEach(named::add);
    return new ShownPlans(space, years.problems().keySet()).of(named, verdict.left(), this::mean);
  }

  private double mean(int plan) {
    return costs.mean(plan, years.of(0, plan));
  }
}
