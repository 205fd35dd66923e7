package hurdline.command;

import hurdline.service.Studies;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/**
 * What a verb works in.
 *
 * @param out for answers
 * @param err for errors and progress
 * @param onTerminal whether someone watches {@code err}
 * @param studies answers questions about plants
 * @param locale whose order dates and whose marks numbers have where the call names none
 * @param inColour whether {@code out} is a terminal that shows colours
 * @param columns that a line may have on {@code out}
 * @param call its words, the verb first
 */
record CommandContext(
    PrintWriter out,
    PrintWriter err,
    boolean onTerminal,
    Studies studies,
    Locale locale,
    boolean inColour,
    int columns,
    List<String> call) {
  /** Dates as in the tables, no colours, as many columns as where nobody watches. */
  CommandContext(PrintWriter out, PrintWriter err, boolean onTerminal, Studies studies) {
    this(out, err, onTerminal, studies, Locale.ROOT, false, Terminal.usualColumns());
  }

  CommandContext(
      PrintWriter out,
      PrintWriter err,
      boolean onTerminal,
      Studies studies,
      Locale locale,
      boolean inColour,
      int columns) {
    this(out, err, onTerminal, studies, locale, inColour, columns, List.of());
  }

  /** The same for a call. */
  CommandContext of(String... words) {
    return new CommandContext(
        out, err, onTerminal, studies, locale, inColour, columns, List.of(words));
  }
}
