package hurdline.records;

import hurdline.records.Spans.Span;
import java.time.LocalDate;
import java.util.List;

/**
 * A shift as it was worked.
 *
 * @param lines the lines of the plant that were crewed
 * @param worked its hours less rests
 * @param hands NaN where they are not known
 * @param paidS hours that were paid; NaN where they are not known or cannot be
 */
public record ShiftRecord(
    int line,
    LocalDate date,
    String shift,
    List<String> lines,
    List<Span> worked,
    double hands,
    double paidS) {
  public ShiftRecord {
    lines = List.copyOf(lines);
    worked = List.copyOf(worked);
  }

  public double fromS() {
    return worked.get(0).fromS();
  }

  public double toS() {
    return worked.get(worked.size() - 1).toS();
  }
}
