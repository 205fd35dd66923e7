package hurdline.answer;

/**
 * A round in which plans were judged.
 *
 * @param budget of the plans; NaN for no limit
 * @param round from 0
 * @param leader number of the plan against which all were judged
 * @param gap what the best plan may be above it; NaN where a plan left has no limit yet
 * @param left plans after it
 * @param years simulated up to its end, of all plans and budgets
 */
public record ChoiceRound(double budget, int round, int leader, double gap, int left, long years) {}
