package hurdline.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Which of very many plans may have the greatest mean, and how far above the named one it can lie:
 * one leader in rounds.
 *
 * <p>Some years choose. In each of M rounds, said beforehand, the plan left with the greatest sum
 * of <em>all years before</em> leads, and all plans left are judged on n <em>new</em> years: dᵢ =
 * xᵢ − x of the leader, year by year, and Uᵢ is its mean's upper limit at α/M ({@link UpperLimit}).
 * A plan goes out if Uᵢ &lt; 0. The gap is the greatest of 0 and all Uᵢ that are left.
 *
 * <p>With at least 1 − α, in every round at once, the plan of the greatest mean is left and its
 * mean is no more than the gap above the leader's, for normal differences of independent years.
 * {@code sim-core/ENGINE.md} has the proof in four lines. How many plans there are does not enter,
 * nor how they depend on each other, so common random numbers are allowed and wanted.
 *
 * <p>Where a plan's differences have no spread at all, years of a kind that is rare may be missing:
 * before 30 such years it is neither out nor has it a limit. A difference that is only rounding is
 * none, so plans that are alike stay alike.
 *
 * @see "Pei, Nelson and Hunter, Parallel adaptive survivor selection, Operations Research 72 (2024)
 *     336-354, for comparing with one standard so that the number of plans drops out; the
 *     composition and its proof are this project's"
 */
public final class LeaderScreening {
  /** Of the plans that went out, so many of the last are looked at for a long tail. */
  private static final int LAST_EXITS = 20;

  /** Years of a kind that comes in one year of ten are missing among so many with 4 %. */
  private static final int YEARS_WITHOUT_SPREAD = 30;

  private final Candidate[] candidates;
  private final double chance;
  private final ScreeningYears terms;
  private final List<Candidate> left = new ArrayList<>();
  private final List<Round> rounds = new ArrayList<>();
  private final List<Exit> exits = new ArrayList<>();
  private final List<Boolean> unsureExits = new ArrayList<>();
  private int unsureLeft;

  /**
   * A plan to be judged.
   *
   * @param number by which it is called
   * @param cost decides between plans of equal sums
   * @param kept whether it may never go out
   */
  public record Candidate(int number, double cost, boolean kept) {}

  /**
   * A round that was judged.
   *
   * @param leader number of the plan against which all were judged
   * @param gap what the best plan's mean may be above the leader's; infinite where a plan left has
   *     no limit yet
   * @param left how many plans are left after it
   */
  public record Round(int leader, double gap, int left) {}

  /**
   * A plan that went out.
   *
   * @param round in which, from 0
   * @param difference mean of plan less leader in the round's years; NaN where a year gave no value
   * @param limit upper limit of that mean, below 0; NaN where a year gave no value
   */
  public record Exit(int plan, int round, int leader, double difference, double limit) {}

  /**
   * @param candidates at least one
   * @param alpha chance with which the statement of all rounds together may fail, above 0 and below
   *     1
   */
  public LeaderScreening(List<Candidate> candidates, double alpha, ScreeningYears terms) {
    if (candidates.isEmpty()) {
      throw new IllegalArgumentException("candidates are none; expected at least one");
    }
    if (!(alpha > 0 && alpha < 1)) {
      throw new IllegalArgumentException("alpha is " + alpha + "; expected above 0 and below 1");
    }
    this.candidates = candidates.toArray(Candidate[]::new);
    this.terms = terms;
    chance = alpha / terms.rounds().size();
    left.addAll(candidates);
  }

  /** Numbers of the plans that are left, rising as they were given. */
  public List<Integer> left() {
    return left.stream().map(Candidate::number).toList();
  }

  /** All rounds so far. */
  public List<Round> rounds() {
    return List.copyOf(rounds);
  }

  /** All plans that went out, in turn. */
  public List<Exit> exits() {
    return List.copyOf(exits);
  }

  /**
   * How many of the plans left, and of the 20 that went out last, differ from their leader with so
   * long a tail to the right that their limits may fail more often than stated.
   */
  public int unsure() {
    List<Boolean> last =
        unsureExits.subList(Math.max(0, unsureExits.size() - LAST_EXITS), unsureExits.size());
    return unsureLeft + (int) last.stream().filter(unsure -> unsure).count();
  }

  /** Whether no round may follow: all that were said are judged, or one plan is left. */
  public boolean isOver() {
    return rounds.size() == terms.rounds().size() || left.size() == 1;
  }

