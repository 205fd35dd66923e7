package hurdline.answer;

import hurdline.measure.EventKind;
import java.util.List;

/**
 * What happened in a span of one replication, event by event; {@code trace.csv}. In {@code
 * record.json} it stands without its rows.
 *
 * @param replication counts from 1
 * @param heads heads whose rates the rows give, in t/h
 * @param bins bins whose levels the rows give, in t
 * @param day the same as a picture shows it, or null
 */
public record Trace(
    int replication, List<String> heads, List<String> bins, List<Row> rows, Day day) {
  public Trace {
    heads = List.copyOf(heads);
    bins = List.copyOf(bins);
    rows = rows == null ? List.of() : List.copyOf(rows);
  }

  public Trace(int replication, List<String> heads, List<String> bins, List<Row> rows) {
    this(replication, heads, bins, rows, null);
  }

  /**
   * One event.
   *
   * @param clock local time, {@code 2027-06-07T08:31:05.250}
   * @param where the machine, bin, truck or place
   * @param what what happened there
   * @param amount what {@link EventKind} says of it, or NaN
   * @param rates after the event, t/h, one per head; not to be written again
   * @param levels at the event, t, one per bin; not to be written again
   */
  public record Row(
      String clock, String where, EventKind what, double amount, double[] rates, double[] levels) {}

  public static Trace none() {
    return new Trace(0, List.of(), List.of(), List.of());
  }

  public boolean isEmpty() {
    return replication == 0;
  }
}
