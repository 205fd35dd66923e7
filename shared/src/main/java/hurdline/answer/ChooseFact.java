package hurdline.answer;

/** What the choice of a plan takes for granted. */
public sealed interface ChooseFact extends Fact {
  /**
   * What is said with which confidence, and how.
   *
   * @param budgets for which it is said together
   */
  record OneLeader(double alpha, int rounds, int budgets) implements ChooseFact {}

  /**
   * What is said with which confidence, where each plan has draws of its own.
   *
   * @param plans that were judged
   * @param first years of each plan in the first stage
   * @param constant Rinott's h
   * @param more years that the second stage asks for, of all plans together
   * @param most years that a plan needs in all
   */
  record TwoStages(double alpha, int plans, int first, double constant, long more, long most)
      implements ChooseFact {}

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

  /**
   * At what figures plans are simulated.
   *
   * @param drawn whether each year takes its own draw of uncertain inputs
   */
  record FiguresOfPlans(boolean drawn) implements ChooseFact {}

  /** Only what is in the space can be found. */
  record OnlyThesePlans() implements ChooseFact {}

  /**
   * How bounds are met.
   *
   * @param choosing years by which plans are left out
   */
  record Bounds(int choosing) implements ChooseFact {}
}
