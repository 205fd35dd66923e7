package hurdline.study.run;

import hurdline.answer.Trace;
import hurdline.study.replicate.ReplicationRange;

/**
 * What a range of replications of one plant came to. Ranges that follow each other can be simulated
 * apart, in any order and on any machine, and their results put behind each other: the answer is
 * that of the whole range, to the last digit.
 *
 * <p>Every measure is kept once a replication, 8 bytes each, since {@code measures.csv} has all of
 * them; weeks, months and levels do not grow beyond replication 2,000.
 */
public final class RangeResults {
  private final String asked;
  private final int from;
  private final RunAccumulator gathered;
  private Trace trace = Trace.none();

  /**
   * @param asked which plant on which draws; results of others do not go together
   */
  RangeResults(String asked, int from) {
    this.asked = asked;
    this.from = from;
    gathered = new RunAccumulator(from);
  }

  /** What is done; it ends before the range that was asked for where it was stopped. */
  public ReplicationRange range() {
    return new ReplicationRange(from, from + gathered.figures().count());
  }

  /**
   * Puts the results of the range that follows this one behind it; they are not to be used by
   * themselves after that.
   *
   * @throws IllegalArgumentException if they are of another plant or other draws, or begin
   *     elsewhere
   */
  public void append(RangeResults next) {
    if (!asked.equals(next.asked)) {
      throw new IllegalArgumentException(
          "the results are of another plant, other changes or another seed; expected the same study");
    }
    if (next.from != range().to()) {
      throw new IllegalArgumentException(
          "the results begin with replication "
              + next.from
              + "; expected "
              + range().to()
              + ", the one after those that are here");
    }
    if (range().count() == 0 || next.range().count() == 0) {
      throw new IllegalArgumentException(
          "one of the ranges has no finished replication; expected at least one in each");
    }
    gathered.append(next.gathered);
    trace = trace.isEmpty() ? next.trace : trace;
  }

  boolean isOf(String study) {
    return asked.equals(study);
  }

  RunAccumulator gathered() {
    return gathered;
  }

  Trace trace() {
    return trace;
  }

  void traced(Trace of) {
    trace = of;
  }
}
