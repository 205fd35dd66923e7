package hurdline.flow.rates;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Sets the rates of all heads: feasible, fair, maximal, and passed on through full and empty bins
 * (P1 to P4).
 *
 * <p><b>The question.</b> Heads compete for limits: a machine in several stretches, a full bin
 * (what comes in may not pass what is drawn), an empty bin (what is drawn may not pass what comes
 * in). Every limit reads Σ coefficient·rate ≤ room; a head with a coefficient above 0 <em>uses</em>
 * the limit, one below 0 <em>gives</em> to it. Wanted are the rates at which every head runs at its
 * reach or has a holder: a limit that it uses, used up, where nobody of its precedence runs at a
 * higher pace (rate by reach) and whoever is served later gets nothing.
 *
 * <p><b>The idea.</b> If the rates of the givers were known, every limit would have a plain room
 * and the rates would follow by filling ({@link ProgressiveFilling}). So start with everybody at
 * reach, make the rooms, fill, make the rooms anew from the rates found, and so on: a sweep carries
 * news over one bin, and as long as no head depends on itself the rooms stand still, to the last
 * bit, after as many sweeps as the longest chain of bins has members, and one. Only heads that
 * depend on themselves need more: {@link CoupledRates} takes the holders found and solves for the
 * rates at which all of them are used up at once.
 *
 * <p><b>What is open.</b> Where precedence, two shared machines and a bin close a circle that
 * strengthens itself, P3 can have several answers (1 in 60,000 random plants of up to 6 heads; none
 * seen without precedence). Each satisfies P1 to P3; the one given is the one reached from
 * everybody at reach.
 *
 * <p><b>Why not the textbook's ways.</b> One linear program, or one max-min over all heads, answers
 * another question: it speeds up a head merely because its consumer is short. Two heads share a
 * machine of 6, one of them fills an empty bin whose draw could take 40: fair is 3 and 3, a max-min
 * over three heads says 5.2 and 0.8.
 *
 * <p><b>Cost.</b> Nothing overrun with everybody at reach, the usual case: one pass over the
 * non-zero coefficients. Else one filling for each bin in a row. Figures: {@code
 * RateSolverBenchmark}.
 *
 * <p><b>Hot path</b>, called whenever a limit, a lot or a bin's state has changed. It must not
 * allocate, box, log, read a clock, call through an interface, or keep anything of an earlier
 * answer: equal numbers give equal bits. {@code RateSolverAllocationTest.aSolveAllocatesNothing}
 * counts the bytes. Good input throws nothing but {@link NoConsistentRatesException}.
 *
 * <p>The caller owns the input arrays' contents and writes them before {@link #solve}; units are
 * kg/s for rates and reaches, and for each limit one of the caller's choice, the same for its room
 * and for coefficient·rate.
 */
public final class RateSolver {
  /** What {@link #isHolder} takes as equal, relative. */
  private static final double TIE = 1e-9;

  private final int heads;
  private final int limits;
  private final double[] reachKgPerS;
  private final boolean[] active;
  private final double[] room;
  private final double[] coefficient;
  private final double[] rateKgPerS;
  private final double[] pace;
  private final int[] heldBy;
  private final LimitRows lists;
  private final ProgressiveFilling fill;
  private final CoupledRates knot;
  private final IndexSet all;
  private int knotRounds;

  /**
   * @param heads how many heads, numbered by the caller in the order of their names
   * @param limits how many limits, numbered likewise
   * @param precedence [head], lowest served first; read once
   */
  public RateSolver(int heads, int limits, int[] precedence) {
    if (precedence.length != heads) {
      throw new IllegalArgumentException(
          "precedence has "
              + precedence.length
              + " entries, expected one for each of "
              + heads
              + " heads");
    }
    this.heads = heads;
    this.limits = limits;
    reachKgPerS = new double[heads];
    active = new boolean[limits];
    room = new double[limits];
    coefficient = new double[limits * heads];
    rateKgPerS = new double[heads];
    pace = new double[heads];
    heldBy = new int[heads];
    lists = new LimitRows(heads, limits);
    int[] steps = Arrays.stream(precedence).sorted().distinct().toArray();
    int[] rank = Arrays.stream(precedence).map(each -> Arrays.binarySearch(steps, each)).toArray();
    fill = new ProgressiveFilling(lists, limits, reachKgPerS, rank, steps.length);
    knot = new CoupledRates(lists, fill, limits, reachKgPerS);
    all = new IndexSet(heads);
    all.addAll();
  }

  /** [head] what the head could do alone, at least 0; 0 stands. Written by the caller. */
  public double[] reachKgPerS() {
    return reachKgPerS;
  }

  /**
   * [limit] whether it exists now: a bin while full or empty, a shared machine always. Written by
   * the caller.
   */
  public boolean[] active() {
    return active;
  }

  /**
   * [limit] what it can give without any gift, at least 0: 1 for a shared machine, 0 for a bin.
   * Written by the caller.
   */
  public double[] room() {
    return room;
  }

  /**
   * [limit * heads + head] what a kg/s of the head uses of the limit (above 0) or gives to it
   * (below 0); less than 1e-12 either way is nothing. Written by the caller, who then says {@link
   * #coefficientsChanged}.
   */
  public double[] coefficient() {
    return coefficient;
  }

  /** To be called after any write to {@link #coefficient} of that limit. */
  public void coefficientsChanged(int limit) {
    lists.rebuild(limit, coefficient);
  }

  /** [head] the answer; overwritten by the next solve. */
  public double[] rateKgPerS() {
    return rateKgPerS;
  }

