package hurdline.answer;

import java.util.List;

/**
 * What happened in a span of one replication, event by event; {@code trace.csv}.
 *
 * @param replication counts from 1
 * @param heads heads whose rates the rows give, in t/h
 * @param bins bins whose levels the rows give, in t
 */
public record Trace(int replication, List<String> heads, List<String> bins, List<Row> rows) {
  public Trace {
    heads = List.copyOf(heads);
    bins = List.copyOf(bins);
    rows = List.copyOf(rows);
  }

  /**
   * One event.
   *
   * @param clock local time, {@code 2027-06-07T08:31:05.250}
   * @param where the machine, bin, truck or place
   * @param what what happened there
   * @param amount what it was about (a mass, a duration), or NaN
   * @param rates after the event, t/h, one per head; not to be written again
   * @param levels at the event, t, one per bin; not to be written again
   */
  public record Row(
      String clock, String where, String what, double amount, double[] rates, double[] levels) {}

  public static Trace none() {
    return new Trace(0, List.of(), List.of(), List.of());
  }

  public boolean isEmpty() {
    return replication == 0;
  }
}
