package hurdline.flow.rates;

/**
 * Who uses and who feeds each contested limit: the non-zero coefficients of a {@link RateSolver},
 * limit by limit.
 *
 * <p>Entries of one limit lie side by side in the order of the heads, so that every sum runs in
 * that order. Arrays are sized once for a full matrix; {@link #rebuild} only rewrites a limit's
 * part of them.
 */
final class LimitRows {
  /** A coefficient smaller than this, either way, is what rounding left of nothing. */
  static final double NOTHING = 1e-12;

  private final int heads;
  final int[] userEnd; // [limit], one past its last entry in user and use; the first is at start
  final int[] user; // head numbers
  final double[] use; // what a kg/s of that head takes of the limit, above 0

  /**
   * [limit], a bit for each user: a bit that two limits do not share means no user that they do.
   */
  final long[] userBits;

  final int[] giverEnd; // [limit], likewise in giver and give
  final int[] giver; // head numbers
  final double[] give; // what a kg/s of that head adds to the limit's room, above 0

  LimitRows(int heads, int limits) {
    this.heads = heads;
    userEnd = new int[limits];
    user = new int[limits * heads];
    use = new double[limits * heads];
    userBits = new long[limits];
    giverEnd = new int[limits];
    giver = new int[limits * heads];
    give = new double[limits * heads];
    for (int limit = 0; limit < limits; limit++) {
      userEnd[limit] = start(limit);
      giverEnd[limit] = start(limit);
    }
  }

  /** The head's bit; heads 64 apart have the same one. */
  static long bit(int head) {
    return 1L << head; // Java shifts by the last six bits of the number
  }

  /** A limit's first entry, of users and of givers. */
  int start(int limit) {
    return limit * heads;
  }

  /**
   * @param coefficient [limit * heads + head], above 0 uses, below 0 gives; read
   */
  void rebuild(int limit, double[] coefficient) {
    int users = start(limit);
    int givers = users;
    userBits[limit] = 0;
    for (int head = 0, at = users; head < heads; head++, at++) {
      double each = coefficient[at];
      if (each >= NOTHING) {
        userBits[limit] |= bit(head);
        user[users] = head;
        use[users++] = each;
      } else if (each <= -NOTHING) {
        giver[givers] = head;
        give[givers++] = -each;
      } else if (each != each) {
        throw new IllegalArgumentException(
            "coefficient of head " + head + " at limit " + limit + " is NaN");
      }
    }
    userEnd[limit] = users;
    giverEnd[limit] = givers;
  }
}
