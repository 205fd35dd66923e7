package hurdline.study.choose;

import hurdline.answer.ChoiceRange;
import hurdline.economics.CapitalRecovery;
import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
import hurdline.plant.Choices.Combination;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * All plans: each combination of one value of each choice, numbered with the last choice fastest.
 */
final class PlanSpace {
  private final Choices choices;
  private final int count;

  /**
   * @param choices so few that an int can count the plans
   */
  PlanSpace(Choices choices) {
    this.choices = choices;
    count = (int) count(choices);
  }

  /** How many plans there are; beyond all that can be simulated where they are too many. */
  static double count(Choices choices) {
    return choices.all().stream()
        .mapToDouble(choice -> choice.values().size())
        .reduce(1, (a, b) -> a * b);
  }

  /**
   * What to throw where no plan can be judged.
   *
   * @param first why the first of them cannot
   * @param bounded whether bounds leave plans out too
   */
  static ProblemsException noneLeft(String first, boolean bounded) {
    return new ProblemsException(
        List.of(
            LocatedProblem.of(
                "",
                "no plan is left to choose from; the first: " + first,
                bounded ? "choices or bounds that leave some" : "choices that leave some",
                "")));
  }

  int count() {
    return count;
  }

  List<ChoiceRange> ranges() {
    return choices.all().stream()
        .map(
            choice ->
                new ChoiceRange(
                    choice.name(),
                    choice.kind().name().toLowerCase(Locale.ROOT),
                    choice.values().stream().map(Choice.Value::text).toList()))
        .toList();
  }

  /** Place of a plan's value in each choice. */
  List<Integer> at(int plan) {
    Integer[] at = new Integer[choices.all().size()];
    int rest = plan;
    for (int choice = at.length - 1; choice >= 0; choice--) {
      int values = choices.all().get(choice).values().size();
      at[choice] = rest % values;
      rest /= values;
    }
    return List.of(at);
  }

  /** The plan with another value of one choice. */
  int with(int plan, int choice, int value) {
    int number = 0;
    List<Integer> at = at(plan);
    for (int c = 0; c < at.size(); c++) {
      number = number * choices.all().get(c).values().size() + (c == choice ? value : at.get(c));
    }
    return number;
  }

  private List<Choice.Value> values(int plan) {
    List<Choice.Value> values = new ArrayList<>();
    List<Integer> at = at(plan);
    for (int choice = 0; choice < at.size(); choice++) {
      values.add(choices.all().get(choice).values().get(at.get(choice)));
    }
    return values;
  }

  List<Change> changes(int plan) {
    return values(plan).stream().flatMap(value -> value.changes().stream()).toList();
  }

  /** What a plan costs to buy. */
  double cost(int plan) {
    return sum(plan, Choice.Purchase::cost);
  }

  /**
   * The yearly cost of a plan's capital: what is bought by its capital recovery, less what is left
   * of it in the end as a yearly payment.
   *
   * @param ratePerYr interest, share a year
   */
  double costPerYr(int plan, double ratePerYr) {
    return sum(
        plan,
        bought -> {
          double recovery = CapitalRecovery.factor(ratePerYr, bought.lifeYr());
          return bought.cost() * recovery - bought.salvage() * (recovery - ratePerYr);
        });
  }

  private double sum(int plan, ToDoubleFunction<Choice.Purchase> of) {
    return values(plan).stream().flatMap(value -> value.purchases().stream()).mapToDouble(of).sum();
  }

  boolean isNever(int plan) {
    return isAnyOf(choices.never(), plan);
  }

  boolean isKept(int plan) {
    return isAnyOf(choices.kept(), plan);
  }

  private boolean isAnyOf(List<Combination> combinations, int plan) {
    if (combinations.isEmpty()) {
      return false;
    }
    Map<String, String> chosen = new LinkedHashMap<>();
    List<Choice.Value> values = values(plan);
    for (int choice = 0; choice < values.size(); choice++) {
      chosen.put(choices.all().get(choice).name(), values.get(choice).text());
    }
    return combinations.stream().anyMatch(combination -> combination.isMetBy(chosen));
  }

  /** The first plan that is not left out. */
  OptionalInt first() {
    return IntStream.range(0, count).filter(plan -> !isNever(plan)).findFirst();
  }

  /** The choices themselves. */
  List<Choice> all() {
    return choices.all();
  }
}