  /**
   * [head] the limit that holds it in the sense of P3, or −1 if it runs at its reach or stands by
   * itself.
   */
  public int[] heldBy() {
    return heldBy;
  }

  /** [head] rate by reach, 0 where the reach is 0. */
  public double[] pace() {
    return pace;
  }

  /**
   * Rounds that a knot of heads depending on themselves took in the last solve; 0 if there was
   * none.
   */
  public int knotRounds() {
    return knotRounds;
  }

  /**
   * Sets rates, paces and holders of all heads for the inputs as they now stand.
   *
   * @throws NoConsistentRatesException if heads that depend on themselves find no rates on which
   *     their holders agree
   */
  public void solve() {
    solve(all);
  }

  /**
   * The same for some heads, of which no active limit is used or fed by any other that could run;
   * the others' stand.
   */
  public void solve(IndexSet some) {
    knotRounds = 0;
    startAtReach(some);
    if (listContests()) {
      contend(some);
    }
    for (int k = 0; k < some.count(); k++) {
      int head = some.at(k);
      rateKgPerS[head] = pace[head] == 1 ? reachKgPerS[head] : pace[head] * reachKgPerS[head];
    }
  }

  /**
   * The same for heads of which the caller knows that no limit of theirs can be overrun: each runs
   * at reach. {@link #isHolder} is not to be asked of them after it.
   */
  public void runFree(IndexSet some) {
    knotRounds = 0;
    startAtReach(some);
    for (int k = 0; k < some.count(); k++) {
      rateKgPerS[some.at(k)] = reachKgPerS[some.at(k)];
    }
  }

  private void startAtReach(IndexSet some) {
    for (int k = 0; k < some.count(); k++) {
      int head = some.at(k);
      double each = reachKgPerS[head];
      if (!(each >= 0 && each < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "reach of head " + head + " is " + each + ", expected at least 0 and finite");
      }
      pace[head] = each > 0 ? 1 : 0;
      heldBy[head] = ProgressiveFilling.NOBODY;
    }
  }

  /**
   * Lists the limits that their users could overrun if nobody gave; returns whether one is overrun
   * at reach.
   */
  private boolean listContests() {
    boolean overrun = false;
    fill.contests = 0;
    for (int limit = 0; limit < limits; limit++) {
      if (!active[limit]) {
        continue;
      }
      double own = room[limit];
      if (!(own >= 0)) {
        throw new IllegalArgumentException(
            "room of limit " + limit + " is " + own + ", expected at least 0");
      }
      double used = atReach(lists.userEnd, lists.user, lists.use, limit);
      if (used * (1 - ProgressiveFilling.GRAIN) > own) {
        fill.contest[fill.contests++] = limit;
        double given = atReach(lists.giverEnd, lists.giver, lists.give, limit);
        overrun |= used * (1 - ProgressiveFilling.GRAIN) > own + given;
      }
    }
    return overrun;
  }

  private double atReach(int[] ends, int[] who, double[] each, int limit) {
    double sum = 0;
    for (int i = lists.start(limit), end = ends[limit]; i < end; i++) {
      sum += each[i] * reachKgPerS[who[i]];
    }
    return sum;
  }

  private void contend(IndexSet some) {
    fill.makeRoom(room, pace);
    int sweeps =
        fill.contests + 2; // as long as the longest chain can be, and one to see that nothing moves
    boolean moved = true;
    while (moved && sweeps-- > 0) {
      fill.fill();
      moved = fill.makeRoom(room, fill.pace);
    }
    if (moved) {
      untieKnot();
    }
    for (int k = 0; k < some.count(); k++) {
      int head = some.at(k);
      pace[head] = fill.pace[head];
      heldBy[head] = fill.heldBy[head];
    }
  }

  private void untieKnot() {
    boolean untied = knot.untie(room);
    knotRounds = knot.rounds();
    if (!untied) {
      int[] held = IntStream.range(0, heads).filter(head -> fill.heldBy[head] >= 0).toArray();
      int[] holding =
          Arrays.stream(held).map(head -> fill.heldBy[head]).sorted().distinct().toArray();
      throw new NoConsistentRatesException(holding, held, knotRounds);
    }
  }

  /**
   * Whether that limit holds that head in the sense of P3: the head uses it, it is used up, nobody
   * of the same precedence runs faster there, and whoever is served later gets nothing; equal means
   * within 1e-9. Several limits can hold one head, and one that holds a head may do so while the
   * head just reaches its reach.
   */
  public boolean isHolder(int limit, int head) {
    if (!active[limit]
        || !(reachKgPerS[head] > 0)
        || !(coefficient[limit * heads + head] >= LimitRows.NOTHING)) {
      return false;
    }
    return isUsedUp(limit) && isFirstAmongUsers(limit, head);
  }

  private boolean isUsedUp(int limit) {
    double left = room[limit];
    double passing = room[limit];
    double atReach = room[limit];
    for (int head = 0, at = limit * heads; head < heads; head++, at++) {
      double each = coefficient[at];
      left -= each * rateKgPerS[head];
      passing += Math.abs(each) * rateKgPerS[head];
      atReach += Math.abs(each) * reachKgPerS[head];
    }
    return left <= TIE * passing + 10 * ProgressiveFilling.GRAIN * atReach;
  }

  private boolean isFirstAmongUsers(int limit, int head) {
    for (int i = lists.start(limit); i < lists.userEnd[limit]; i++) {
      int other = lists.user[i];
      int later = fill.rankOf(other) - fill.rankOf(head);
      if (later == 0 && pace[other] > pace[head] * (1 + TIE) + 10 * ProgressiveFilling.GRAIN
          || later > 0 && pace[other] > TIE) {
        return false;
      }
    }
    return true;
  }
}
