package hurdline.study.choose;

import hurdline.answer.ChooseFact;
import hurdline.answer.ChooseTerms;
import hurdline.answer.FrontierRow;
import hurdline.statistics.LeaderScreening;
import hurdline.statistics.TwoStageSelection;
import hurdline.study.replicate.ReplicationRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * Goes through two stages in which each plan has draws of its own ({@link TwoStageSelection}), and
 * the last years, in which nothing is judged and all plans meet the same draws again.
 */
final class TwoStages {
  /** Years of each plan in the first stage; textbooks advise 10 and more (from memory). */
  static final int FIRST_YEARS = 20;

  /** Years of a plan come in so many at once: a few more than needed keep the statement true. */
  private static final int TOGETHER = 10;

  /** Beyond so many of one plan the band is out of reach. */
  private static final int MOST_YEARS = 10_000_000;

  private static final int SECOND = 1;
  private static final int LAST = 2;

  private final ChooseTerms terms;
  private final PlanSpace space;
  private final ChooseCosts costs;
  private final ReplicationRange last;
  private final BlockRunner runner;
  private final List<Integer> judged = new ArrayList<>();
  private final List<LeaderScreening.Exit> exits = new ArrayList<>();
  private PlanYears years;
  private PlanYears fresh;

  /**
   * @param last years that show the plans in the end
   */
  TwoStages(
      ChooseTerms terms,
      PlanSpace space,
      ChooseCosts costs,
      ReplicationRange last,
      BlockRunner runner) {
    this.terms = terms;
    this.space = space;
    this.costs = costs;
    this.last = last;
    this.runner = runner;
  }

  /** Empty if it was stopped, or time was up before the first stage was whole. */
  Optional<Found> simulate(
      List<Integer> plans,
      BlockStore store,
      ChooseProgress progress,
      BooleanSupplier stop,
      BooleanSupplier timeUp) {
    YearCount year = new YearCount(progress);
    year.expect((long) plans.size() * FIRST_YEARS);
    BooleanSupplier ending = () -> stop.getAsBoolean() || timeUp.getAsBoolean();
    years = new PlanYears(runner, store, year, space.count(), 1, 1);
    if (!years.simulate(PlanBlock.own(0, plans, 1, plan -> FIRST_YEARS), ending)) {
      return Optional.empty();
    }
    plans.forEach(this::judge);
    refuseNone();
    progress.stage(stage(0, Double.NaN));
    TwoStageSelection rule = new TwoStageSelection(judged.size(), FIRST_YEARS, 1 - terms.alpha());
    Map<Integer, Long> needed = needed(rule);
    year.expect(more(needed));
    boolean whole = isWithin(needed) && years.simulate(second(needed), ending);
    if (stop.getAsBoolean()) {
      return Optional.empty();
    }
    judged.removeIf(years.problems()::containsKey); // whose years hung
    refuseNone();
    Verdict verdict = verdict(rule, needed, whole);
    progress.stage(stage(SECOND, verdict.gaps().get(verdict.named())));
    List<Integer> shown =
        new ShownPlans(space, years.problems().keySet())
            .of(List.of(verdict.named()), verdict.left(), this::mean);
    fresh = new PlanYears(runner, store, year, space.count(), 1, last.from());
    year.expect((long) shown.size() * last.count());
    if (!fresh.simulate(PlanBlock.of(LAST, shown, last, true), stop)) {
      return Optional.empty();
    }
    long simulated = years.simulated() + fresh.simulated();
    return Optional.of(new Found(verdict, years, fresh, Map.of(), shown, simulated));
  }

  /** Of a plan without a plant there is nothing to judge, nor of one without a value. */
  private void judge(int plan) {
    if (years.problems().containsKey(plan)) {
      return;
    }
    if (Arrays.stream(years.of(0, plan)).anyMatch(Double::isNaN)) {
      exits.add(new LeaderScreening.Exit(plan, 0, -1, Double.NaN, Double.NaN));
    } else {
      judged.add(plan);
    }
  }

  private void refuseNone() {
    if (judged.isEmpty()) {
      String first =
          years.problems().values().stream().findFirst().orElse(terms.measure() + ": no value");
      throw PlanSpace.noneLeft(first, false);
    }
  }

  private Map<Integer, Long> needed(TwoStageSelection rule) {
    Map<Integer, Long> needed = new TreeMap<>();
    judged.forEach(plan -> needed.put(plan, rule.years(years.of(0, plan), terms.band())));
    return needed;
  }

  private List<PlanBlock> second(Map<Integer, Long> needed) {
    return PlanBlock.own(
        SECOND,
        judged.stream().filter(plan -> needed.get(plan) > FIRST_YEARS).toList(),
        1 + FIRST_YEARS,
        plan -> (int) rounded(needed.get(plan)));
  }

  private static long rounded(long needed) {
    return (needed + TOGETHER - 1) / TOGETHER * TOGETHER;
  }

  private static long more(Map<Integer, Long> needed) {
    return needed.values().stream().mapToLong(count -> rounded(count) - FIRST_YEARS).sum();
  }

  private boolean isWithin(Map<Integer, Long> needed) {
    return needed.values().stream().allMatch(count -> count <= MOST_YEARS)
        && (terms.mostYears() == 0 || years.simulated() + more(needed) <= terms.mostYears());
  }

  private ChooseProgress.Stage stage(int number, double gap) {
    return new ChooseProgress.Stage(number, 1, judged.size(), years.simulated(), gap, terms.unit());
  }

  /**
   * @param whole whether the second stage is; else nothing can be stated
   */
  private Verdict verdict(TwoStageSelection rule, Map<Integer, Long> needed, boolean whole) {
    int named = judged.get(0);
    for (int plan : judged) {
      double ahead = mean(plan) - mean(named);
      if (ahead > 0 || ahead == 0 && costs.cost(plan) < costs.cost(named)) {
        named = plan;
      }
    }
    double gap = !whole ? Double.NaN : judged.size() == 1 ? 0 : terms.band();
    ChooseFact.TwoStages how =
        new ChooseFact.TwoStages(
            terms.alpha(),
            judged.size(),
            FIRST_YEARS,
            rule.constant(),
            more(needed),
            needed.values().stream().mapToLong(TwoStages::rounded).max().orElse(FIRST_YEARS));
    FrontierRow best =
        new FrontierRow(
            Double.NaN, named, gap, judged.size(), judged.size(), whole ? 1 + SECOND : 1);
    return new Verdict(
        named, judged, exits, List.of(best), List.of(), Map.of(named, gap), List.of(how), 0);
  }

  private double mean(int plan) {
    return costs.mean(plan, years.of(0, plan));
  }
}
