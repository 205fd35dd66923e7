package hurdline.answer;

/** What the choice of a plan takes for granted. */
public sealed interface ChooseFact extends Fact {
  /**
   * What is said with which confidence, and how.
   *
   * @param budgets for which it is said together
   */
  record OneLeader(double alpha, int rounds, int budgets) implements ChooseFact {}

  /** Differences are near normal; a gain in rare years is not weighed. */
  record RareYears() implements ChooseFact {}

  /**
   * Some differences lean far to the right.
   *
   * @param plans of those left and of the 20 that went out last
   */
  record LongTails(int plans) implements ChooseFact {}

  /** Each year is new. */
  record NewYears(int last) implements ChooseFact {}

  /**
   * What a plan costs in a year.
   *
   * @param ratePerYr interest
   */
  record CostOfCapital(double ratePerYr) implements ChooseFact {}

  /** Costs are told and not taken off. */
  record CostsNotTakenOff() implements ChooseFact {}

  /** Only what is in the space can be found. */
  record OnlyThesePlans() implements ChooseFact {}

  /**
   * How bounds are met.
   *
   * @param choosing years by which plans are left out
   */
  record Bounds(int choosing) implements ChooseFact {}
}
