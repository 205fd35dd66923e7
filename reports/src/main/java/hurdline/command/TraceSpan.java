package hurdline.command;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;

/**
 * The span that a trace shows, local times; one date alone is that day.
 *
 * @param from first instant
 * @param to last instant
 */
record TraceSpan(LocalDateTime from, LocalDateTime to) {
  static TraceSpan of(String text) {
    String[] ends = text.split("\\.\\.", -1);
    try {
      TraceSpan span = new TraceSpan(instant(ends[0], false), instant(ends[ends.length - 1], true));
      if (ends.length <= 2 && span.from().isBefore(span.to())) {
        return span;
      }
    } catch (DateTimeParseException wrong) {
      // Falls through to the message that covers every way of being wrong.
    }
    throw new CallException(
        "--trace \""
            + text
            + "\" is no span; expected a day such as 2027-06-07, or FROM..TO such as"
            + " 2027-06-07..2027-06-08 or 2027-06-07T06:00..2027-06-07T14:30");
  }

  /** A date alone means its beginning, or at the end of a span its end. */
  private static LocalDateTime instant(String text, boolean atEnd) {
    if (text.contains("T")) {
      return LocalDateTime.parse(text);
    }
    LocalDate date = LocalDate.parse(text);
    return (atEnd ? date.plusDays(1) : date).atStartOfDay();
  }

  static final class Reader implements CommandLine.ITypeConverter<TraceSpan> {
    @Override
    public TraceSpan convert(String text) {
      return TraceSpan.of(text);
    }
  }
}
