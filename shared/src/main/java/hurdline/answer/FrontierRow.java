package hurdline.answer;

/**
 * The best under a budget.
 *
 * @param budget most that a plan may cost; NaN for no limit
 * @param plan the one that is named; -1 where no plan costs so little
 * @param gap what the best plan under the budget may be above it; NaN where that is not known
 * @param left plans under the budget that may be the best
 * @param of plans under the budget
 * @param rounds that were judged
 */
public record FrontierRow(double budget, int plan, double gap, int left, int of, int rounds) {}
