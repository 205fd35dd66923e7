package hurdline.study.replicate;

/**
 * Replications in a row.
 *
 * @param from number of the first one; replications count from 1
 * @param to number of the one after the last; {@code from} for none
 */
public record ReplicationRange(int from, int to) {
  public ReplicationRange {
    if (!(from >= 1 && to >= from)) {
      throw new IllegalArgumentException(
          "range of replications is "
              + from
              + " to before "
              + to
              + "; expected from 1 on, and no end before its start");
    }
  }

  /** So many from the first on. */
  public static ReplicationRange first(int count) {
    return new ReplicationRange(1, 1 + count);
  }

  public boolean has(int replication) {
    return replication >= from && replication < to;
  }

  public int count() {
    return to - from;
  }
}
