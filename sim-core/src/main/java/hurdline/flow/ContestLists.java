package hurdline.flow;

/**
 * Who uses and who feeds each contested limit: the non-zero coefficients of a {@link RateSolver}, limit by limit.
 *
 * <p>Entries of one limit lie side by side in the order of the heads, so that every sum runs in that order. Arrays are
 * sized once for a full matrix; {@link #rebuild} only rewrites them.
 */
final class ContestLists {
  /** A coefficient smaller than this, either way, is what rounding left of nothing. */
  static final double NOTHING = 1e-12;

  private final int heads;
  private final int limits;
  final int[] userStart; // [limit + 1], first entry of the limit in user and use
  final int[] user; // head numbers
  final double[] use; // what a kg/s of that head takes of the limit, above 0
  /** [limit], a bit for each user: a bit that two limits do not share means no user that they do. */
  final long[] userBits;
  final int[] giverStart; // [limit + 1], first entry of the limit in giver and give
  final int[] giver; // head numbers
  final double[] give; // what a kg/s of that head adds to the limit's room, above 0

  ContestLists(int heads, int limits) {
    this.heads = heads;
    this.limits = limits;
    userStart = new int[limits + 1];
    user = new int[limits * heads];
    use = new double[limits * heads];
    userBits = new long[limits];
    giverStart = new int[limits + 1];
    giver = new int[limits * heads];
    give = new double[limits * heads];
  }

  /** The head's bit; heads 64 apart have the same one. */
  static long bit(int head) {
    return 1L << head; // Java shifts by the last six bits of the number
  }

  /** @param coefficient [limit * heads + head], above 0 uses, below 0 gives; read */
  void rebuild(double[] coefficient) {
    int users = 0;
    int givers = 0;
    for (int limit = 0, at = 0; limit < limits; limit++) {
      userBits[limit] = 0;
      for (int head = 0; head < heads; head++, at++) {
        double each = coefficient[at];
        if (each >= NOTHING) {
          userBits[limit] |= bit(head);
          user[users] = head;
          use[users++] = each;
        } else if (each <= -NOTHING) {
          giver[givers] = head;
          give[givers++] = -each;
        } else if (each != each) {
          throw new IllegalArgumentException("coefficient of head " + head + " at limit " + limit + " is NaN");
        }
      }
      userStart[limit + 1] = users;
      giverStart[limit + 1] = givers;
    }
  }
}
