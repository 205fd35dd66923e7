package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Optional;

/**
 * Which of very many plans is the best, and how far above it the best may be.
 *
 * @param outline of the plant as it stands
 * @param choices what was open
 * @param plans every combination, by its number
 * @param rounds of every budget
 * @param frontier the best without a limit, then under each budget
 * @param chosen plans in the last years: those that are named, those left, and those one value away
 * @param effects of each other value of each choice on the plan that is named
 * @param years simulated in all
 * @param inputs where each year's draws of inputs come from; empty where inputs are as the file has
 *     them
 */
public record ChooseAnswer(
    Header header,
    Outline outline,
    ChooseTerms terms,
    List<ChoiceRange> choices,
    List<ChoiceRow> plans,
    List<ChoiceRound> rounds,
    List<FrontierRow> frontier,
    List<ChosenRow> chosen,
    List<ChoiceEffect> effects,
    long years,
    String inputs,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings)
    implements Answer {
  public ChooseAnswer {
    choices = List.copyOf(choices);
    plans = List.copyOf(plans);
    rounds = List.copyOf(rounds);
    frontier = List.copyOf(frontier);
    chosen = List.copyOf(chosen);
    effects = List.copyOf(effects);
    inputs = inputs == null ? "" : inputs; // a record of before has none
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
  }

  /** The best without a limit. */
  public FrontierRow best() {
    return frontier.get(0);
  }

  /** A plan in the last years, if it was simulated in them. */
  public Optional<ChosenRow> chosen(int plan) {
    return chosen.stream().filter(row -> row.plan() == plan).findFirst();
  }

  /** The text of a plan's value of a choice. */
  public String value(ChoiceRow plan, int choice) {
    return choices.get(choice).values().get(plan.at().get(choice));
  }

  /** How many plans came to that. */
  public long count(ChoiceRow.Status status) {
    return plans.stream().filter(row -> row.status() == status).count();
  }
}
