package hurdline.command;

import hurdline.answer.Header;
import hurdline.answer.RunAnswer;
import hurdline.table.RecordFile;
import hurdline.words.RunWords;
import hurdline.words.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;

/** Tells a run's answer on the terminal, or as JSON. */
final class RunReport {
  private final Setting setting;
  private final Shown shown;
  private final Wording wording;

  RunReport(Setting setting, Shown shown, Wording wording) {
    this.setting = setting;
    this.shown = shown;
    this.wording = wording;
  }

  void tell(RunAnswer answer, Path folder) throws IOException {
    PrintWriter words = shown.json() ? setting.err() : setting.out();
    answer.warnings().forEach(warning -> setting.err().println("warning: " + warning));
    if (shown.json()) {
      RecordFile.write(answer, setting.out());
    }
    if (!shown.quiet()) {
      new RunWords(answer, wording).lines().forEach(words::println);
      words.println("Report: " + folder.resolve("report.html"));
    }
    Header header = answer.header();
    if (header.stopped()) {
      setting
          .err()
          .println(
              "Stopped: "
                  + header.replications()
                  + " of "
                  + header.replicationsAsked()
                  + " replications are done; they are saved in "
                  + folder
                  + ".");
    }
  }
}
