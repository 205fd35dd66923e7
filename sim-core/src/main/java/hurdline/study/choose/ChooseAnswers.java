package hurdline.study.choose;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseFact;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenRow;
import hurdline.answer.Fact;
import hurdline.simulation.CompiledPlant;
import hurdline.statistics.LeaderScreening;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.Summary;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.RunFacts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Makes the answer of what came of the rounds. */
final class ChooseAnswers {
  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final CompiledPlant base;
  private final ChooseTerms terms;
  private final PlanSpace space;
  private final ChooseCosts costs;
  private final Found found;
  private final Verdict verdict;
  private final Map<Integer, LeaderScreening.Exit> exits = new HashMap<>();
  private final Set<Integer> left;

  ChooseAnswers(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      CompiledPlant base,
      ChooseTerms terms,
      PlanSpace space,
      ChooseCosts costs,
      Found found) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.base = base;
    this.terms = terms;
    this.space = space;
    this.costs = costs;
    this.found = found;
    verdict = found.verdict();
    verdict.exits().forEach(exit -> exits.put(exit.plan(), exit));
    left = new HashSet<>(verdict.left());
  }

  /**
   * @param inputs where draws of inputs come from; empty where there are none
   */
  ChooseAnswer answer(String inputs) {
    PlantOutline outlines = new PlantOutline(base);
    return new ChooseAnswer(
        outlines.header(source, chosen, effort, effort.replications(), false),
        outlines.outlineWithChoices(),
        terms,
        space.ranges(),
        IntStream.range(0, space.count()).mapToObj(this::plan).toList(),
        verdict.rounds(),
        verdict.frontier(),
        found.shown().stream().map(this::shown).toList(),
        effects(),
        found.simulated(),
        inputs,
        facts(!inputs.isEmpty()),
        new SafetyFacts(base.plant()).facts(),
        source.warnings());
  }

  private ChoiceRow plan(int plan) {
    LeaderScreening.Exit exit = exits.get(plan);
    boolean isJudged = exit != null && !Double.isNaN(exit.limit());
    double[] years = costs.net(plan, found.years().of(0, plan));
    return new ChoiceRow(
        plan,
        space.at(plan),
        costs.cost(plan),
        costs.perCalendar(plan),
        status(plan, exit),
        exit == null ? -1 : exit.round(),
        exit == null ? -1 : exit.leader(),
        isJudged ? exit.difference() : Double.NaN,
        isJudged ? exit.limit() : Double.NaN,
        years.length,
        Arrays.stream(years).average().orElse(Double.NaN),
        reason(plan, exit));
  }

  private ChoiceRow.Status status(int plan, LeaderScreening.Exit exit) {
    if (plan == verdict.named()) {
      return ChoiceRow.Status.NAMED;
    }
    if (space.isNever(plan)) {
      return ChoiceRow.Status.NEVER;
    }
    if (found.years().problems().containsKey(plan) || exit != null && Double.isNaN(exit.limit())) {
      return ChoiceRow.Status.PROBLEM;
    }
    if (found.outOfBounds().containsKey(plan)) {
      return ChoiceRow.Status.BOUND;
    }
    return left.contains(plan) ? ChoiceRow.Status.LEFT : ChoiceRow.Status.OUT;
  }

  private String reason(int plan, LeaderScreening.Exit exit) {
    if (exit != null && Double.isNaN(exit.limit())) {
      return terms.measure() + ": no value";
    }
    return found.years().problems().getOrDefault(plan, found.outOfBounds().getOrDefault(plan, ""));
  }

  private ChosenRow shown(int plan) {
    double[] years = costs.net(plan, found.fresh().of(0, plan));
    Summary summary = Summary.of(years);
    List<Double> met = new ArrayList<>();
    for (int bound = 0; bound < terms.bounds().size(); bound++) {
      met.add(ChooseRounds.met(terms.bounds().get(bound), found.fresh().of(1 + bound, plan)));
    }
    return new ChosenRow(
        plan,
        verdict.gaps().getOrDefault(plan, Double.NaN),
        summary.mean(),
        summary.low95(),
        summary.high95(),
        summary.p05(),
        summary.count(),
        summary.interval().word(),
        met,
        found.fresh().limits(plan));
  }

  private List<ChoiceEffect> effects() {
    List<ChoiceEffect> effects = new ArrayList<>();
    double[] named = costs.net(verdict.named(), found.fresh().of(0, verdict.named()));
    for (int choice = 0; choice < space.all().size(); choice++) {
      for (int value = 0; value < space.all().get(choice).values().size(); value++) {
        int plan = space.with(verdict.named(), choice, value);
        if (plan != verdict.named() && found.shown().contains(plan)) {
          double[] years = costs.net(plan, found.fresh().of(0, plan));
          PairedDifference of = PairedDifference.of(named, years, 1);
          effects.add(
              new ChoiceEffect(
                  choice,
                  value,
                  plan,
                  of.difference(),
                  of.at95().low(),
                  of.at95().high(),
                  costs.cost(plan) - costs.cost(verdict.named())));
        }
      }
    }
    return effects;
  }

  private List<Fact> facts(boolean drawn) {
    Stream<Fact> own =
        Stream.concat(
            verdict.how().stream(), Stream.of(new ChooseFact.NewYears(effort.replications())));
    List<Fact> facts = new ArrayList<>(RunFacts.around(own));
    if (base.plant().money().isPresent()) {
      facts.add(
          costs.isTakenOff()
              ? new ChooseFact.CostOfCapital(costs.ratePerYr())
              : new ChooseFact.CostsNotTakenOff());
    }
    if (!terms.bounds().isEmpty()) {
      facts.add(new ChooseFact.Bounds(terms.choosing()));
    }
    if (verdict.unsure() > 0) {
      facts.add(new ChooseFact.LongTails(verdict.unsure()));
    }
    facts.add(new ChooseFact.FiguresOfPlans(drawn));
    facts.add(new ChooseFact.OnlyThesePlans());
    return facts;
  }
}
