package hurdline.flow.rates;

import java.util.Arrays;

/**
 * One filling of limits whose rooms are given: within a precedence all paces rise together from 0,
 * and a head stops when a limit that it uses is used up.
 *
 * <p>Instead of raising paces in small steps, the limit that would be used up first is looked for
 * (room left over for its free users, divided by what they take at reach), its free users are
 * frozen there, and the search begins anew. What is left and what is wanted are summed afresh over
 * the users at each search: subtracting as one goes would leave dust in the room, and dust freezes
 * heads that nothing holds. Only limits that a head just frozen uses are summed again.
 *
 * <p>Cost: at most one search for each limit that holds somebody, each over the entries of the
 * contested limits. Hot path, see {@link RateSolver}.
 */
final class ProgressiveFilling {
  /** Relative: what is closer to used up, or to reach, than this is there. */
  static final double GRAIN = 1e-13;

  static final int NOBODY = -1;
  private static final double FREE = -1; // in place of a pace: not stopped yet

  private final LimitRows lists;
  private final int heads;
  private final int[] rank; // [head], precedence as 0, 1, 2 … without gaps
  private final int ranks;
  private final double[] reach;
  private final double[] level; // [contest], pace at which it would be used up now

  /**
   * Contested limits of this solve, in ascending order; the first {@link #contests} entries count.
   */
  final int[] contest;

  int contests;

  /** [contest], what the limit can give to its users now. */
  final double[] room;

  /** [contest], rank whose heads used the limit up, or {@link #NOBODY}. */
  final int[] spentBy;

  /** [head], the result: share of reach. */
  final double[] pace;

  /** [head], the result: limit (not contest) that stopped it, or {@link #NOBODY}. */
  final int[] heldBy;

  ProgressiveFilling(LimitRows lists, int limits, double[] reach, int[] rank, int ranks) {
    this.lists = lists;
    this.heads = reach.length;
    this.reach = reach;
    this.rank = rank;
    this.ranks = ranks;
    level = new double[limits];
    contest = new int[limits];
    room = new double[limits];
    spentBy = new int[limits];
    pace = new double[heads];
    heldBy = new int[heads];
  }

  int rankOf(int head) {
    return rank[head];
  }

  /**
   * Sets the rooms that heads at these paces leave to the users.
   *
   * @param ownRoom [limit], room without any gift; read
   * @param atPace [head]; read
   * @return whether any room differs from what it was
   */
  boolean makeRoom(double[] ownRoom, double[] atPace) {
    boolean moved = false;
    for (int at = 0; at < contests; at++) {
      int limit = contest[at];
      double sum = ownRoom[limit];
      for (int i = lists.start(limit), end = lists.giverEnd[limit]; i < end; i++) {
        int head = lists.giver[i];
        sum += lists.give[i] * reach[head] * atPace[head];
      }
      moved |= sum != room[at];
      room[at] = sum;
    }
    return moved;
  }

  /** Fills {@link #room}; writes {@link #pace}, {@link #heldBy} and {@link #spentBy}. */
  void fill() {
    Arrays.fill(spentBy, 0, contests, NOBODY);
    for (int head = 0; head < heads; head++) {
      heldBy[head] = NOBODY;
      pace[head] = reach[head] > 0 ? FREE : 0;
    }
    for (int at = 0; at < ranks; at++) {
      fillRank(at);
    }
  }

  private void fillRank(int now) {
    long touched = -1;
    for (int round = 0; round < contests; round++) {
      int first = firstUsedUp(now, touched);
      if (first == NOBODY) {
        break;
      }
      touched = freeze(first, now, level[first]);
    }
    for (int head = 0; head < heads; head++) {
      if (rank[head] == now && pace[head] < 0) {
        pace[head] = 1;
      }
    }
  }

  /**
   * The contest with the lowest level below 1; looks again only at those that a touched head uses.
   */
  private int firstUsedUp(int now, long touched) {
    int first = NOBODY;
    double lowest = 1 - GRAIN;
    for (int at = 0; at < contests; at++) {
      if ((lists.userBits[contest[at]] & touched) != 0) {
        level[at] = levelOf(at, now);
      }
      if (level[at] < lowest) {
        lowest = level[at];
        first = at;
      }
    }
    return first;
  }

  /**
   * Pace at which the free heads of this rank use up what is left of a limit; 1 if there are none.
   */
  private double levelOf(int at, int now) {
    int limit = contest[at];
    double left = room[at];
    double wanted = 0;
    for (int i = lists.start(limit), end = lists.userEnd[limit]; i < end; i++) {
      int head = lists.user[i];
      double atReach = lists.use[i] * reach[head];
      double its = pace[head];
      if (its >= 0) {
        left -= atReach * its;
      } else if (rank[head] == now) {
        wanted += atReach;
      }
    }
    if (!(wanted > 0)) {
      return 1;
    }
    boolean gone = spentBy[at] != NOBODY || left <= GRAIN * Math.max(room[at], wanted);
    return gone ? 0 : left / wanted;
  }

  /** Stops the free heads of a rank at the level of a contest; returns their bits. */
  private long freeze(int at, int now, double to) {
    int limit = contest[at];
    long frozen = 0;
    for (int i = lists.start(limit), end = lists.userEnd[limit]; i < end; i++) {
      int head = lists.user[i];
      if (rank[head] == now && pace[head] < 0) {
        pace[head] = to;
        heldBy[head] = limit;
        frozen |= LimitRows.bit(head);
      }
    }
    if (spentBy[at] == NOBODY) {
      spentBy[at] = now;
    }
    return frozen;
  }
}
