package hurdline.study.choose;

import hurdline.answer.ChoiceRound;
import hurdline.answer.FrontierRow;
import hurdline.statistics.LeaderScreening;
import hurdline.statistics.ScreeningYears;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The screening of the plans under one budget. */
final class BudgetScreening {
  private final double budget;
  private final int of;
  private final LeaderScreening screening; // null where no plan costs so little
  private final List<ChoiceRound> rounds = new ArrayList<>();

  /**
   * @param budget NaN for no limit
   * @param candidates of all budgets
   */
  BudgetScreening(
      double budget,
      List<LeaderScreening.Candidate> candidates,
      double alpha,
      ScreeningYears terms) {
    this.budget = budget;
    List<LeaderScreening.Candidate> under =
        candidates.stream().filter(plan -> !(plan.cost() > budget)).toList();
    of = under.size();
    screening = under.isEmpty() ? null : new LeaderScreening(under, alpha, terms);
  }

  /** Whether a further round would tell nothing that is asked. */
  boolean isDone(double band) {
    return screening == null
        || screening.isOver()
        || screening.known().filter(round -> round.gap() <= band).isPresent();
  }

  void judge(double[][] years, long simulated) {
    LeaderScreening.Round round = screening.judge(years);
    rounds.add(
        new ChoiceRound(
            budget, rounds.size(), round.leader(), finite(round.gap()), round.left(), simulated));
  }

  private static double finite(double gap) {
    return Double.isInfinite(gap) ? Double.NaN : gap;
  }

  List<Integer> left() {
    return screening == null ? List.of() : screening.left();
  }

  List<LeaderScreening.Exit> exits() {
    return screening == null ? List.of() : screening.exits();
  }

  Optional<LeaderScreening.Round> known() {
    return screening == null ? Optional.empty() : screening.known();
  }

  /** Plans whose limits may fail more often than stated. */
  int unsure() {
    return screening == null ? 0 : screening.unsure();
  }

  List<ChoiceRound> rounds() {
    return rounds;
  }

  FrontierRow row() {
    Optional<LeaderScreening.Round> known = known();
    return new FrontierRow(
        budget,
        known.map(LeaderScreening.Round::leader).orElse(-1),
        known.map(round -> finite(round.gap())).orElse(Double.NaN),
        left().size(),
        of,
        rounds.size());
  }
}
