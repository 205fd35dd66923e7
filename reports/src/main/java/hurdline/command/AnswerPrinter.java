package hurdline.command;

import hurdline.answer.Answer;
import hurdline.answer.Header;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** Tells an answer on the terminal, or as JSON. */
final class AnswerPrinter {
  private final CommandContext setting;
  private final OutputFlags shown;

  AnswerPrinter(CommandContext setting, OutputFlags shown) {
    this.setting = setting;
    this.shown = shown;
  }

  /**
   * Tells an answer and where its files are.
   *
   * @param lines the answer in words
   */
  void tell(Answer answer, List<String> lines, Path folder) throws IOException {
    tell(answer, lines);
    if (!shown.quiet()) {
      words().println("Report: " + folder.resolve("report.html"));
    }
    Header header = answer.header();
    if (header.stopped()) {
      setting.err().println("Stopped: " + done(header) + " saved in " + folder + ".");
    }
  }

  private PrintWriter words() {
    return shown.json() ? setting.err() : setting.out();
  }

  /** Tells an answer that has no files. */
  void tell(Answer answer, List<String> lines) throws IOException {
    AnsiStyle errInk = new AnsiStyle(setting.inColour() && setting.onTerminal());
    answer
        .warnings()
        .forEach(warning -> setting.err().println(errInk.warning("warning: ") + warning.text()));
    if (shown.json()) {
      RecordFile.write(answer, setting.out());
    }
    if (!shown.quiet()) {
      tell(words(), lines);
    }
  }

  /** The first line is the title. */
  private void tell(PrintWriter words, List<String> lines) {
    AnsiStyle ink = new AnsiStyle(setting.inColour() && !shown.json());
    for (int at = 0; at < lines.size(); at++) {
      List<String> broken = LineWrapper.broken(lines.get(at), setting.columns());
      for (int part = 0; part < broken.size(); part++) {
        String line = broken.get(part);
        words.println(at == 0 ? ink.bold(line) : part == 0 ? ink.head(line) : line);
      }
    }
  }

  private static String done(Header header) {
    return header.replications() < header.replicationsAsked()
        ? header.replications()
            + " of "
            + header.replicationsAsked()
            + " replications are done; they are"
        : "all replications are done, but not all further questions; what is done is";
  }
}