  /**
   * What is known after the last round; empty before the first, where nothing can be stated, unless
   * there never was but one plan.
   */
  public Optional<Round> known() {
    if (candidates.length == 1) {
      return Optional.of(new Round(candidates[0].number(), 0, 1));
    }
    return rounds.isEmpty() ? Optional.empty() : Optional.of(rounds.get(rounds.size() - 1));
  }

  /**
   * Judges the next round.
   *
   * @param years [plan number][year], each plan left with all years up to this round's last, in the
   *     same order for all; others are not looked at; read only
   */
  public Round judge(double[][] years) {
    if (isOver()) {
      throw new IllegalStateException("no round is left to judge");
    }
    int round = rounds.size();
    takeOutWithoutValue(years, round);
    Candidate leader = leader(years, terms.before(round));
    UpperLimit limit = new UpperLimit(terms.rounds().get(round), chance);
    double gap = 0;
    unsureLeft = 0;
    List<Candidate> staying = new ArrayList<>();
    for (Candidate candidate : left) {
      Judged judged = judged(years, leader, candidate, limit);
      if (judged.limit() < 0 && !candidate.kept()) {
        exits.add(exit(candidate, leader, round, judged));
        unsureExits.add(judged.unsure());
      } else {
        staying.add(candidate);
        gap = Math.max(gap, judged.limit());
        unsureLeft += judged.unsure() ? 1 : 0;
      }
    }
    left.clear();
    left.addAll(staying);
    Round done = new Round(leader.number(), gap, left.size());
    rounds.add(done);
    return done;
  }

  private static Exit exit(Candidate plan, Candidate leader, int round, Judged judged) {
    return new Exit(plan.number(), round, leader.number(), judged.difference(), judged.limit());
  }

  /** A year is never left out for one plan only: who has none is out, kept or not. */
  private void takeOutWithoutValue(double[][] years, int round) {
    int to = terms.before(round + 1);
    for (Candidate candidate : List.copyOf(left)) {
      double[] values = years[candidate.number()];
      if (values.length < to) {
        throw new IllegalArgumentException(
            "plan " + candidate.number() + " has " + values.length + " years; expected " + to);
      }
      for (int year = 0; year < to; year++) {
        if (Double.isNaN(values[year])) {
          left.remove(candidate);
          exits.add(new Exit(candidate.number(), round, -1, Double.NaN, Double.NaN));
          break;
        }
      }
    }
    if (left.isEmpty()) {
      throw new IllegalArgumentException("no plan has a value in every year");
    }
  }

  /** The greatest sum of the years before; among equal ones the cheapest, then the first. */
  private Candidate leader(double[][] years, int before) {
    Candidate best = null;
    double most = 0;
    for (Candidate candidate : left) {
      double sum = 0;
      for (int year = 0; year < before; year++) {
        sum += years[candidate.number()][year];
      }
      if (best == null || sum > most || sum == most && candidate.cost() < best.cost()) {
        best = candidate;
        most = sum;
      }
    }
    return best;
  }

  private record Judged(double difference, double limit, boolean unsure) {}

  private Judged judged(double[][] years, Candidate leader, Candidate candidate, UpperLimit limit) {
    if (candidate == leader) {
      return new Judged(0, 0, false);
    }
    int round = rounds.size();
    double[] of = years[candidate.number()];
    double[] standard = years[leader.number()];
    double[] fresh = PairedDifference.differences(terms.of(round, standard), terms.of(round, of));
    Moments moments = Moments.of(fresh);
    if (moments.variance() > 0) {
      return new Judged(moments.mean(), limit.of(moments, fresh.length), limit.isUnsure(moments));
    }
    boolean enough =
        fresh.length >= YEARS_WITHOUT_SPREAD
            || isWithoutSpread(standard, of, terms.before(round + 1));
    return new Judged(moments.mean(), enough ? moments.mean() : Double.POSITIVE_INFINITY, false);
  }

  /** Whether all years so far are enough and have one and the same difference. */
  private static boolean isWithoutSpread(double[] standard, double[] of, int years) {
    if (years < YEARS_WITHOUT_SPREAD) {
      return false;
    }
    double[] all =
        PairedDifference.differences(Arrays.copyOf(standard, years), Arrays.copyOf(of, years));
    return !(Moments.of(all).variance() > 0);
  }
}
